import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { pectinSupply } from '#lib/science/pectin-supply.ts';

describe('pectin brought', () => {
  it('by 100 g of bought pectin of grade 150 is 100 g', () => {
    assert.equal(pectinSupply([{ kind: 'bought pectin', grams: 100 }]).eq150G, 100);
    assert.equal(pectinSupply([{ kind: 'bought pectin', grams: 75, grade: 200 }]).eq150G, 100);
  });

  it('by 1 kg of sugar needs about 180 g of apple powder', () => {
    const { eq150G } = pectinSupply([{ kind: 'powder', powderId: 'apple-powder', grams: 180 }]);
    assert.ok(Math.abs(eq150G * 150 - 1000) < 20, `${eq150G * 150} g of sugar`);
  });

  it('falls as fruit ripens, and with a strained juice', () => {
    const of = (more: object): number =>
      pectinSupply([{ kind: 'fruit', fruitId: 'damson', grams: 1000, ...more }]).eq150G;
    assert.ok(of({ ripeness: 'under-ripe' }) > of({}));
    assert.ok(of({ ripeness: 'overripe' }) < of({ ripeness: 'ripe and soft' }));
    assert.ok(of({ route: 'one extraction' }) < of({ route: 'two extractions' }));
  });

  it('adds up, and its spread falls when sources are mixed', () => {
    const damson = { kind: 'fruit', fruitId: 'damson', grams: 1000 } as const;
    const apple = { kind: 'fruit', fruitId: 'apple-cooking', grams: 1000 } as const;
    const both = pectinSupply([damson, apple]);
    assert.ok(Math.abs(both.eq150G - pectinSupply([damson]).eq150G - pectinSupply([apple]).eq150G) < 1e-9);
    assert.ok(both.relSd < 0.4);
    assert.deepEqual(pectinSupply([]), { eq150G: 0, relSd: 0 });
  });

  it('is taken from the alcohol test or from a learnt strength when there is one', () => {
    const strong = pectinSupply([{ kind: 'tested juice', grams: 1000, clot: 'high' }]);
    const weak = pectinSupply([{ kind: 'tested juice', grams: 1000, clot: 'low' }]);
    assert.ok(strong.eq150G > 4 * weak.eq150G);
    const known = { low: 6.5, typ: 7.5, high: 8.5 };
    const learnt = pectinSupply([{ kind: 'powder', powderId: 'apple-powder', grams: 100, sugarPerG: known }]);
    assert.equal(learnt.eq150G, 5);
    assert.ok(learnt.relSd < pectinSupply([{ kind: 'powder', powderId: 'apple-powder', grams: 100 }]).relSd);
  });

  it('is refused for what is not in the tables', () => {
    assert.throws(() => pectinSupply([{ kind: 'fruit', fruitId: 'plum', grams: 1 }]), RangeError);
    assert.throws(() => pectinSupply([{ kind: 'powder', powderId: 'carrot', grams: 1 }]), RangeError);
    assert.throws(() => pectinSupply([{ kind: 'bought pectin', grams: -1 }]), RangeError);
  });
});
