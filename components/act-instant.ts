import type { PlainDate } from '#lib/units/plain-date.ts';

/** The device's own instant, set on the place's day: a demonstration lives on another day than the clock. */
export const instantOn = (day: PlainDate): string => {
  const now = new Date().toISOString();
  return now.startsWith(day) ? now : `${day}T${now.slice(11)}`;
};
