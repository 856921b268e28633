/**
 * `leftover`: only today's cores, peels and pomace can go on the trays; the rest is composted free.
 *   dry(b,t) <= sum_r,c,g kgPerKg(r,c,b) fruit(r,c,g,t)
 */
import type { PlanFrame } from '../plan-frame.ts';

export function leftover(f: PlanFrame): void {
  for (const b of f.data.leftovers)
    for (const day of f.days) {
      const dry = f.term({ kind: 'dry', ids: [b.id], day }, 1);
      if (!dry.length) continue;
      const fresh = f.data.recipes.flatMap((r) =>
        (r.leftovers ?? [])
          .filter((l) => l.leftover === b.id)
          .flatMap((l) =>
            r.fruit
              .filter((u) => u.crop === l.crop)
              .flatMap((u) =>
                u.grades.flatMap((g) => f.term({ kind: 'fruit', ids: [r.id, u.crop, g], day }, -l.kgPerKg)),
              ),
          ),
      );
      f.row({ rule: 'leftover', ids: [b.id], day, upper: 0 }, [...dry, ...fresh]);
    }
}
