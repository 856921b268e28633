import { type PlainDate, plainDate } from '#lib/units/plain-date.ts';

/** Days of the demonstration worth visiting. */
export const DEMO_DAYS: { day: PlainDate; label: string }[] = [
  { day: plainDate('2025-02-01'), label: 'Marmalade; what is left of last year' },
  { day: plainDate('2025-07-18'), label: 'Berries: hours, not days' },
  { day: plainDate('2025-09-01'), label: 'Plums, pears and crabapples at once' },
  { day: plainDate('2025-09-12'), label: 'Damsons come in' },
  { day: plainDate('2025-10-13'), label: 'Cider apples and keepers' },
  { day: plainDate('2026-01-15'), label: 'January: choosing from the shelf' },
  { day: plainDate('2026-01-20'), label: 'The autumn’s powder in a winter jam' },
];
