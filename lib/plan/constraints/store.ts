/**
 * `fill`: filled(place,t) = filled(place,t-1) + litres stored there on day t
 * `store`: filled(place,t) <= free(place,t) + overflow(place,t), for shelf, fridge and freezer
 */

import type { PlanFrame } from '../plan-frame.ts';
import { litresStored, times } from '../plan-terms.ts';

export function store(f: PlanFrame): void {
  for (const s of f.data.storage) {
    const products = new Set(f.data.products.filter((p) => p.place === s.place).map((p) => p.id));
    for (const day of f.days) {
      const ids = [s.place];
      const filled = f.term({ kind: 'filled', ids, day }, 1);
      f.row({ rule: 'fill', ids, day, lower: 0, upper: 0 }, [
        ...filled,
        ...(day > 0 ? f.term({ kind: 'filled', ids, day: day - 1 }, -1) : []),
        ...f.data.recipes.filter((r) => products.has(r.product)).flatMap((r) => times(litresStored(f, r, day), -1)),
      ]);
      f.row({ rule: 'store', ids, day, upper: s.free[day] ?? 0 }, [
        ...filled,
        ...f.term({ kind: 'overflow', ids, day }, -1),
      ]);
    }
  }
}
