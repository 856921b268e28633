/**
 * A calendar as text: RFC 5545 (iCalendar, 2009). Lines end in CRLF and are folded at 75 octets (3.1), text is escaped (3.3.11),
 * instants are written in UTC (3.3.5, form 2) so that no time zone has to travel along, whole days as dates (3.3.4).
 */
import { addDays, type PlainDate } from '#lib/units/plain-date.ts';

export interface CalendarEvent {
  /** Unique and lasting (3.8.4.7). */
  readonly id: string;
  readonly what: string;
  readonly when: { readonly at: Date; readonly until: Date } | { readonly day: PlainDate };
  readonly url: string;
}

export function calendarText(name: string, events: readonly CalendarEvent[], stamp: Date): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Stillroom//Due//EN',
    'CALSCALE:GREGORIAN',
    'METHOD:PUBLISH',
    `NAME:${escaped(name)}`,
    ...events.flatMap((e) => eventLines(e, stamp)),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

function eventLines(e: CalendarEvent, stamp: Date): string[] {
  const when =
    'day' in e.when
      ? [`DTSTART;VALUE=DATE:${plain(e.when.day)}`, `DTEND;VALUE=DATE:${plain(addDays(e.when.day, 1))}`]
      : [`DTSTART:${utc(e.when.at)}`, `DTEND:${utc(e.when.until)}`];
  return [
    'BEGIN:VEVENT',
    `UID:${escaped(e.id)}@stillroom`,
    `DTSTAMP:${utc(stamp)}`,
    ...when,
    `SUMMARY:${escaped(e.what)}`,
    `URL:${e.url}`,
    'TRANSP:TRANSPARENT',
    'END:VEVENT',
  ];
}

const plain = (day: PlainDate): string => day.replaceAll('-', '');
const utc = (at: Date): string => `${at.toISOString().slice(0, 19).replace(/[-:]/g, '')}Z`;
const escaped = (text: string): string => text.replace(/[\\;,]/g, (c) => `\\${c}`).replace(/\r?\n/g, '\\n');

const MOST_OCTETS = 75;
const bytes = new TextEncoder();

/** Cut between characters, each line after the first beginning with a space. */
function folded(line: string): string {
  const parts: string[] = [];
  let part = '';
  let size = 0;
  for (const c of line) {
    const n = bytes.encode(c).length;
    if (size + n > MOST_OCTETS) {
      parts.push(part);
      part = ' ';
      size = 1;
    }
    part += c;
    size += n;
  }
  return [...parts, part].join('\r\n');
}
