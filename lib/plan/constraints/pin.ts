/**
 * `pin`: the person's own decision stands.
 *   sum_m,q batches(r,m,t,q) >= pinned, or = pinned for an exact pin
 * `forced`: for "why not?": sum over the horizon >= 1; for "why?": = 0.
 */

import type { PlanFrame } from '../plan-frame.ts';
import { batches, dayBatches } from '../plan-terms.ts';

export interface ForcedRecipe {
  recipe: string;
  /** True: at least one batch; false: none. */
  made: boolean;
}

export function pin(f: PlanFrame, forced: ForcedRecipe | undefined): void {
  for (const p of f.data.pins ?? []) {
    const slots = f.slotsOn(p.recipe, p.day).filter((s) => p.mode === undefined || s.mode.id === p.mode);
    f.row(
      {
        rule: 'pin',
        ids: [p.recipe, ...(p.mode === undefined ? [] : [p.mode])],
        day: p.day,
        lower: p.batches,
        ...(p.exact ? { upper: p.batches } : {}),
      },
      slots.flatMap((s) => batches(f, s)),
    );
  }
  if (forced) {
    const all = f.days.flatMap((day) => dayBatches(f, forced.recipe, day));
    f.row({ rule: 'forced', ids: [forced.recipe], ...(forced.made ? { lower: 1 } : { upper: 0 }) }, all);
  }
}
