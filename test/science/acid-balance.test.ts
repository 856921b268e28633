import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { addAcid, fitAcidity, moleShares, phOf, withAddition } from '#lib/science/acid-balance.ts';
import { cationAt, solvePh } from '#lib/science/charge-balance.ts';
import { SCIENCE_CHECKS } from '#test/published/science-checks.ts';

const tomato = (pH: number) =>
  fitAcidity({ taPct: 0.38, as: 'citric', pH, shares: { citric: 0.85, malic: 0.15 }, waterPct: 94 });

describe('the acid balance', () => {
  it('starts at the measured pH', () => {
    for (const pH of [4.2, 4.6, 4.9]) assert.ok(Math.abs(phOf(tomato(pH)) - pH) < 1e-4);
  });

  it('lowers a tomato of pH 4.6 to 4.49, 4.38, 4.29, 4.20 by 0.5 to 2 g/kg of citric acid', () => {
    const read = [0.5, 1, 1.5, 2].map((citricG) => addAcid(tomato(4.6), { citricG }).pH.toFixed(2));
    assert.deepEqual(read, ['4.49', '4.38', '4.29', '4.20']);
  });

  it('answers nearly in a line, as Sapers found on 58 tomato cultivars', () => {
    const at = (citricG: number): number => addAcid(tomato(4.6), { citricG }).pH;
    const bend = Math.abs((at(0) + at(2)) / 2 - at(1));
    assert.ok(bend < 0.1 * (at(0) - at(2)), `${bend}`);
  });

  it('never rises on acid, and adds up in any order', () => {
    const s = tomato(4.6);
    for (const add of [{ citricG: 1 }, { malicG: 1 }, { tartaricG: 1 }, { lemonJuiceG: 20 }]) {
      assert.ok(addAcid(s, add).pH < 4.6);
    }
    const one = withAddition(withAddition(s, { citricG: 1 }), { waterG: 100, lemonJuiceG: 10 });
    const other = withAddition(s, { citricG: 1, waterG: 100, lemonJuiceG: 10 });
    assert.ok(Math.abs(phOf(one) - phOf(other)) < 1e-9);
  });

  it('rises towards neutral with water', () => {
    assert.ok(addAcid(tomato(4.2), { waterG: 2000 }).pH > 4.2);
  });

  it('makes mole shares of mass shares', () => {
    const shares = moleShares({ citric: 0.5, malic: 0.5 });
    assert.ok(Math.abs((shares.citric ?? 0) + (shares.malic ?? 0) - 1) < 1e-12);
    assert.ok((shares.malic ?? 0) > (shares.citric ?? 0));
  });

  it('refuses a negative addition, and an acidity that no acid explains', () => {
    assert.throws(() => addAcid(tomato(4.6), { citricG: -1 }), RangeError);
    assert.throws(
      () => fitAcidity({ taPct: 0.5, as: 'citric', pH: 9, shares: { citric: 1 }, waterPct: 90 }),
      RangeError,
    );
  });
});

describe('one mean cation for a fruit', () => {
  const sets = [
    { name: 'ten blueberry samples', set: SCIENCE_CHECKS.blueberries, rms: 0.12 },
    { name: 'four apple juices', set: SCIENCE_CHECKS.appleJuices, rms: 0.14 },
  ];
  it.each(sets)('predicts the pH of $name to rms $rms', ({ set, rms }) => {
    const states = set.samples.map(([taPct, pH]) =>
      fitAcidity({ taPct, as: set.as, pH, shares: { [set.as]: 1 }, waterPct: set.waterPct }),
    );
    const mean = states.reduce((sum, s) => sum + s.cationEq, 0) / states.length / (set.waterPct / 100);
    const errors = set.samples.map(([taPct, pH]) => {
      const titrated = (taPct * 10) / (set.as === 'citric' ? 64.04 : 67.05) / (set.waterPct / 100);
      let [low, high] = [1e-4, 1];
      for (let i = 0; i < 60; i++) {
        const middle = (low + high) / 2;
        if (cationAt({ [set.as]: middle }, 8.2) - mean < titrated) low = middle;
        else high = middle;
      }
      return solvePh({ [set.as]: low }, mean) - pH;
    });
    const own = Math.sqrt(errors.reduce((sum, e) => sum + e * e, 0) / errors.length);
    assert.ok(Math.abs(own - rms) < 0.011, `${own}`);
  });
});
