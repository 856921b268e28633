import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { holdVerdict, loadSuspect, processVerdict, sealVerdict, waysOut } from '#lib/batch/verdicts.ts';

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
});

describe('the ways out', () => {
  it('of a lid that gave are fridge, freezer and a second process at 11 h, discard alone at 31 h (story B1)', () => {
    assert.deepEqual(waysOut('unsealed', 11, true), ['fridge', 'freezer', 'process again']);
    assert.deepEqual(waysOut('unsealed', 24, true), ['fridge', 'freezer', 'process again']);
    assert.deepEqual(waysOut('unsealed', 24.1, true), ['discard']);
    assert.deepEqual(waysOut('unsealed', 31, true), ['discard']);
    assert.deepEqual(waysOut('unsealed', 11, false), ['fridge', 'freezer']);
    assert.deepEqual(waysOut('unsealed', Number.NaN, true), ['discard']);
  });
  it('of a process not as tested end for a second one after 2 h, for the cold after 24 h (Nebraska extension)', () => {
    assert.deepEqual(waysOut('process', 2, true), ['fridge', 'freezer', 'process again']);
    assert.deepEqual(waysOut('process', 2.1, true), ['fridge', 'freezer']);
    assert.deepEqual(waysOut('process', 24.1, true), ['discard']);
  });
  it('of a pH too high never lead back to the canner', () => {
    assert.deepEqual(waysOut('acid', 1, true), ['fridge', 'freezer']);
    assert.deepEqual(waysOut('acid', 25, true), ['discard']);
  });
  it('turn on the load from two jars or a tenth of it', () => {
    assert.deepEqual(
      [loadSuspect(1, 6), loadSuspect(1, 10), loadSuspect(1, 12), loadSuspect(2, 40)],
      [true, true, false, true],
    );
  });
});

describe('hold verdict', () => {
  it('holds while any reason is open', () => {
    assert.equal(holdVerdict([]).held, false);
    assert.equal(holdVerdict(['pH 4.71']).held, true);
  });
});
