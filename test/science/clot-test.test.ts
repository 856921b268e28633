import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { type Clot, sugarByClot } from '#lib/science/clot-test.ts';

describe('the alcohol test', () => {
  it('gives a cup, three quarters and half a cup of sugar to the cup', () => {
    assert.deepEqual((['high', 'medium', 'low'] as const).map(sugarByClot), [1, 0.75, 0.5]);
  });

  it('has no other result', () => {
    assert.throws(() => sugarByClot('middling' as Clot), RangeError);
  });
});
