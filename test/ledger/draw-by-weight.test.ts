import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { drawByWeight } from '#lib/ledger/acts/draw-by-weight.ts';
import { isRefusal } from '#lib/ledger/entry.ts';
import { byWeightG, type HeldLot } from '#lib/ledger/lot.ts';
import { addDays } from '#lib/units/plain-date.ts';
import { DAY, lotOf } from './ledger-samples.ts';

const packs = (id: string, onHand: number, netG: number, age = 0): HeldLot => ({
  ...lotOf(id, { madeOn: addDays(DAY, -age), unit: 'pack', kind: 'frozen', details: { netG } }),
  onHand,
});
const loose = (id: string, onHand: number, age = 0): HeldLot => ({
  ...lotOf(id, { madeOn: addDays(DAY, -age), unit: 'g' }),
  onHand,
});
const by = { act: { id: 'act-1' }, taken: new Set<string>() };
const drawn = (lots: HeldLot[], grams: number, taken = by.taken) => {
  const found = drawByWeight(lots, grams, 'cherries', { ...by, taken });
  if (isRefusal(found)) throw new Error(found.refused);
  return found;
};

describe('drawing by weight', () => {
  it('takes 1.30 kg as two packs and 300 g of a third, of which 200 g stay in an opened pack', () => {
    const lots = [packs('a', 3, 500)];
    const found = drawn(lots, 1300);
    assert.deepEqual(found.draws, [
      { lotId: 'a', qty: 2, grams: 1000 },
      { lotId: 'act-1.opened-a', qty: 300, grams: 300 },
    ]);
    assert.deepEqual(
      found.opened.map((l) => [l.code, l.unit, l.onHand]),
      [[`${lots[0]?.code}/opened-1`, 'g', 200]],
    );
    assert.deepEqual(found.movements, [
      { from: { lot: 'a' }, to: { lot: 'act-1.opened-a' }, qty: 1, grams: 500, piece: null },
    ]);
    assert.equal(lots[0]?.onHand, 0);
  });

  it('goes by age, an opened pack before a whole one of its day, and opens under a code that is free', () => {
    const lots = [packs('new', 4, 500), packs('old', 1, 500, 9), loose('open', 200, 9)];
    const found = drawn(lots, 800, new Set([`${lots[0]?.code}/opened-1`]));
    assert.deepEqual(
      found.draws.map((d) => [d.lotId, d.grams]),
      [
        ['open', 200],
        ['old', 500],
        ['act-1.opened-new', 100],
      ],
    );
    assert.equal(found.opened[0]?.code, `${lots[0]?.code}/opened-2`);
  });

  it('says what is there when it is not enough, and leaves the lots alone', () => {
    const lots = [packs('a', 2, 500), loose('b', 150)];
    assert.deepEqual(drawByWeight(lots, 1151, 'cherries', by), { refused: 'cherries: 1151 g asked for, 1150 g left' });
    assert.deepEqual(
      lots.map((l) => l.onHand),
      [2, 150],
    );
  });

  it('keeps every gram: what was drawn, what is opened and what is left are what there was', () =>
    fc.assert(
      fc.property(
        fc.array(
          fc.record({ n: fc.nat(6), netG: fc.integer({ min: 1, max: 1500 }), age: fc.nat(30), loose: fc.boolean() }),
          {
            maxLength: 5,
          },
        ),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (made, share) => {
          const lots = made.map((m, i) =>
            m.loose ? loose(`l${i}`, m.n * m.netG, m.age) : packs(`p${i}`, m.n, m.netG, m.age),
          );
          const weight = () => lots.reduce((g, l) => g + (byWeightG(l) ?? 0), 0);
          const before = weight();
          const grams = Math.floor(share * before);
          const found = drawn(lots, grams);
          assert.equal(
            found.draws.reduce((g, d) => g + d.grams, 0),
            grams,
          );
          assert.equal(grams + found.opened.reduce((g, l) => g + l.onHand, 0) + weight(), before);
          assert.ok(found.opened.length <= 1 && found.opened.every((l) => l.onHand > 0));
          assert.ok(lots.every((l) => l.onHand >= 0));
        },
      ),
    ));
});
