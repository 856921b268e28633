import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { describe, test } from 'vitest';
import { averageDegreeDays, degreeDaySum, degreeDays } from '#lib/science/degree-days.ts';

/** Average temperature over a day of 100,000 steps of the sine, cut at base and top: shares nothing with the closed form. */
function integrated(low: number, high: number, base: number, top = Number.POSITIVE_INFINITY): number {
  const steps = 100_000;
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const t = (low + high) / 2 + ((high - low) / 2) * Math.sin((2 * Math.PI * (i + 0.5)) / steps);
    sum += Math.max(0, Math.min(t, top) - base);
  }
  return sum / steps;
}

const ROWS = [
  [40, 80, 60, undefined, 6.3662],
  [45, 75, 50, undefined, 10.8816],
  [30, 55, 50, undefined, 0.9693],
  [50, 90, 50, 88, 19.8092],
  [10, 24, 12, undefined, 5.3256],
  [2, 14, 10, undefined, 1.017],
  [5, 30, 10, 30, 8.4693],
] as const;

describe('degree-days of a day', () => {
  test('a published example: 64 °F on average, threshold 53 °F, 11 degree-days (UC Statewide IPM Program, degree-day table)', () =>
    assert.equal(averageDegreeDays({ low: 53, high: 75 }, 53), 11));
  test.each(ROWS)('low %d, high %d, base %d, top %s', (low, high, base, top, expected) => {
    const got = degreeDays({ low, high }, base, top);
    assert.ok(Math.abs(got - expected) < 6e-5, `${got} for ${expected}`);
    assert.ok(Math.abs(got - integrated(low, high, base, top)) < 1e-6);
  });
  test('a day wholly above or below the base, and one the wrong way round', () => {
    assert.equal(degreeDays({ low: 12, high: 20 }, 10), 6);
    assert.equal(degreeDays({ low: 2, high: 9 }, 10), 0);
    assert.throws(() => degreeDays({ low: 9, high: 2 }, 5), RangeError);
  });
});

/** Daily weather of Seattle 2012-2015, U.S. Government work, as carried by the npm package vega-datasets 3.2.1 (a test dependency). */
describe('real daily weather', () => {
  const file = new URL('../../node_modules/vega-datasets/data/seattle-weather.csv', import.meta.url);
  const [head, ...lines] = readFileSync(file, 'utf8').trim().split('\n');
  const names = (head as string).trim().split(',');
  const rows = lines.map((line) => {
    const cells = line.split(',');
    const cell = (name: string) => cells[names.indexOf(name)] as string;
    return { date: cell('date').replaceAll('/', '-'), low: Number(cell('temp_min')), high: Number(cell('temp_max')) };
  });
  const year = (y: number) => rows.filter((r) => r.date.startsWith(String(y)));

  test('has four whole years', () =>
    assert.deepEqual(
      [2012, 2013, 2014, 2015].map((y) => year(y).length),
      [366, 365, 365, 365],
    ));
  // Computed with numpy from the same file by the single sine and by the plain average.
  test.each([
    [2012, 4, 2763.0, 2721.7],
    [2012, 5, 2451.0, 2396.2],
    [2012, 7, 1883.4, 1829.4],
    [2012, 10, 1201.7, 1133.4],
    [2013, 4, 3077.3, 3050.6],
    [2013, 5, 2759.3, 2720.7],
    [2013, 7, 2170.9, 2111.1],
    [2013, 10, 1436.3, 1369.2],
  ])('%d above %d °C: %d by the sine, %d by the average', (y, base, sine, plain) => {
    assert.ok(Math.abs((degreeDaySum(year(y), base).at(-1) as number) - sine) < 0.06);
    assert.ok(Math.abs(year(y).reduce((sum, d) => sum + averageDegreeDays(d, base), 0) - plain) < 0.06);
  });
  test.each([
    [2012, '2012-07-22', 571.0],
    [2013, '2013-07-01', 683.8],
  ])('%d: 500 above 10 °C first on %s; %d above 5 °C to the end of May', (y, day, may) => {
    const sums = degreeDaySum(year(y), 10);
    assert.equal(year(y)[sums.findIndex((s) => s >= 500)]?.date, day);
    const spring = year(y).filter((r) => r.date <= `${y}-05-31`);
    assert.ok(Math.abs((degreeDaySum(spring, 5).at(-1) as number) - may) < 0.06);
  });
});
