import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { addressFor, shelfHolds, shelfTaken } from '#lib/ledger/shelf-room.ts';
import { lotOf } from './ledger-samples.ts';

/** A shelf of 900 x 320 x 230 mm and the jars of that shelf's reckoning. */
const SHELF = { widthMm: 900, depthMm: 320, clearMm: 230 };
const KINDS = new Map([
  ['Q4', { pitchMm: 73, heightMm: 60 }],
  ['HP', { pitchMm: 75, heightMm: 97 }],
  ['PT', { pitchMm: 83, heightMm: 130 }],
  ['QT', { pitchMm: 96, heightMm: 178 }],
]);
const kind = (code: string) => {
  const jar = KINDS.get(code);
  assert.ok(jar);
  return jar;
};
const standing = (id: string, item: string, onHand: number, address: string | null) => ({
  ...lotOf(id, { item, address, unit: 'jar', kind: 'jars' }),
  onHand,
});

describe('a shelf', () => {
  it('holds 96 half-pints or quarter-pints, 30 pints or 27 quarts', () => {
    assert.deepEqual(
      ['HP', 'Q4', 'PT', 'QT'].map((k) => shelfHolds(SHELF, kind(k))),
      [96, 96, 30, 27],
    );
  });

  it('holds none of a jar that is taller than its clear height', () =>
    assert.equal(shelfHolds({ ...SHELF, clearMm: 90 }, kind('HP')), 0));

  it('is taken by the share each jar needs of its own kind', () => {
    const taken = shelfTaken(
      [standing('a', 'HP', 48, 'B1-S1'), standing('b', 'PT', 15, 'B1-S1'), standing('c', 'HP', 9, null)],
      SHELF,
      KINDS,
    );
    assert.deepEqual([...taken], [['B1-S1', 1]]);
  });
});

describe('where jars are put', () => {
  const all = ['B1-S1', 'B1-S2', 'B1-S3'];
  const at = (n: number, wanted: string[], taken: [string, number][]) =>
    addressFor(n, kind('HP'), wanted, all, new Map(taken), SHELF);

  it('is the wanted shelf while there is room', () => {
    assert.equal(at(48, ['B1-S2'], [['B1-S2', 0.5]]), 'B1-S2');
    assert.equal(at(49, ['B1-S2'], [['B1-S2', 0.5]]), 'B1-S1');
  });

  it('is the emptiest that has room when the wanted one is full', () => {
    assert.equal(
      at(
        12,
        ['B1-S2'],
        [
          ['B1-S1', 0.6],
          ['B1-S2', 1],
          ['B1-S3', 0.2],
        ],
      ),
      'B1-S3',
    );
  });

  it('is the floor when nothing has room', () => {
    assert.equal(
      at(
        12,
        ['B1-S2'],
        [
          ['B1-S1', 0.95],
          ['B1-S2', 1],
          ['B1-S3', 0.9],
        ],
      ),
      'floor',
    );
  });
});
