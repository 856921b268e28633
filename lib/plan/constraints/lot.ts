/**
 * `lot`: every kilogram is used, carried past the horizon, or wasted.
 *   sum_t draw(k,t) + waste(k) + carry(k) = kg(k)      for each lot class k
 */
import type { PlanFrame } from '../plan-frame.ts';

export function lot(f: PlanFrame): void {
  for (const k of f.setup.classes)
    f.row({ rule: 'lot', ids: [k.id], lower: k.kg, upper: k.kg }, [
      ...f.days.flatMap((day) => f.term({ kind: 'draw', ids: [k.id], day }, 1)),
      ...f.term({ kind: 'waste', ids: [k.id] }, 1),
      ...f.term({ kind: 'carry', ids: [k.id] }, 1),
    ]);
}
