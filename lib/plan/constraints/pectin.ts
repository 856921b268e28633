/**
 * `pectin`: the gel, from whatever source.
 *   sum_c,g own(c) x factor(g) fruit(r,c,g,t) + sum_i strength(i) pectin(r,i,t) >= target(r) sum_m cook(r,m,t)
 * factor 0.6 for soft fruit (see usable-fruit.ts).
 * `pectin limit`: pectin(r,i,t) <= maxPerKg(i) sum_m cook(r,m,t): taste and texture limits of powders.
 */

import type { PlanFrame } from '../plan-frame.ts';
import { cooked, times } from '../plan-terms.ts';
import { SOFT_PECTIN_FACTOR } from '../usable-fruit.ts';

export function pectin(f: PlanFrame): void {
  for (const { recipe, day } of f.kitchenDays) {
    if ((recipe.pectin ?? 0) <= 0) continue;
    const whole = cooked(f, recipe.id, day);
    const own = (crop: string) => f.data.crops.find((c) => c.id === crop)?.pectin ?? 0;
    f.row({ rule: 'pectin', ids: [recipe.id], day, lower: 0 }, [
      ...recipe.fruit.flatMap((u) =>
        u.grades.flatMap((g) =>
          f.term(
            { kind: 'fruit', ids: [recipe.id, u.crop, g], day },
            own(u.crop) * (g === 'soft' ? SOFT_PECTIN_FACTOR : 1),
          ),
        ),
      ),
      ...f.data.pectinSources.flatMap((s) => f.term({ kind: 'pectin', ids: [recipe.id, s.material], day }, s.strength)),
      ...times(whole, -(recipe.pectin as number)),
    ]);
    for (const s of f.data.pectinSources) {
      const powder = f.term({ kind: 'pectin', ids: [recipe.id, s.material], day }, 1);
      if (s.maxPerKg !== undefined && powder.length)
        f.row({ rule: 'pectin limit', ids: [recipe.id, s.material], day, upper: 0 }, [
          ...powder,
          ...times(whole, -s.maxPerKg),
        ]);
    }
  }
}
