/**
 * `set-up`: the kitchen is set up once a day per recipe and shared by its batches.
 *   sum_q batches(r,m,t,q) <= most(r,m,t) setUp(r,t)      per mode
 */

import type { PlanFrame } from '../plan-frame.ts';
import { batches } from '../plan-terms.ts';

export function setUpOnce(f: PlanFrame): void {
  for (const s of f.setup.slots) {
    const own = f.term({ kind: 'setUp', ids: [s.recipe.id], day: s.day }, -s.most);
    if (own.length)
      f.row({ rule: 'set-up', ids: [s.recipe.id, s.mode.id], day: s.day, upper: 0 }, [...batches(f, s), ...own]);
  }
}
