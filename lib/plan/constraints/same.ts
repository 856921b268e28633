/**
 * `same`: a new plan keeps to the former one unless moving pays.
 *   sum_m,q batches(r,m,t,q) + less(r,t) - more(r,t) = former(r,t)
 */

import type { PlanFrame } from '../plan-frame.ts';
import { dayBatches } from '../plan-terms.ts';

export function same(f: PlanFrame): void {
  const former = f.data.former;
  if (!former) return;
  for (const r of f.data.recipes)
    for (const day of f.days) {
      const was = former.batches.filter((b) => b.recipe === r.id && b.day === day).reduce((n, b) => n + b.batches, 0);
      f.row({ rule: 'same', ids: [r.id], day, lower: was, upper: was }, [
        ...dayBatches(f, r.id, day),
        ...f.term({ kind: 'less', ids: [r.id], day }, 1),
        ...f.term({ kind: 'more', ids: [r.id], day }, -1),
      ]);
    }
}
