/**
 * USDA SR26, file WEIGHT.
 * Taken from this project's notes of the publications, not a fresh copy: guards the transcription, not the reading.
 */
import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { gramsOfMeasure, HOUSEHOLD_MEASURES } from '#lib/reference/household-measures.ts';
import { ML_PER_US_CUP, ML_PER_US_TABLESPOON, ML_PER_US_TEASPOON } from '#lib/units/convert.ts';

const ML = { cup: ML_PER_US_CUP, tbsp: ML_PER_US_TABLESPOON, tsp: ML_PER_US_TEASPOON } as const;

describe('household measures', () => {
  it('holds 64 rows, each item and measure once', () => {
    assert.equal(HOUSEHOLD_MEASURES.length, 64);
    assert.equal(new Set(HOUSEHOLD_MEASURES.map((r) => `${r.item}|${r.measure}`)).size, 64);
  });

  it('gives the printed grams', () => {
    assert.equal(gramsOfMeasure('granulated sugar', 'cup'), 200);
    assert.equal(gramsOfMeasure('honey', 'cup'), 339);
    assert.equal(gramsOfMeasure('lemon juice, bottled', 'cup'), 244);
    assert.equal(gramsOfMeasure('strawberries pureed (use for crushed)', 'cup'), 232);
    assert.equal(gramsOfMeasure('crushed fruit or pulp, any', 'cup'), 235);
    assert.equal(gramsOfMeasure('pectin powder, 1.75 oz package', 'package'), 50);
  });

  it('keeps every density between loose dried fruit and honey', () => {
    for (const r of HOUSEHOLD_MEASURES) {
      if (!(r.measure in ML)) continue;
      const density = r.grams / ML[r.measure as keyof typeof ML];
      assert.ok(density > 0.2 && density < 1.5, `${r.item}: ${density.toFixed(2)} g/mL`);
    }
  });

  it('refuses a measure it has no weight for', () => {
    assert.throws(() => gramsOfMeasure('granulated sugar', 'lemon'), RangeError);
    assert.throws(() => gramsOfMeasure('sugar', 'cup'), RangeError);
  });
});
