/** NCHFP fact sheet on steam canners: 45 minutes at most, altitude included. */
import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { steamAllows } from '#lib/reference/steam-limit.ts';

describe('steam canner', () => {
  it('allows 45 minutes and refuses the next', () => {
    assert.deepEqual(steamAllows(45), { ok: true });
    assert.equal(steamAllows(45.1).ok, false);
    assert.equal(steamAllows(50).ok, false);
  });
});
