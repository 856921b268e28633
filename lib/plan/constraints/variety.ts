/**
 * `variety`: a pantry is not one jam.
 *   sum_p kind(p) + missing >= least kinds
 * `kind`: kind(p) <= batches of p; stronger, kind(p) <= set-ups of p, when every recipe of p has a set-up.
 */

import type { PlanFrame } from '../plan-frame.ts';
import { dayBatches, setUp, times } from '../plan-terms.ts';

export function variety(f: PlanFrame): void {
  for (const p of f.data.products) {
    const kind = f.term({ kind: 'kind', ids: [p.id] }, 1);
    const made = f.kitchenDays.filter((k) => k.recipe.product === p.id);
    if (!kind.length) continue;
    const bySetUp = f.setup.tightenings.cutSetup && made.every((k) => (k.recipe.setupH ?? 0) > 0);
    const chances = made.flatMap((k) => (bySetUp ? setUp(f, k.recipe, k.day) : dayBatches(f, k.recipe.id, k.day)));
    f.row({ rule: 'kind', ids: [p.id], upper: 0 }, [...kind, ...times(chances, -1)]);
  }
  if (f.data.variety)
    f.row({ rule: 'variety', lower: f.data.variety.min }, [
      ...f.data.products.flatMap((p) => f.term({ kind: 'kind', ids: [p.id] }, 1)),
      ...f.term({ kind: 'missingKinds', ids: [] }, 1),
    ]);
}
