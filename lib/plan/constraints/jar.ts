/**
 * `jar`: what is cooked is filled.
 *   sum_z litres(z) jars(r,z,t) + tail(r,t) = yield(r) sum_m cook(r,m,t)
 * The tail, below one smallest jar, exists only when jars are whole; it goes to the table.
 */

import type { PlanFrame } from '../plan-frame.ts';
import { cooked, times } from '../plan-terms.ts';

export function jar(f: PlanFrame): void {
  for (const { recipe, day } of f.kitchenDays)
    if (recipe.jars?.length)
      f.row({ rule: 'jar', ids: [recipe.id], day, lower: 0, upper: 0 }, [
        ...f.data.jars
          .filter((j) => recipe.jars?.includes(j.id))
          .flatMap((j) => f.term({ kind: 'jars', ids: [recipe.id, j.id], day }, j.litres)),
        ...f.term({ kind: 'tail', ids: [recipe.id], day }, 1),
        ...times(cooked(f, recipe.id, day), -recipe.yieldPerKg),
      ]);
}
