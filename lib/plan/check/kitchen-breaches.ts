/** The kitchen: hands, burners, vessels, canner, trays, freezing, room, variety, pins. */
import type { PlanInstance } from '../instance.ts';
import { batchCount, type Plan } from '../plan.ts';
import type { PlanTally } from '../plan-tally.ts';
import { above, type Breach, below } from './breach.ts';

export function kitchenBreaches(p: PlanInstance, plan: Plan, t: PlanTally): Breach[] {
  const days = p.days.flatMap((d, day) => {
    const at = (rule: string, ...ids: string[]) => ({ rule, ids, day });
    return [
      ...above(at('kitchen'), t.handHours[day] ?? 0, d.active + d.overtime, true),
      ...above(at('burner'), t.burnerHours[day] ?? 0, d.burner, true),
      ...above(at('canner'), t.cannerLoads[day] ?? 0, d.cannerLoads, true),
      ...above(at('dryer'), t.trayM2[day] ?? 0, d.dryer, true),
      ...above(at('freeze'), t.frozenKg[day] ?? 0, d.freezeKg ?? Infinity, true),
      ...p.vessels.flatMap((v) =>
        above(at('vessel', v.id), t.vesselHours.get(v.id)?.[day] ?? 0, v.count * (d.vesselH?.[v.id] ?? 24), true),
      ),
      ...p.storage.flatMap((s) =>
        above(at('store', s.place), t.filledLitres.get(s.place)?.[day] ?? 0, s.free[day] ?? 0, true),
      ),
    ];
  });
  return [...days, ...pinBreaches(p, plan)];
}

function pinBreaches(p: PlanInstance, plan: Plan): Breach[] {
  return (p.pins ?? []).flatMap((x) => {
    const made = plan.cooked
      .filter((c) => c.recipe === x.recipe && c.day === x.day && (x.mode === undefined || c.mode === x.mode))
      .reduce((n, c) => n + batchCount(c), 0);
    const at = { rule: 'pin', ids: [x.recipe], day: x.day };
    return [...below(at, made, x.batches), ...(x.exact ? above(at, made, x.batches) : [])];
  });
}
