/**
 * `want`: the value of a product falls with each further litre.
 *   sum_s worth(p,s) + rest(p) = litres made of p,   worth(p,s) <= litres of the segment
 */

import type { PlanFrame } from '../plan-frame.ts';
import { litresMade, times } from '../plan-terms.ts';

export function want(f: PlanFrame): void {
  for (const p of f.data.products)
    f.row({ rule: 'want', ids: [p.id], lower: 0, upper: 0 }, [
      ...p.segments.flatMap((_, i) => f.term({ kind: 'worth', ids: [p.id, String(i)] }, 1)),
      ...f.term({ kind: 'rest', ids: [p.id] }, 1),
      ...f.kitchenDays
        .filter((k) => k.recipe.product === p.id)
        .flatMap((k) => times(litresMade(f, k.recipe, k.day), -1)),
    ]);
}
