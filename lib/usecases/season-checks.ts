/** How often the bands held: what would have been said on earlier days beside what came. Proper counts, no excuses. */
import { cumulativeDemand, demandUntil } from '#lib/forecast/demand-until.ts';
import { quantileSorted } from '#lib/forecast/math.ts';
import { key, Sfc32, uid } from '#lib/forecast/random.ts';
import type { PlainDate } from '#lib/units/plain-date.ts';
import { posteriorOf } from './forecast-fruit.ts';
import type { PastLook } from './season-past.ts';

export interface Checked {
  kind: 'harvest' | 'use';
  id: string;
  label: string;
  asOf: PlainDate;
  p10: number;
  p50: number;
  p90: number;
  came: number;
  /** Whether it came inside the bands meant for 5, 8 and 19 cases of 20. */
  held: { five: boolean; eight: boolean; nineteen: boolean };
}

const FUTURES = 500;
const LEVELS = [0.025, 0.1, 0.25, 0.5, 0.75, 0.9, 0.975] as const;

export function seasonChecks(looks: readonly PastLook[], seed: number): Checked[] {
  return looks.flatMap(({ asOf, harvests, uses }) => [
    ...harvests.map((h): Checked => {
      const rng = new Sfc32(key(seed, uid(`check ${h.id} ${asOf}`)));
      const { remaining } = posteriorOf(h.season).sample(FUTURES, [h.season.fromDay, h.season.fromDay + 400], rng);
      const sorted = remaining.slice().sort();
      return checked({
        kind: 'harvest',
        id: h.id,
        label: h.label,
        asOf,
        came: h.cameKg,
        at: LEVELS.map((p) => quantileSorted(sorted, p)),
      });
    }),
    ...uses.map((u): Checked => {
      const cdf = cumulativeDemand(demandUntil(u), 400);
      const at = LEVELS.map((p) =>
        Math.max(
          0,
          cdf.findIndex((x) => x >= p),
        ),
      );
      return checked({ kind: 'use', id: u.id, label: u.label, asOf, came: u.used, at });
    }),
  ]);
}

function checked(c: Pick<Checked, 'kind' | 'id' | 'label' | 'asOf' | 'came'> & { at: number[] }): Checked {
  const { at, ...rest } = c;
  const [low95, p10, low50, p50, high50, p90, high95] = at as [number, number, number, number, number, number, number];
  const inside = (low: number, high: number) => c.came >= low - 1e-9 && c.came <= high + 1e-9;
  return {
    ...rest,
    p10,
    p50,
    p90,
    held: { five: inside(low50, high50), eight: inside(p10, p90), nineteen: inside(low95, high95) },
  };
}
