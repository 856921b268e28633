/** The feed read back by ical.js, an independent parser of RFC 5545. */
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { type CalendarEvent, calendarText } from '#lib/labels/calendar.ts';
import { instantInZone, type PlainDate } from '#lib/units/plain-date.ts';

const STAMP = new Date('2025-10-26T12:00:00Z');
const events: CalendarEvent[] = [
  {
    id: 'batch-1-seal',
    what: 'Try the seals of Damson, plum; and “mirabelle” jam \\ 25256-DAM-A',
    when: { at: new Date('2025-10-26T00:30:00Z'), until: new Date('2025-10-26T12:30:00Z') },
    url: 'http://127.0.0.1:3000/batches/25256-DAM-A',
  },
  {
    id: 'lot-2-shake',
    what: 'Shake the jar',
    when: { day: '2025-03-30' as PlainDate },
    url: 'http://127.0.0.1:3000/set-asides/S',
  },
];
const parsed = (text: string) => new ICAL.Component(ICAL.parse(text));

describe('the calendar feed', () => {
  const text = calendarText('Wrenlatch: due', events, STAMP);

  it('is read back event by event, its words whole', () => {
    const found = parsed(text)
      .getAllSubcomponents('vevent')
      .map((e) => new ICAL.Event(e));
    expect(found.map((e) => e.summary)).toEqual(events.map((e) => e.what));
    expect(found.map((e) => e.uid)).toEqual(['batch-1-seal@stillroom', 'lot-2-shake@stillroom']);
    expect(found[0]?.startDate.toJSDate()).toEqual(new Date('2025-10-26T00:30:00Z'));
    expect(found[1]?.startDate.isDate).toBe(true);
    expect(found[1]?.startDate.toString()).toBe('2025-03-30');
    expect(found[1]?.endDate.toString()).toBe('2025-03-31');
  });

  it('ends its lines as asked and folds none longer than 75 octets', () => {
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    const long = calendarText('ü'.repeat(200), [], STAMP);
    for (const line of long.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
    expect(parsed(long).getFirstPropertyValue('name')).toBe('ü'.repeat(200));
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  });

  it('keeps the instant over the hour that comes twice and the one that is left out', () => {
    // Clocks in London go back at 02:00 on 26 October and forward at 01:00 on 30 March 2025.
    for (const [day, time] of [
      ['2025-10-26', '01:30'],
      ['2025-10-26', '03:00'],
      ['2025-03-30', '02:30'],
    ] as const) {
      const at = instantInZone(day as PlainDate, time, 'Europe/London');
      const one = calendarText('x', [{ id: 'id-1', what: 'x', url: 'http://x/', when: { at, until: at } }], STAMP);
      const [event] = parsed(one).getAllSubcomponents('vevent');
      expect(event && new ICAL.Event(event).startDate.toJSDate()).toEqual(at);
    }
  });
});
