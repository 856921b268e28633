/**
 * Biennial bearing index of two years that follow each other: |y1 - y2| / (y1 + y2); 0 bears alike, 1 every other year only
 * (Hoblyn et al. 1936, J. Pomol. 14:39, from memory as to the place). Typical: Elstar and Boskoop apples 0.5, plums 0.35,
 * Golden Delicious 0.25, pears 0.2 (estimates).
 */
export const bearingIndex = (first: number, second: number): number =>
  first + second > 0 ? Math.abs(first - second) / (first + second) : 0;

/** From here on an off-year is named: judged by this project from the typical figures. */
const ALTERNATES = 0.35;

export interface YearKg {
  readonly year: number;
  readonly kg: number;
}

/** After heavy and light by turns, what the next year may be; null with under three years on record, or without turns. */
export function offYearAhead(years: readonly YearKg[]): { index: number; next: 'light' | 'heavy' } | null {
  if (years.length < 3) return null;
  const last = years.slice(-4);
  const steps = last
    .slice(1)
    .map((y, i) => ({ up: y.kg > (last[i] as YearKg).kg, index: bearingIndex((last[i] as YearKg).kg, y.kg) }));
  const turns = steps.every((s, i) => i === 0 || s.up !== (steps[i - 1] as (typeof steps)[number]).up);
  const index = steps.reduce((sum, s) => sum + s.index, 0) / steps.length;
  return turns && index >= ALTERNATES ? { index, next: steps.at(-1)?.up ? 'light' : 'heavy' } : null;
}
