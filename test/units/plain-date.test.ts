import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import {
  addDays,
  dayInZone,
  dayOfYear,
  daysBetween,
  daysFrom,
  instantInZone,
  isPlainDate,
  longDate,
  mondayOf,
  type PlainDate,
  plainDate,
  shortDate,
  weekday,
  weekdayName,
  yearAndDay,
  yearOf,
} from '#lib/units/plain-date.ts';

const anyDay = fc.integer({ min: 0, max: 60_000 }).map((n) => addDays(plainDate('1970-01-01'), n));

describe('a day of the calendar', () => {
  it('exists, or is refused by name', () => {
    for (const real of ['2024-02-29', '2000-02-29', '2025-12-31']) assert.equal(plainDate(real), real);
    for (const none of [
      '2025-02-29',
      '1900-02-29',
      '2026-02-31',
      '2026-13-01',
      '2026-00-10',
      '2026-1-1',
      '26-01-01',
      '',
      '2026-01-01T00:00',
    ])
      assert.equal(isPlainDate(none), false, none);
    assert.throws(() => plainDate('2026-02-31'), /"2026-02-31"/);
  });

  it('is followed by the next across leap days and years', () => {
    assert.equal(addDays(plainDate('2024-02-28'), 1), '2024-02-29');
    assert.equal(addDays(plainDate('2025-02-28'), 1), '2025-03-01');
    assert.equal(addDays(plainDate('2025-12-31'), 1), '2026-01-01');
    assert.equal(addDays(plainDate('2024-03-01'), -1), '2024-02-29');
  });

  it('is as many days on as were added, there and back', () =>
    fc.assert(
      fc.property(anyDay, fc.integer({ min: -4000, max: 4000 }), (d, n) => {
        assert.equal(daysBetween(d, addDays(d, n)), n);
        assert.equal(addDays(addDays(d, n), -n), d);
      }),
    ));

  it('has the weekday that the ICU calendar gives it', () =>
    fc.assert(
      fc.property(anyDay, (d) => {
        const icu = new Intl.DateTimeFormat('en-GB', { weekday: 'long', timeZone: 'UTC' });
        assert.equal(weekdayName(d), icu.format(new Date(`${d}T12:00:00Z`)));
      }),
    ));

  it('belongs to the week of its Monday (ISO 8601: 1 January 2026 lies in the week of 29 December 2025)', () => {
    assert.equal(mondayOf(plainDate('2026-01-01')), '2025-12-29');
    assert.equal(mondayOf(plainDate('2025-12-29')), '2025-12-29');
    assert.equal(mondayOf(plainDate('2027-01-03')), '2026-12-28');
    fc.assert(
      fc.property(anyDay, (d) => {
        assert.equal(weekday(mondayOf(d)), 0);
        const into = daysBetween(mondayOf(d), d);
        assert.ok(into >= 0 && into <= 6);
      }),
    );
  });

  it('has its number in the year as lot codes print it', () => {
    for (const [day, code] of [
      ['2025-09-13', '25256'],
      ['2025-07-12', '25193'],
      ['2025-07-26', '25207'],
      ['2026-01-17', '26017'],
      ['2025-01-01', '25001'],
      ['2025-12-31', '25365'],
      ['2024-12-31', '24366'],
    ] as const)
      assert.equal(yearAndDay(plainDate(day)), code);
    assert.equal(dayOfYear(plainDate('2024-03-01')), 61);
  });

  it('is one of the days of a span, both ends included', () => {
    assert.deepEqual(daysFrom(plainDate('2024-02-28'), plainDate('2024-03-01')), [
      '2024-02-28',
      '2024-02-29',
      '2024-03-01',
    ]);
    assert.deepEqual(daysFrom(plainDate('2024-03-01'), plainDate('2024-02-28')), []);
  });

  it('is shown with its weekday, so that day and month cannot be mistaken', () => {
    assert.equal(longDate(plainDate('2025-09-13')), '13 September 2025');
    assert.equal(shortDate(plainDate('2025-09-12')), 'Fri 12 Sep');
    assert.equal(yearOf(plainDate('2025-09-12')), 2025);
  });
});

describe('a place’s own day', () => {
  it('is another on the other side of midnight or of the world', () => {
    const instant = new Date('2026-01-15T02:00:00Z');
    assert.equal(dayInZone(instant, 'Europe/London'), '2026-01-15');
    assert.equal(dayInZone(instant, 'America/Los_Angeles'), '2026-01-14');
    assert.equal(dayInZone(new Date('2026-01-15T23:30:00Z'), 'Pacific/Auckland'), '2026-01-16');
  });
});

describe('a clock time in a zone', () => {
  const at = (day: string, time: string, zone: string) => instantInZone(plainDate(day), time, zone).toISOString();

  it('is the instant the zone’s own rules give (IANA time zone data)', () => {
    assert.equal(at('2025-01-10', '07:30', 'Europe/London'), '2025-01-10T07:30:00.000Z');
    assert.equal(at('2025-07-10', '07:30', 'Europe/London'), '2025-07-10T06:30:00.000Z');
    assert.equal(at('2025-01-10', '07:30', 'America/Los_Angeles'), '2025-01-10T15:30:00.000Z');
    assert.equal(at('2025-07-10', '07:30', 'America/Los_Angeles'), '2025-07-10T14:30:00.000Z');
    assert.equal(at('2025-07-10', '07:30', 'Asia/Kathmandu'), '2025-07-10T01:45:00.000Z');
  });

  it('just before and after the clocks change is an hour apart from the wall clock', () => {
    assert.equal(at('2025-03-30', '00:59', 'Europe/London'), '2025-03-30T00:59:00.000Z');
    assert.equal(at('2025-03-30', '02:00', 'Europe/London'), '2025-03-30T01:00:00.000Z');
    assert.equal(at('2025-10-26', '00:59', 'Europe/London'), '2025-10-25T23:59:00.000Z');
    assert.equal(at('2025-10-26', '02:00', 'Europe/London'), '2025-10-26T02:00:00.000Z');
    assert.equal(at('2025-03-09', '01:59', 'America/Los_Angeles'), '2025-03-09T09:59:00.000Z');
    assert.equal(at('2025-03-09', '03:00', 'America/Los_Angeles'), '2025-03-09T10:00:00.000Z');
    assert.equal(at('2025-11-02', '00:59', 'America/Los_Angeles'), '2025-11-02T07:59:00.000Z');
    assert.equal(at('2025-11-02', '02:00', 'America/Los_Angeles'), '2025-11-02T10:00:00.000Z');
  });

  it('in the hour that is skipped is an hour later', () => {
    assert.equal(at('2025-03-30', '01:30', 'Europe/London'), '2025-03-30T01:30:00.000Z');
    assert.equal(at('2025-03-09', '02:30', 'America/Los_Angeles'), '2025-03-09T10:30:00.000Z');
  });

  it('in the hour that comes twice is the first of the two', () => {
    assert.equal(at('2025-10-26', '01:30', 'Europe/London'), '2025-10-26T00:30:00.000Z');
    assert.equal(at('2025-11-02', '01:30', 'America/Los_Angeles'), '2025-11-02T08:30:00.000Z');
  });

  it('is shown by that zone’s clock again on any day of the years around, except in a skipped hour', () => {
    const day = fc.integer({ min: 0, max: 2200 }).map((n) => addDays('2022-01-01' as PlainDate, n));
    const zones = fc.constantFrom('Europe/London', 'America/Los_Angeles', 'Pacific/Auckland', 'Asia/Kathmandu', 'UTC');
    fc.assert(
      fc.property(day, fc.integer({ min: 0, max: 1439 }), zones, (d, minute, timeZone) => {
        const time = `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
        const instant = instantInZone(d, time, timeZone);
        const shown = new Intl.DateTimeFormat('en-GB', { timeZone, hour: '2-digit', minute: '2-digit' }).format(
          instant,
        );
        if (minute >= 60 && minute < 240 && shown !== time) return;
        assert.equal(shown, time);
        assert.equal(dayInZone(instant, timeZone), d);
      }),
    );
  });
});
