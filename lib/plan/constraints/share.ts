/**
 * `least share`, `greatest share`: a recipe stays itself.
 *   minShare sum_m cook(r,m,t) <= sum_g fruit(r,c,g,t) <= maxShare sum_m cook(r,m,t)
 */

import type { PlanFrame } from '../plan-frame.ts';
import { cooked, times } from '../plan-terms.ts';

export function share(f: PlanFrame): void {
  for (const { recipe, day } of f.kitchenDays)
    for (const u of recipe.fruit) {
      const part = u.grades.flatMap((g) => f.term({ kind: 'fruit', ids: [recipe.id, u.crop, g], day }, 1));
      const whole = cooked(f, recipe.id, day);
      const ids = [recipe.id, u.crop];
      if ((u.minShare ?? 0) > 0)
        f.row({ rule: 'least share', ids, day, lower: 0 }, [...part, ...times(whole, -(u.minShare as number))]);
      if ((u.maxShare ?? 1) < 1)
        f.row({ rule: 'greatest share', ids, day, upper: 0 }, [...part, ...times(whole, -(u.maxShare as number))]);
    }
}
