/**
 * `mix`: what goes into the pan is what is cooked.
 *   sum_c,g fruit(r,c,g,t) = sum_m cook(r,m,t)
 */

import type { PlanFrame } from '../plan-frame.ts';
import { cooked, times } from '../plan-terms.ts';

export function mix(f: PlanFrame): void {
  for (const { recipe, day } of f.kitchenDays)
    f.row({ rule: 'mix', ids: [recipe.id], day, lower: 0, upper: 0 }, [
      ...recipe.fruit.flatMap((u) =>
        u.grades.flatMap((g) => f.term({ kind: 'fruit', ids: [recipe.id, u.crop, g], day }, 1)),
      ),
      ...times(cooked(f, recipe.id, day), -1),
    ]);
}
