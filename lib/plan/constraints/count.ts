/**
 * `count`: so many batches a day.
 *   sum_q batches(r,m,t,q) <= most(r,m,t)      per mode: hours, vessels, fruit of the day
 *   sum_m,q batches(r,m,t,q) <= batches a day of the recipe
 */

import type { PlanFrame } from '../plan-frame.ts';
import { batches, dayBatches } from '../plan-terms.ts';

export function count(f: PlanFrame): void {
  for (const s of f.setup.slots)
    if (s.choices.length > 1 || s.most < s.recipe.maxBatchesPerDay)
      f.row({ rule: 'count', ids: [s.recipe.id, s.mode.id], day: s.day, upper: s.most }, batches(f, s));
  for (const { recipe, day } of f.kitchenDays) {
    const slots = f.slotsOn(recipe.id, day);
    const most = Math.max(recipe.maxBatchesPerDay, ...slots.map((s) => s.most));
    if (slots.length > 1) f.row({ rule: 'count', ids: [recipe.id], day, upper: most }, dayBatches(f, recipe.id, day));
  }
}
