/** By hand: 60 g of a powder that carries 5.5 (3 to 9) g of sugar a gram carry 330 g (180 to 540), as 2.2 g (1.2 to 3.6) of grade 150 do. */
import { describe, expect, it } from 'vitest';
import { allPectinReplaced, pectinReplaced } from '#lib/batch/pectin-replaced.ts';
import { pectinSupply } from '#lib/science/pectin-supply.ts';

const powder = { kind: 'powder', code: 'S-1', grams: 60, sugarPerG: { low: 3, typ: 5.5, high: 9 } } as const;
const stock = { kind: 'stock', code: 'S-2', grams: 1000, clot: 'medium' } as const;

describe('bought pectin not needed', () => {
  it('is what carries the same sugar at grade 150', () => {
    const f = pectinReplaced(powder);
    expect(f?.value).toBeCloseTo(2.2, 9);
    expect(f?.band?.low).toBeCloseTo(1.2, 9);
    expect(f?.band?.high).toBeCloseTo(3.6, 9);
  });

  it('agrees with what a batch counts for the same powder and the same tested juice', () => {
    expect(pectinReplaced(powder)?.value).toBeCloseTo(
      pectinSupply([{ kind: 'powder', powderId: 'apple-powder', grams: 60 }]).eq150G,
      9,
    );
    expect(pectinReplaced(stock)?.value).toBeCloseTo(
      pectinSupply([{ kind: 'tested juice', grams: 1000, clot: 'medium' }]).eq150G,
      9,
    );
  });

  it('is not said for stock nobody tested', () => {
    expect(pectinReplaced({ ...stock, clot: null })).toBeNull();
    expect(allPectinReplaced([{ ...stock, clot: null }])).toBeNull();
    expect(allPectinReplaced([powder, { ...stock, clot: null }])?.typ).toBeCloseTo(2.2, 9);
  });

  it('adds up end to end over lots', () => {
    const all = allPectinReplaced([powder, powder, stock]);
    expect(all?.low).toBeCloseTo(2.4 + (1000 * 0.004 * 130) / 150, 9);
    expect(all?.high).toBeCloseTo(7.2 + (1000 * 0.008 * 130) / 150, 9);
  });
});
