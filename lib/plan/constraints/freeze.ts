/**
 * `freeze`: a freezer freezes only so many kg a day through, whatever room it has.
 *   sum_r freezeKgPerKg(r) sum_m cook(r,m,t) - short <= freezeKg(t)
 */

import type { PlanFrame } from '../plan-frame.ts';
import { cooked, shortage, times } from '../plan-terms.ts';

export function freeze(f: PlanFrame): void {
  f.data.days.forEach((d, day) => {
    if (d.freezeKg === undefined) return;
    f.row({ rule: 'freeze', day, upper: d.freezeKg }, [
      ...f.data.recipes.flatMap((r) => times(cooked(f, r.id, day), r.freezeKgPerKg ?? 0)),
      ...shortage(f, 'freeze', day),
    ]);
  });
}
