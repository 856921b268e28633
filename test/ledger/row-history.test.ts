import assert from 'node:assert/strict';
import { test } from 'vitest';
import { type Movement, moveGrams, movePieces } from '#lib/ledger/movement.ts';
import { rowHistory, rowKey } from '#lib/ledger/row-history.ts';
import { lotOf } from './ledger-samples.ts';

const fruit = (id: string, row: string, grade: 'perfect' | 'cull' = 'perfect') =>
  lotOf(id, { kind: 'fruit', row, cropId: 'damson', grade });
const jars = (id: string) => lotOf(id, { kind: 'jars', unit: 'jar' });

/** Row A 3 kg and row B 1 kg into one pan with 4 kg of sugar: 8 jars; a jar of them is eaten, one broken. */
const movements: Movement[] = [
  moveGrams({ lot: 'a' }, { lot: 'pan' }, 3000),
  moveGrams({ lot: 'b' }, { lot: 'frozen-b' }, 1000),
  moveGrams({ lot: 'frozen-b' }, { lot: 'pan' }, 1000),
  moveGrams({ lot: 'sugar' }, { lot: 'pan' }, 4000),
  { from: { lot: 'pan' }, to: { lot: 'jam' }, qty: 8, grams: 2400, piece: null },
  movePieces({ lot: 'jam' }, { sink: 'eaten' }, 1),
  movePieces({ lot: 'jam' }, { sink: 'given' }, 3),
  movePieces({ lot: 'jam' }, { sink: 'broken' }, 1),
];
const lots = [
  fruit('a', 'A'),
  fruit('b', 'B'),
  fruit('culls', 'A', 'cull'),
  lotOf('frozen-b', { kind: 'frozen', unit: 'g' }),
  lotOf('sugar', { kind: 'supply' }),
  lotOf('pan', { kind: 'batch' }),
  jars('jam'),
];
const pickings = [
  {
    row: rowKey('A', 'damson'),
    year: 2025,
    movements: [
      moveGrams({ sink: 'harvest' }, { lot: 'a' }, 3000),
      moveGrams({ sink: 'harvest' }, { lot: 'culls' }, 400),
      moveGrams({ sink: 'harvest' }, { sink: 'compost' }, 100),
      moveGrams({ sink: 'harvest' }, { sink: 'sold' }, 500),
    ],
  },
  { row: rowKey('A', 'damson'), year: 2024, movements: [moveGrams({ sink: 'harvest' }, { sink: 'eaten' }, 900)] },
];

test('a row has its pickings and culls by year, and jars by its grams in the pan; sugar has no row', () => {
  const rows = rowHistory({ pickings, lots, movements });
  assert.deepEqual(rows.get('A|damson'), [
    { year: 2024, pickedG: 900, cullG: 0, jars: 0, finished: 0 },
    { year: 2025, pickedG: 4000, cullG: 500, jars: 6, finished: 3 },
  ]);
  assert.deepEqual(rows.get('B|damson'), [{ year: 2025, pickedG: 0, cullG: 0, jars: 2, finished: 1 }]);
});

test('fruit from elsewhere takes its part of the pan and gives it to no row', () => {
  const bought = lotOf('bought', { kind: 'fruit', cropId: null });
  const rows = rowHistory({
    pickings: [],
    lots: [...lots, bought],
    movements: [moveGrams({ lot: 'bought' }, { lot: 'pan' }, 4000), ...movements],
  });
  assert.equal(rows.get('A|damson')?.[0]?.jars, 3);
});
