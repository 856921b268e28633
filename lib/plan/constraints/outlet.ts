/**
 * `outlet`: the household eats, the stall sells, the press takes so much a day.
 *   sum_g outlet(o,g,t) <= maxKg(o)
 */
import type { PlanFrame } from '../plan-frame.ts';

export function outlet(f: PlanFrame): void {
  for (const o of f.data.outlets)
    if (o.maxKg !== undefined)
      for (const day of o.days)
        f.row(
          { rule: 'outlet', ids: [o.id], day, upper: o.maxKg },
          o.grades.flatMap((g) => f.term({ kind: 'outlet', ids: [o.id, g], day }, 1)),
        );
}
