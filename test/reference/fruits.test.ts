import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { FRUIT_IONS, type FruitIonsRow } from '#lib/reference/fruit-ions.ts';
import { FRUITS, type Fruit, fruitOf } from '#lib/reference/fruits.ts';
import { lowAcidRuleOf } from '#lib/reference/low-acid-rules.ts';

const count = (test: (f: Fruit) => boolean): number => FRUITS.filter(test).length;

describe('the fruit table', () => {
  it('holds 67 fruits, each id once', () => {
    assert.equal(FRUITS.length, 67);
    assert.equal(new Set(FRUITS.map((f) => f.id)).size, 67);
  });

  it('orders every low, typical and high figure', () => {
    for (const f of FRUITS) {
      assert.ok(f.solublePct.low <= f.solublePct.typ && f.solublePct.typ <= f.solublePct.high, f.id);
      assert.ok(f.acidPct.low <= f.acidPct.typ && f.acidPct.typ <= f.acidPct.high, f.id);
      assert.ok(f.pectinPct.low <= f.pectinPct.ripe && f.pectinPct.ripe <= f.pectinPct.high, f.id);
      assert.ok(f.pH.low <= f.pH.high && f.pH.low >= 2 && f.pH.high < 7, f.id);
      assert.ok(f.waterPct > 60 && f.waterPct < 97 && f.wastePct >= 0 && f.wastePct < 60, f.id);
    }
  });

  it('classes acidity by the highest pH: A to 4.1, B to 4.6, C above, medlar C by hand', () => {
    for (const f of FRUITS) {
      const byPH = f.pH.high <= 4.1 ? 'A' : f.pH.high <= 4.6 ? 'B' : 'C';
      assert.equal(f.acidClass, f.id === 'medlar' ? 'C' : byPH, f.id);
    }
  });

  it('counts the classes: 21 A, 13 provisional A, 16 B, 17 C', () => {
    assert.equal(
      count((f) => f.acidClass === 'A' && !f.acidProvisional),
      21,
    );
    assert.equal(
      count((f) => f.acidClass === 'A' && f.acidProvisional),
      13,
    );
    assert.equal(
      count((f) => f.acidClass === 'B'),
      16,
    );
    assert.equal(
      count((f) => f.acidClass === 'C'),
      17,
    );
  });

  it('marks a class provisional wherever its pH range has no publication', () => {
    for (const f of FRUITS.filter((x) => x.status.pH.source === 'MEMORY')) assert.ok(f.acidProvisional, f.id);
  });

  it('names a low-acid rule that names the fruit back', () => {
    for (const f of FRUITS) {
      if (f.lowAcidRule) assert.ok(lowAcidRuleOf(f.lowAcidRule).fruitIds.includes(f.id), f.id);
    }
  });

  it('agrees with USDA SR26 where it cites it: water and refuse of six fruits', () => {
    const usda = [
      ['apple-dessert', 85.56, 10],
      ['apricot', 86.35, 7],
      ['strawberry', 90.95, 6],
      ['currant-black', 81.96, 2],
      ['quince', 83.8, 39],
      ['rhubarb', 93.61, 25],
    ] as const;
    for (const [id, water, waste] of usda) {
      const f = fruitOf(id);
      assert.equal(f.waterPct, water, id);
      assert.equal(f.wastePct, waste, id);
      assert.equal(f.status.water.source, 'USDA', id);
    }
  });

  it('shares out the acids of a fruit to a whole', () => {
    for (const [id, row] of Object.entries(FRUIT_IONS) as [string, FruitIonsRow][]) {
      const sum = Object.values(row.shares).reduce((a, b) => a + b, 0);
      assert.ok(Math.abs(sum - 1) < 0.011, `${id}: ${sum}`);
    }
  });

  it('refuses a fruit it does not know instead of guessing', () => {
    assert.equal(fruitOf('damson').name, 'Damson');
    for (const id of ['Damson', 'apple', '', '__proto__']) assert.throws(() => fruitOf(id), RangeError);
  });
});
