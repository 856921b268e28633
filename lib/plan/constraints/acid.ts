/**
 * `acid`: for the set. (Whether a pan is acid enough to be canned is decided in the batch room; a plan never loosens that.)
 *   sum_c,g own(c) fruit(r,c,g,t) + sum_i strength(i) acid(r,i,t) >= target(r) sum_m cook(r,m,t)
 * `acid limit`: acid(r,i,t) <= maxPerKg(i) sum_m cook(r,m,t)
 */

import type { PlanFrame } from '../plan-frame.ts';
import { cooked, times } from '../plan-terms.ts';

export function acid(f: PlanFrame): void {
  for (const { recipe, day } of f.kitchenDays) {
    if ((recipe.acid ?? 0) <= 0) continue;
    const whole = cooked(f, recipe.id, day);
    const own = (crop: string) => f.data.crops.find((c) => c.id === crop)?.acid ?? 0;
    f.row({ rule: 'acid', ids: [recipe.id], day, lower: 0 }, [
      ...recipe.fruit.flatMap((u) =>
        u.grades.flatMap((g) => f.term({ kind: 'fruit', ids: [recipe.id, u.crop, g], day }, own(u.crop))),
      ),
      ...f.data.acidSources.flatMap((s) => f.term({ kind: 'acid', ids: [recipe.id, s.material], day }, s.strength)),
      ...times(whole, -(recipe.acid as number)),
    ]);
    for (const s of f.data.acidSources) {
      const spoon = f.term({ kind: 'acid', ids: [recipe.id, s.material], day }, 1);
      if (s.maxPerKg !== undefined && spoon.length)
        f.row({ rule: 'acid limit', ids: [recipe.id, s.material], day, upper: 0 }, [
          ...spoon,
          ...times(whole, -s.maxPerKg),
        ]);
    }
  }
}
