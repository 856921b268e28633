/**
 * Rows that no best plan breaks, but that lower the relaxation.
 * `worth cut`: sum_s value(s) worth(p,s) <= sum f_p(litres of a full batch) batches; valid because f_p is concave with f_p(0) = 0,
 *   so the worth of a sum is at most the sum of the worths. Off with pins and futures.
 * `first litres`: worth(p,s) <= litres(s) kind(p): the first litres need a first batch.
 */

import type { PlanFrame } from '../plan-frame.ts';
import { batches, times } from '../plan-terms.ts';
import { segmentWorth } from '../segment-worth.ts';

export function cuts(f: PlanFrame): void {
  for (const p of f.data.products) {
    const slots = f.setup.slots.filter((s) => s.recipe.product === p.id);
    if (f.setup.tightenings.cutValue)
      f.row({ rule: 'worth cut', ids: [p.id], upper: 0 }, [
        ...p.segments.flatMap((s, i) => f.term({ kind: 'worth', ids: [p.id, String(i)] }, s.value)),
        ...times(
          slots.flatMap((s) => batches(f, s, (c) => segmentWorth(p, c.kg * s.recipe.yieldPerKg))),
          -1,
        ),
      ]);
    if (!f.setup.tightenings.cutKind) continue;
    const most = slots.reduce((n, s) => n + s.most * s.greatestKg * s.recipe.yieldPerKg, 0);
    p.segments.forEach((s, i) => {
      const worth = f.term({ kind: 'worth', ids: [p.id, String(i)] }, 1);
      if (worth.length)
        f.row({ rule: 'first litres', ids: [p.id, String(i)], upper: 0 }, [
          ...worth,
          ...f.term({ kind: 'kind', ids: [p.id] }, -Math.min(s.litres, most)),
        ]);
    });
  }
}
