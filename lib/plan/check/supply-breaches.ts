/** Supplies: nothing is used that is not there, nothing is bought where or when it cannot be. */
import type { PlanInstance } from '../instance.ts';
import type { Plan } from '../plan.ts';
import type { PlanTally } from '../plan-tally.ts';
import { above, type Breach, forbidden, totals } from './breach.ts';

export function supplyBreaches(p: PlanInstance, plan: Plan, t: PlanTally): Breach[] {
  const materials = new Map(p.materials.map((m) => [m.id, m]));
  const bought = totals(
    plan.bought,
    (b) => `${b.day}|${b.material}`,
    (b) => b.amount,
  );
  return [
    ...p.materials.flatMap((m) =>
      (t.lack.get(m.id) ?? []).flatMap((lack, day) => {
        const used = t.used.get(m.id)?.[day] ?? 0;
        return above({ rule: 'stock', ids: [m.id], day }, used, used - lack, true);
      }),
    ),
    ...[...bought].flatMap(([key, amount]) => {
      const [day, id] = [Number(key.slice(0, key.indexOf('|'))), key.slice(key.indexOf('|') + 1)];
      const m = materials.get(id);
      const open = m?.price !== undefined && (m.shopDays?.includes(day) ?? true) && day >= 0 && day < p.horizon;
      return open
        ? above({ rule: 'shop', ids: [id], day }, amount, m?.maxBuy ?? Infinity)
        : forbidden({ rule: 'shop', ids: [id], day }, amount);
    }),
  ];
}
