/**
 * `soft`: soft fruit has lost pectin and is limited.
 *   sum_c fruit(r,c,soft,t) <= softMax sum_m cook(r,m,t)
 */

import type { PlanFrame } from '../plan-frame.ts';
import { cooked, times } from '../plan-terms.ts';

export function soft(f: PlanFrame): void {
  for (const { recipe, day } of f.kitchenDays)
    if ((recipe.softMax ?? 1) < 1)
      f.row({ rule: 'soft', ids: [recipe.id], day, upper: 0 }, [
        ...recipe.fruit.flatMap((u) => f.term({ kind: 'fruit', ids: [recipe.id, u.crop, 'soft'], day }, 1)),
        ...times(cooked(f, recipe.id, day), -(recipe.softMax ?? 1)),
      ]);
}
