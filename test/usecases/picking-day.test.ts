import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { instantInZone, plainDate } from '#lib/units/plain-date.ts';
import type { Context } from '#lib/usecases/context.ts';
import { pickingDay } from '#lib/usecases/read-harvest.ts';

const at = (time: string): Context => {
  const today = plainDate('2025-07-19');
  const timeZone = 'Europe/London';
  return {
    today,
    now: instantInZone(today, time, timeZone),
    place: { timeZone, settings: { dayEndsAt: '04:00' } },
  } as Context;
};

describe('the day a picking belongs to', () => {
  it('is yesterday until the household’s night ends, as when berries are weighed at half past midnight', () => {
    assert.equal(pickingDay(at('00:30')), '2025-07-18');
    assert.equal(pickingDay(at('03:59')), '2025-07-18');
  });
  it('is today from then on', () => {
    assert.equal(pickingDay(at('04:00')), '2025-07-19');
    assert.equal(pickingDay(at('21:00')), '2025-07-19');
  });
});
