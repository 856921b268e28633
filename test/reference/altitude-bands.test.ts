/** Headings of the process tables of AIB 539: 0-1,000, 1,001-3,000 or 1,001-6,000, 3,001-6,000, above 6,000 ft. */
import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { altitudeBand, type BandSystem } from '#lib/reference/altitude-bands.ts';

const indexAt = (system: BandSystem, ft: number) => {
  const found = altitudeBand(system, ft);
  return found.ok ? found.index : -1;
};

describe('altitude bands', () => {
  it('include their upper limit, in both systems', () => {
    assert.deepEqual(
      [0, 1000, 1001, 6000, 6001, 10_000].map((ft) => indexAt('three', ft)),
      [0, 0, 1, 1, 2, 2],
    );
    assert.deepEqual(
      [0, 1000, 1001, 3000, 3001, 6000, 6001].map((ft) => indexAt('four', ft)),
      [0, 0, 1, 1, 2, 2, 3],
    );
  });

  it('put a fraction of a foot above a limit into the next band', () => {
    assert.equal(indexAt('three', 1000.1), 1);
    assert.equal(indexAt('four', 6000.001), 3);
  });

  it('refuse below 0 ft and say so', () => {
    const found = altitudeBand('four', -0.5);
    assert.ok(!found.ok);
    assert.match(found.reason, /-0.5 ft is below 0 ft/);
  });
});
