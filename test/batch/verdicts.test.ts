import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { holdVerdict, processVerdict, sealVerdict, unsealedWays } from '#lib/batch/verdicts.ts';

describe('process verdict', () => {
  it('is as tested only with every minute kept and nothing deviating', () => {
    assert.equal(processVerdict({ required: 10, kept: 10, deviations: [] }), 'as tested');
    assert.equal(processVerdict({ required: 10, kept: 9.5, deviations: [] }), 'not as tested');
    assert.equal(processVerdict({ required: 10, kept: 12, deviations: ['raw instead of hot'] }), 'not as tested');
  });
  it('is unknown when nobody wrote the minutes down, and never as tested without a row', () => {
    assert.equal(processVerdict({ required: 10, kept: null, deviations: [] }), 'unknown');
    assert.equal(processVerdict({ required: 10, kept: Number.NaN, deviations: [] }), 'unknown');
    assert.equal(processVerdict({ required: null, kept: 60, deviations: [] }), 'not as tested');
  });
});

describe('seal verdict', () => {
  it('follows the clock: due at 12 h, late from 20 h, unverified from 24 h', () => {
    const at = (hoursOut: number) => sealVerdict({ hoursOut, sealed: null });
    assert.deepEqual([11.9, 12, 19.9, 20, 23.9, 24].map(at), [
      'too early',
      'to be checked',
      'to be checked',
      'late',
      'late',
      'unverified',
    ]);
  });
  it('keeps what somebody saw', () => {
    assert.equal(sealVerdict({ hoursOut: 11, sealed: false }), 'not sealed');
    assert.equal(sealVerdict({ hoursOut: 40, sealed: true }), 'sealed');
  });
  it('offers fridge, freezer and a second process at 11 h, only discard at 31 h (story B1)', () => {
    assert.deepEqual(unsealedWays(11, true), ['fridge', 'freezer', 'process again']);
    assert.deepEqual(unsealedWays(31, true), ['discard']);
    assert.deepEqual(unsealedWays(11, false), ['fridge', 'freezer']);
    assert.deepEqual(unsealedWays(Number.NaN, true), ['discard']);
  });
});

describe('hold verdict', () => {
  it('holds while any reason is open', () => {
    assert.equal(holdVerdict([]).held, false);
    assert.equal(holdVerdict(['pH 4.71']).held, true);
  });
});
