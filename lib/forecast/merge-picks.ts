import type { PickRecord } from './harvest-posterior.ts';

/**
 * Days less than this apart hang together (the same weather, the same ripe trusses) and are taken as one picking. Found in an
 * invented orchard picked every day, where the bands were too narrow without it (test/forecast/merge-picks.test.ts); adding
 * days together is exact in the model, so nothing else changes. Orchards picked every two to four days hardly notice.
 */
export const PICKING_DAYS = 3;

/** Pickings of neighbouring days added together, each sum on its last day; the latest is always there. Days must rise. */
export function mergePicks(records: readonly PickRecord[], days = PICKING_DAYS): PickRecord[] {
  const merged: PickRecord[] = [];
  let from = Number.NEGATIVE_INFINITY;
  for (const r of records) {
    const last = merged.at(-1);
    if (last && last.kg > 0 && r.kg > 0 && r.t - from < days)
      merged[merged.length - 1] = { t: r.t, kg: last.kg + r.kg };
    else {
      merged.push(r);
      from = r.t;
    }
  }
  return merged;
}
