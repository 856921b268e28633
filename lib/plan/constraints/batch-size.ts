/**
 * `greatest batch`: the vessel, and the canner loads the batch was given, bound what is cooked.
 *   cook(r,m,t) <= sum_q kg(q) batches(r,m,t,q),   kg(q) = min(maxKg, q x litres of a load in the roomiest jar / yield)
 * `least batch`: a batch below the least size burns, or is not worth lighting the stove for.
 *   cook(r,m,t) + underfill >= minKg sum_q batches(r,m,t,q)
 */

import type { PlanFrame } from '../plan-frame.ts';
import { batches, times } from '../plan-terms.ts';

export function batchSize(f: PlanFrame): void {
  for (const s of f.setup.slots) {
    const ids = [s.recipe.id, s.mode.id];
    const cook = f.term({ kind: 'cook', ids, day: s.day }, 1);
    f.row({ rule: 'greatest batch', ids, day: s.day, upper: 0 }, [
      ...cook,
      ...times(
        batches(f, s, (c) => c.kg),
        -1,
      ),
    ]);
    if (s.mode.minKg > 0)
      f.row({ rule: 'least batch', ids, day: s.day, lower: 0 }, [
        ...cook,
        ...f.term({ kind: 'underfill', ids, day: s.day }, 1),
        ...batches(f, s, () => -s.mode.minKg),
      ]);
  }
}
