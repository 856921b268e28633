/**
 * `stock`: supplies, jars, lids and home powders. A powder that is not dry in time does not help.
 *   stock(i,t) = stock(i,t-1) + arrivals(i,t) + buy(i,t) + dryYield dry(b,t-dryDays) + lack(i,t) - use(i,t),   stock >= 0
 *   use = sugar and other needs x cook + powder and acid spoons + jars x what each takes
 * `keep`: what is left keeps a value, powder still on the trays too, but only up to a sensible stock (bound carryMax).
 *   keep(i) <= stock(i,H-1) + dryYield sum_(t+dryDays >= H) dry(b,t)
 */
import type { PlanMaterial } from '../instance.ts';
import type { Term } from '../model-builder.ts';
import type { PlanFrame } from '../plan-frame.ts';
import { cooked, times } from '../plan-terms.ts';

export function stock(f: PlanFrame): void {
  for (const m of f.data.materials) {
    for (const day of f.days) balance(f, m, day);
    const keep = f.term({ kind: 'keep', ids: [m.id] }, 1);
    const late = f.days.flatMap((day) => dried(f, m.id, (dryDays) => day + dryDays >= f.data.horizon, day));
    if (keep.length)
      f.row({ rule: 'keep', ids: [m.id], upper: 0 }, [
        ...keep,
        ...f.term({ kind: 'stock', ids: [m.id], day: f.data.horizon - 1 }, -1),
        ...times(late, -1),
      ]);
  }
}

function balance(f: PlanFrame, m: PlanMaterial, day: number): void {
  const arrived = (m.arrivals ?? [])
    .filter((a) => a.day === day)
    .reduce((n, a) => n + a.amount, day === 0 ? m.stock : 0);
  const powder = f.days.flatMap((s) => dried(f, m.id, (dryDays) => s + dryDays === day, s));
  f.row({ rule: 'stock', ids: [m.id], day, lower: arrived, upper: arrived }, [
    ...f.term({ kind: 'stock', ids: [m.id], day }, 1),
    ...(day > 0 ? f.term({ kind: 'stock', ids: [m.id], day: day - 1 }, -1) : []),
    ...f.term({ kind: 'buy', ids: [m.id], day }, -1),
    ...f.term({ kind: 'lack', ids: [m.id], day }, -1),
    ...times(powder, -1),
    ...used(f, m, day),
  ]);
}

/** Powder of a material from what is laid on the trays on one day, if it is dry when asked. */
const dried = (f: PlanFrame, material: string, isDry: (dryDays: number) => boolean, laid: number): Term[] =>
  f.data.leftovers
    .filter((b) => b.becomes === material && isDry(b.dryDays))
    .flatMap((b) => f.term({ kind: 'dry', ids: [b.id], day: laid }, b.dryYield));

const used = (f: PlanFrame, m: PlanMaterial, day: number): Term[] =>
  f.data.recipes.flatMap((r) => {
    const perKg = (r.needs ?? [])
      .filter((n) => n.material === m.id)
      .reduce((n, x) => n + x.perKg, m.id === f.data.sugarMaterial ? (r.sugar ?? 0) : 0);
    return [
      ...(perKg ? times(cooked(f, r.id, day), perKg) : []),
      ...f.term({ kind: 'pectin', ids: [r.id, m.id], day }, 1),
      ...f.term({ kind: 'acid', ids: [r.id, m.id], day }, 1),
      ...f.data.jars.flatMap((j) =>
        j.uses
          .filter((u) => u.material === m.id)
          .flatMap((u) => f.term({ kind: 'jars', ids: [r.id, j.id], day }, u.each)),
      ),
    ];
  });
