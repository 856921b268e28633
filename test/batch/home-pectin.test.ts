import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { batchSheet } from '#lib/batch/batch-sheet.ts';
import type { HomePectinLot } from '#lib/batch/home-pectin.ts';
import { homeBatch } from './home-kitchen.ts';

const powder = (code: string, grams: number, word: string, sugarPerG: HomePectinLot['sugarPerG']): HomePectinLot => ({
  item: 'apple-powder',
  code,
  grams,
  word,
  sugarPerG,
  clot: null,
});
const stock = (code: string, grams: number, clot: HomePectinLot['clot']): HomePectinLot => ({
  item: 'pectin-stock',
  code,
  grams,
  word: clot ? 'strong' : 'untested',
  sugarPerG: null,
  clot,
});
const cherries = (amounts: object, homePectin: HomePectinLot[]) =>
  batchSheet(
    homeBatch('sour-cherry-powder-jam', [{ foodId: 'cherry-sour', grams: 1300, grade: 'perfect', prepared: true }], {
      asked: { amounts },
      homePectin,
    }),
  );

describe('home pectin of a dose', () => {
  it('is drawn from the oldest lot first, each with its own strength, and what they carry is added up with its band', () => {
    const line = [
      powder('S-24', 40, 'learnt', { low: 6, typ: 7, high: 8 }),
      powder('S-25', 900, 'weak', { low: 3, typ: 4, high: 5 }),
    ];
    const { set } = cherries({ 'apple-powder': 100 }, line);
    assert.deepEqual(
      set?.parts.map((p) => [p.code, p.grams, p.word]),
      [
        ['S-24', 40, 'learnt'],
        ['S-25', 60, 'weak'],
      ],
    );
    // 40 × 7 + 60 × 4, 40 × 6 + 60 × 3, 40 × 8 + 60 × 5.
    assert.equal(set?.sugarByPowder?.value, 520);
    assert.deepEqual(set?.sugarByPowder?.band, { low: 420, high: 620 });
  });

  it('takes what no lot holds by the table, as untested', () => {
    const { set } = cherries({ 'apple-powder': 100 }, [powder('S-24', 40, 'strong', { low: 6, typ: 8, high: 10 })]);
    assert.deepEqual(
      set?.parts.map((p) => [p.code, p.grams, p.word]),
      [
        ['S-24', 40, 'strong'],
        [null, 60, 'untested'],
      ],
    );
    assert.equal(set?.sugarByPowder?.value, 40 * 8 + 60 * 5.5);
  });

  it('mixes powder with a stock of known clot: both stand in the pan, in the balance and in the sum', () => {
    const plain = cherries({}, []);
    const mixed = cherries({ 'pectin-stock': 500 }, [stock('S-STK', 2000, 'high')]);
    assert.deepEqual(
      mixed.pans[0]?.doses.map((d) => d.item),
      ['sugar', 'water', 'lemon-juice-bottled', 'apple-powder', 'pectin-stock'],
    );
    const charge = (s: typeof plain) => s.pans[0]?.balance.chargeG.value ?? 0;
    assert.equal(charge(mixed) - charge(plain), 500);
    // 33 g × 5.5 and 500 g × 1.15 % × 130.
    assert.ok(Math.abs((mixed.set?.sugarByPowder?.value ?? 0) - (181.5 + 747.5)) < 1e-9);
    assert.ok((mixed.set?.ratio?.value ?? 0) > (plain.set?.ratio?.value ?? 0));
    assert.match(
      mixed.set?.softSet ?? '',
      /33 g of untested powder .* 500 g of strong stock S-STK carries about 0\.75 kg/,
    );
  });

  it('asks nothing where the dose carries it', () => {
    const strong = [powder('S-9', 5000, 'learnt', { low: 28, typ: 30, high: 32 })];
    assert.notEqual(cherries({ 'apple-powder': 100 }, strong).set?.outlook, 'soft');
    assert.equal(cherries({ 'apple-powder': 100 }, strong).set?.softSet, null);
    assert.equal(
      batchSheet(homeBatch('damson-jam', [{ foodId: 'damson', grams: 1300, grade: 'soft' }])).set?.softSet,
      null,
    );
  });
});
