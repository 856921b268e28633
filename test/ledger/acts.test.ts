import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { type Picking, pickFruit } from '#lib/ledger/acts/pick-fruit.ts';
import { receiveSupply } from '#lib/ledger/acts/receive-supply.ts';
import { takePieces } from '#lib/ledger/acts/take-pieces.ts';
import { balanceChanges } from '#lib/ledger/entry.ts';
import { amountIn } from '#lib/ledger/movement.ts';
import { actOf, DAY } from './ledger-samples.ts';

const picking = (gradeG: Picking['gradeG']): Picking => ({
  act: actOf('pick', 'harvest'),
  crop: { id: 'damson', label: 'Damson', foodId: 'damson' },
  row: 'D3',
  number: 1,
  gradeG,
  groundFall: false,
  roomId: null,
  flags: [],
  lockedUntil: null,
  details: {},
});

describe('a picking', () => {
  it('becomes one lot for each grade that has fruit, under one code, and conserves the grams', () =>
    fc.assert(
      fc.property(fc.nat(9000), fc.nat(9000), fc.nat(9000), fc.nat(9000), (perfect, blemished, soft, cull) => {
        const entry = pickFruit(picking({ perfect, blemished, soft, cull }));
        const graded = [perfect, blemished, soft, cull].filter((g) => g > 0);
        assert.deepEqual(
          entry.movements.map((m) => m.grams),
          graded,
        );
        const codes = entry.lots.map((l) => l.code);
        assert.equal(new Set(codes).size, graded.length);
        for (const code of codes) assert.match(code, /^H-25256-D3-DAM-1\/[PBSC]$/);
      }),
    ));
});

describe('a receipt', () => {
  it('is a lot of its own with supplier and day, and mass only where it is weighed', () => {
    const lids = receiveSupply({
      act: actOf('r', 'receive'),
      kind: 'lids',
      item: 'lid-regular',
      what: 'LID',
      number: 2,
      label: 'Lids',
      unit: 'lid',
      qty: 204,
      roomId: null,
      details: { supplier: 'a seller' },
    });
    assert.deepEqual(
      [lids.lots[0]?.code, lids.lots[0]?.madeOn, lids.lots[0]?.details],
      ['R-25256-LID-2', DAY, { supplier: 'a seller' }],
    );
    assert.deepEqual(lids.movements, [
      { from: { sink: 'bought' }, to: { lot: 'r.lid-regular' }, qty: 204, grams: null, piece: null },
    ]);
    const opening = receiveSupply({
      act: actOf('o', 'opening'),
      kind: 'supply',
      item: 'sugar',
      what: 'SUG',
      number: 1,
      label: 'Sugar',
      unit: 'g',
      qty: 20_000,
      roomId: null,
    });
    assert.deepEqual(opening.movements[0]?.from, { sink: 'opening' });
    assert.equal(opening.movements[0]?.grams, 20_000);
  });
});

describe('jars taken', () => {
  const taken = takePieces({
    act: actOf('t', 'take'),
    to: 'eaten',
    pieces: [1, 2].map((piece) => ({ lot: { id: 'jam', details: { netG: 311 } }, piece })),
    returns: { lotId: 'empties', count: 2 },
  });

  it('go one by one under their numbers, with what is in each', () => {
    assert.deepEqual(
      taken.movements.slice(0, 2).map((m) => [m.piece, m.qty, m.grams]),
      [
        [1, 1, 311],
        [2, 1, 311],
      ],
    );
  });

  it('give their glass back when they were eaten', () => {
    const changes = balanceChanges(taken.movements, () => 'jar');
    assert.deepEqual(
      [...changes],
      [
        ['jam', -2],
        ['empties', 2],
      ],
    );
  });
});

describe('an amount', () => {
  it('is grams on a lot held by mass and the lot’s own unit on any other', () => {
    assert.equal(amountIn('g', { qty: 6, grams: 1869 }), 1869);
    assert.equal(amountIn('g', { qty: 6, grams: null }), 6);
    assert.equal(amountIn('jar', { qty: 6, grams: 1869 }), 6);
    assert.equal(amountIn('ml', { qty: 30, grams: 31 }), 30);
  });
});
