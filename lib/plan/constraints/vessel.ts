/**
 * `vessel`: pans are few.
 *   sum vesselH batches(r,m,t) - short <= count(v) x hours the vessel is open(t)      over the modes that use vessel v
 */

import type { PlanFrame } from '../plan-frame.ts';
import { batches, shortage } from '../plan-terms.ts';

export function vessel(f: PlanFrame): void {
  for (const v of f.data.vessels)
    f.data.days.forEach((d, day) => {
      const slots = f.setup.slots.filter((s) => s.day === day && s.mode.vessel === v.id);
      f.row({ rule: 'vessel', ids: [v.id], day, upper: v.count * (d.vesselH?.[v.id] ?? 24) }, [
        ...slots.flatMap((s) => batches(f, s, () => s.mode.vesselH)),
        ...shortage(f, `vessel ${v.id}`, day),
      ]);
    });
}
