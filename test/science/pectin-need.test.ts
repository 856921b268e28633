import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { pectinNeed } from '#lib/science/pectin-need.ts';

const best = { solidsPct: 65, pH: 2.4, boiledMin: 0, kind: 'HM' } as const;

describe('pectin needed', () => {
  it('is a gram of grade 150 for 150 g of sugar at its best acidity, the definition of the grade', () => {
    const need = pectinNeed({ ...best, sugarTotalG: 1500 });
    assert.ok(need.sets && Math.abs(need.eq150G - 10) < 1e-9);
  });

  it('grows with boiling, with milder acidity and with less sugar in the jam', () => {
    const eq = (change: Partial<Parameters<typeof pectinNeed>[0]>): number => {
      const need = pectinNeed({ ...best, sugarTotalG: 1000, ...change });
      assert.ok(need.sets);
      return need.eq150G;
    };
    assert.ok(eq({ boiledMin: 15 }) > eq({}));
    assert.ok(eq({ beforeSugarMin: 15 }) > eq({ boiledMin: 15 }));
    assert.ok(eq({ pH: 3.2 }) > eq({}));
    assert.ok(eq({ solidsPct: 58, pH: 2 }) > eq({ pH: 2 }));
  });

  it('cannot be met at pH 3.5 and 65 %, nor at 50 %, and says why', () => {
    const mild = pectinNeed({ ...best, sugarTotalG: 1000, pH: 3.5 });
    assert.ok(!mild.sets && /below 3\.46/.test(mild.reason));
    const thin = pectinNeed({ ...best, sugarTotalG: 1000, solidsPct: 50 });
    assert.ok(!thin.sets && /50 %/.test(thin.reason));
  });

  it('is left to the packet for low-sugar pectin', () => {
    const need = pectinNeed({ ...best, sugarTotalG: 300, solidsPct: 40, kind: 'LM' });
    assert.ok(!need.sets && /packet/.test(need.reason));
  });

  it('refuses a negative mass', () => {
    assert.throws(() => pectinNeed({ ...best, sugarTotalG: -1 }), RangeError);
  });
});
