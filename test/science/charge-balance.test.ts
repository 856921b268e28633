import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { cationAt, solvePh } from '#lib/science/charge-balance.ts';

describe('the charge balance', () => {
  it('gives pure water pH 7', () => {
    assert.ok(Math.abs(solvePh({}, 0) - 7) < 0.01);
  });

  it('gives 0.1 mol/kg acetic acid the textbook 2.88, and its half-neutralised buffer 4.65 (pKa 4.756 less activity)', () => {
    assert.ok(Math.abs(solvePh({ acetic: 0.1 }, 0) - 2.88) < 0.02);
    assert.ok(Math.abs(solvePh({ acetic: 0.2 }, 0.1) - 4.65) < 0.03);
  });

  it('solved backwards gives the cations', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.005, max: 0.3, noNaN: true }),
        fc.double({ min: 2.5, max: 5.5, noNaN: true }),
        (citric, pH) => {
          const cation = cationAt({ citric }, pH);
          fc.pre(cation > 0.001);
          assert.ok(Math.abs(solvePh({ citric }, cation) - pH) < 1e-4, `${citric} mol at ${pH}`);
        },
      ),
    );
  });

  it('falls with acid and rises with cations', () => {
    assert.ok(solvePh({ citric: 0.1 }, 0.03) < solvePh({ citric: 0.08 }, 0.03));
    assert.ok(solvePh({ citric: 0.1 }, 0.04) > solvePh({ citric: 0.1 }, 0.03));
  });

  it("does not reproduce Gomori's citrate buffer table: it reads 0.2-0.4 lower, on the side of the primary standard", () => {
    // mL of 0.1 M citric acid and of 0.1 M sodium citrate to 100 mL, and the printed pH (table from memory, sure).
    const printed = [
      [3, 46.5, 3.5],
      [4, 33, 17],
      [5, 20.5, 29.5],
    ] as const;
    const under = printed.map(
      ([pH, acid, salt]) => pH - solvePh({ citric: (0.1 * (acid + salt)) / 100 }, (0.3 * salt) / 100),
    );
    assert.deepEqual(
      under.map((x) => x.toFixed(2)),
      ['0.38', '0.20', '0.22'],
    );
  });
});
