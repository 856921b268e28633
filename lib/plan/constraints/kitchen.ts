/**
 * `kitchen`: people's hours.
 *   sum setupH setUp + sum activeH batches + sum activePerKg cook + sum activeH(load) loads - short <= active(t) + overtime(t)
 */

import type { PlanFrame } from '../plan-frame.ts';
import { handHours, shortage } from '../plan-terms.ts';

export function kitchen(f: PlanFrame): void {
  f.data.days.forEach((d, day) => {
    f.row({ rule: 'kitchen', day, upper: d.active }, [
      ...handHours(f, day),
      ...f.term({ kind: 'overtime', ids: [], day }, -1),
      ...shortage(f, 'kitchen', day),
    ]);
  });
}
