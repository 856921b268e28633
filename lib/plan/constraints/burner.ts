/**
 * `burner`: flames and rings.
 *   sum burnerH batches + sum burnerPerKg cook + sum burnerH(load) loads - short <= burner(t)
 */

import type { PlanFrame } from '../plan-frame.ts';
import { burnerHours, shortage } from '../plan-terms.ts';

export function burner(f: PlanFrame): void {
  f.data.days.forEach((d, day) => {
    f.row({ rule: 'burner', day, upper: d.burner }, [...burnerHours(f, day), ...shortage(f, 'burner', day)]);
  });
}
