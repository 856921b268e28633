/**
 * `canner`: loads that fit in the day.
 *   sum_r,m,q q batches(r,m,t,q) - short <= loads(t)
 * `load`: every canned jar has a place in a load.
 *   sum_z jars(r,z,t) / perLoad(z) <= sum_m,q q batches(r,m,t,q)
 * `own load` (only when loads are counted apart from batches): loads(r,m,t) >= batches(r,m,t), each batch is canned for itself.
 */

import type { PlanFrame } from '../plan-frame.ts';
import { batches, loads, shortage, times } from '../plan-terms.ts';

export function canner(f: PlanFrame): void {
  f.data.days.forEach((d, day) => {
    f.row({ rule: 'canner', day, upper: d.cannerLoads }, [
      ...f.setup.slots.filter((s) => s.day === day).flatMap((s) => loads(f, s)),
      ...shortage(f, 'canner', day),
    ]);
  });
  for (const { recipe, day } of f.kitchenDays) {
    if (!recipe.canner) continue;
    const jars = f.data.jars
      .filter((j) => recipe.jars?.includes(j.id))
      .flatMap((j) => f.term({ kind: 'jars', ids: [recipe.id, j.id], day }, 1 / j.perLoad));
    f.row({ rule: 'load', ids: [recipe.id], day, upper: 0 }, [
      ...jars,
      ...times(
        f.slotsOn(recipe.id, day).flatMap((s) => loads(f, s)),
        -1,
      ),
    ]);
    if (!f.setup.tightenings.loadModes)
      for (const s of f.slotsOn(recipe.id, day))
        f.row({ rule: 'own load', ids: [recipe.id, s.mode.id], day, lower: 0 }, [
          ...loads(f, s),
          ...times(batches(f, s), -1),
        ]);
  }
}
