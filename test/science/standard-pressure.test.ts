import assert from 'node:assert/strict';
import psychrolib from 'psychrolib';
import { describe, it } from 'vitest';
import { standardAltitude, standardPressure } from '#lib/science/standard-pressure.ts';

psychrolib.SetUnitSystem(psychrolib.SI);

describe('standard pressure', () => {
  it('agrees with psychrolib 1.1.1 to 2 Pa from 0 to 3000 m', () => {
    for (let h = 0; h <= 3000; h += 100) {
      const other = psychrolib.GetStandardAtmPressure(h);
      assert.ok(Math.abs(standardPressure(h) - other) < 2, `${h} m: ${standardPressure(h)} against ${other}`);
    }
  });

  it('is that of the printed table: kPa at 1000 to 10 000 ft', () => {
    const printed = { 1000: 97.72, 2000: 94.21, 4000: 87.51, 6000: 81.2, 8000: 75.26, 10000: 69.68 };
    for (const [ft, kPa] of Object.entries(printed)) {
      assert.ok(Math.abs(standardPressure(Number(ft) * 0.3048) / 1000 - kPa) < 0.011, ft);
    }
  });

  it('gives the altitude back', () => {
    for (const h of [0, 410, 1829, 5000]) assert.ok(Math.abs(standardAltitude(standardPressure(h)) - h) < 1e-6);
  });

  it('is refused outside -500 to 11 000 m', () => {
    for (const h of [-501, 11_001, Number.NaN]) assert.throws(() => standardPressure(h), RangeError);
  });
});
