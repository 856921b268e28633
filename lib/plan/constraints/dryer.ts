/**
 * `dryer`: tray area, for every day that something is still lying on it.
 *   sum_r m2(r) sum_(t-days(r) < s <= t) cook(r,s) + sum_b m2(b) sum_(t-days(b) < s <= t) dry(b,s) - short <= dryer(t)
 */

import type { PlanFrame } from '../plan-frame.ts';
import { cooked, shortage, times } from '../plan-terms.ts';

export function dryer(f: PlanFrame): void {
  const lying = (day: number, days: number) => f.days.filter((s) => s <= day && s > day - Math.max(1, days));
  f.data.days.forEach((d, day) => {
    f.row({ rule: 'dryer', day, upper: d.dryer }, [
      ...f.data.recipes.flatMap((r) =>
        r.dryer ? lying(day, r.dryer.days).flatMap((s) => times(cooked(f, r.id, s), r.dryer?.m2PerKg ?? 0)) : [],
      ),
      ...f.data.leftovers.flatMap((b) =>
        lying(day, b.dryDays).flatMap((s) => f.term({ kind: 'dry', ids: [b.id], day: s }, b.m2PerKg)),
      ),
      ...shortage(f, 'dryer', day),
    ]);
  });
}
