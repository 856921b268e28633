/** MSU Extension sheet 01600946: 10 minutes to 1,000 ft, one minute more for each further 1,000 ft begun. */
import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { needsSterileJars, steriliseMinutes } from '#lib/reference/sterile-jars.ts';

describe('sterile jars', () => {
  it('boils empty jars 10 minutes to 1,000 ft and a minute more per thousand begun', () => {
    const vectors = [
      [0, 10],
      [999, 10],
      [1000, 10],
      [1000.5, 11],
      [1001, 11],
      [2000, 11],
      [2001, 12],
      [3000, 12],
      [3001, 13],
      [6000, 15],
      [6001, 16],
      [10_000, 19],
    ] as const;
    for (const [ft, minutes] of vectors) assert.equal(steriliseMinutes(ft), minutes, `${ft} ft`);
  });

  it('asks for sterile jars below 10 minutes of processing only', () => {
    assert.ok(needsSterileJars(5));
    assert.ok(needsSterileJars(9.99));
    assert.ok(!needsSterileJars(10));
  });

  it('refuses altitudes below 0 ft and what is not a number', () => {
    for (const ft of [-1, Number.NaN, Number.POSITIVE_INFINITY]) assert.throws(() => steriliseMinutes(ft), RangeError);
  });
});
