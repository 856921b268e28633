import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { type Filling, fillJars } from '#lib/ledger/acts/fill-jars.ts';
import { panLotId, startBatch } from '#lib/ledger/acts/start-batch.ts';
import { batchMass } from '#lib/ledger/batch-mass.ts';
import type { BatchRecord } from '#lib/ledger/batch-record.ts';
import { emptyBook, post } from '#lib/ledger/book.ts';
import { type Entry, isRefusal } from '#lib/ledger/entry.ts';
import { actOf, bought, DAY, flows, lotOf } from './ledger-samples.ts';

const batch: BatchRecord = {
  id: 'b1',
  code: '25256-DAM-A',
  recipeId: 'damson-jam',
  label: 'Damson jam',
  kitchenId: 'home',
  panCode: null,
  state: 'cooking',
  day: DAY,
  startedAt: null,
  filledAt: null,
  outAt: null,
  formulaVersion: '1',
  inputs: {},
  result: {},
  log: [],
};

const fillingOf = (f: Partial<Filling> & Pick<Filling, 'panG' | 'jars'>): Filling => ({
  act: actOf('fill', 'fill'),
  batch,
  lotKind: 'jars',
  foodId: 'damson',
  partialG: 0,
  partialUseBy: DAY,
  losses: {},
  lids: [],
  empties: [],
  bestBefore: null,
  roomId: null,
  fridgeRoomId: null,
  household: true,
  process: 'unknown',
  details: {},
  ...f,
});

const stocked = (grams: number[]) => {
  const book = emptyBook();
  for (const [i, g] of grams.entries()) post(book, bought(`in${i}`, g + 7));
  post(book, bought('lids', 500, { unit: 'lid', kind: 'lids' }));
  return book;
};

const start = (grams: number[], waterG: number): Entry =>
  startBatch({
    act: actOf('start', 'start-batch'),
    batch,
    draws: grams.map((g, i) => ({ lotId: `in${i}`, qty: g, grams: g })),
    waterG,
    household: true,
  });

const whole = (max: number) => fc.integer({ min: 0, max });

describe('a batch', () => {
  it('puts out to the gram what was put in, whatever was filled, kept or lost', () =>
    fc.assert(
      fc.property(
        fc.array(whole(5000), { minLength: 1, maxLength: 6 }),
        whole(800),
        fc.array(fc.record({ count: whole(9), net: fc.integer({ min: 1, max: 500 }) }), { maxLength: 3 }),
        fc.record({ partial: whole(300), trim: whole(900), kept: fc.boolean(), skimmings: whole(80), pan: whole(120) }),
        (grams, waterG, sizes, loss) => {
          const book = stocked(grams);
          post(book, start(grams, waterG));
          const panG = grams.reduce((a, b) => a + b, waterG);
          assert.equal(book.lots.get(panLotId('b1'))?.onHand, panG);
          const lost = { skimmings: loss.skimmings, 'pan-loss': loss.pan, ...(loss.kept ? {} : { trim: loss.trim }) };
          const jars = sizes.map((s, i) => ({ kind: `K${i}`, unit: 'jar' as const, count: s.count, netGEach: s.net }));
          const keptTrim = loss.kept
            ? { keptTrim: { lot: lotOf('peel', { kind: 'set-aside' }), grams: loss.trim } }
            : {};
          const lids = [{ lotId: 'lids', count: sizes.reduce((n, s) => n + s.count, 0) }];
          const filled = fillJars(fillingOf({ panG, jars, partialG: loss.partial, losses: lost, lids, ...keptTrim }));
          const out = sizes.reduce((g, s) => g + s.count * s.net, loss.partial + loss.trim + loss.skimmings + loss.pan);
          if (isRefusal(filled)) {
            assert.ok(out > panG);
            assert.match(
              filled.refused,
              new RegExp(`^${out} g came out of 25256-DAM-A but only ${panG} g went in: ${out - panG} g too much$`),
            );
            return;
          }
          assert.deepEqual(post(book, filled), { posted: true });
          const movements = book.entries.flatMap((e) => e.movements);
          const mass = batchMass(panLotId('b1'), movements, (id) => book.lots.get(id)?.kind === 'jars');
          assert.deepEqual([mass.inG, mass.openG, book.lots.get(panLotId('b1'))?.onHand], [panG, 0, 0]);
          assert.equal(
            mass.jarsG,
            sizes.reduce((g, s) => g + s.count * s.net, 0),
          );
          assert.equal(mass.bySink.vapour ?? 0, panG - out);
          assert.equal(mass.otherLotsG, loss.partial + (loss.kept ? loss.trim : 0));
          assert.equal(flows(movements, 'lids').outflow, lids[0]?.count);
        },
      ),
    ));

  it('stays open until it is filled', () => {
    const book = stocked([1500, 1200]);
    post(book, start([1500, 1200], 150));
    const mass = batchMass(
      panLotId('b1'),
      book.entries.flatMap((e) => e.movements),
      () => true,
    );
    assert.deepEqual([mass.inG, mass.jarsG, mass.openG], [2850, 0, 2850]);
  });

  it('accounts for the batch of the story: 2.85 kg in, six jars, a partial, the stones and 0.587 kg of steam', () => {
    const filled = fillJars(
      fillingOf({
        panG: 2850,
        jars: [{ kind: 'HP', unit: 'jar', count: 6, netGEach: 311 }],
        partialG: 277,
        losses: { trim: 120 },
      }),
    );
    assert.ok(!isRefusal(filled));
    assert.deepEqual(
      filled.movements.map((m) => ['lot' in m.to ? m.to.lot : m.to.sink, m.grams]),
      [
        ['b1.HP', 1866],
        ['b1.partial', 277],
        ['trim', 120],
        ['vapour', 587],
      ],
    );
    assert.deepEqual(
      filled.lots.map((l) => [l.code, l.kind, l.seal]),
      [
        ['25256-DAM-A', 'jars', 'waiting'],
        ['25256-DAM-A/partial', 'cold-jars', null],
      ],
    );
  });

  it('names the jar size in the code only where there are several', () => {
    const two = fillJars(
      fillingOf({
        panG: 5000,
        jars: [
          { kind: 'HP', unit: 'jar', count: 2, netGEach: 311 },
          { kind: 'Q4', unit: 'jar', count: 3, netGEach: 155 },
        ],
      }),
    );
    assert.ok(!isRefusal(two));
    assert.deepEqual(
      two.lots.map((l) => l.code),
      ['25256-DAM-A-HP', '25256-DAM-A-Q4'],
    );
  });
});
