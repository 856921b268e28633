/**
 * Canner loads and the clock: heat-up once, then for each load its minutes and 5 minutes' rest with the lid off, and a
 * reload between loads. Loads are those of the largest canner alone; with several a round is one load in each, and the slowest
 * sets the time.
 * Minutes come from the process table; the 5 minutes from Univ. Florida EDIS FCS8297; heat-up and reload are the household's
 * own and learnt from its timers.
 */
import type { JarSize } from '#lib/reference/jar-sizes.ts';
import { type Figure, figure, input } from './figure.ts';

export interface Canner {
  readonly id: string;
  readonly method: 'boiling-water' | 'steam';
  readonly jarsPerLoad: Readonly<Partial<Record<JarSize, number>>>;
  readonly heatUpMin: number;
  readonly reheatMin: number;
}

export interface CannerClock {
  readonly cannerIds: readonly string[];
  readonly loads: Figure;
  readonly minutes: Figure;
}

const REST_MIN = 5;

/** Null when no canner takes this jar. */
export function cannerClock(
  jars: number,
  size: JarSize,
  processMin: number,
  canners: readonly Canner[],
): CannerClock | null {
  const fit = canners.filter((c) => (c.jarsPerLoad[size] ?? 0) > 0);
  if (fit.length === 0 || jars <= 0) return null;
  const perRound = fit.reduce((sum, c) => sum + (c.jarsPerLoad[size] as number), 0);
  const rounds = Math.ceil(jars / perRound);
  const each = fit.map((c) => c.heatUpMin + rounds * (processMin + REST_MIN) + (rounds - 1) * c.reheatMin);
  const largest = Math.max(...fit.map((c) => c.jarsPerLoad[size] as number));
  return {
    cannerIds: fit.map((c) => c.id),
    loads: figure({
      value: Math.ceil(jars / largest),
      unit: 'loads',
      formula: `jars over what a load of the largest canner holds, rounded up${fit.length > 1 ? `; with all ${fit.length} canners at once, ${rounds} rounds` : ''}`,
      inputs: [input('jars', jars), input('a load', largest, 'jars')],
    }),
    minutes: figure({
      value: Math.max(...each),
      unit: 'min',
      formula: 'heat-up + loads × (minutes + 5) + reloads; the slowest canner',
      inputs: [
        input('process', processMin, 'min'),
        input('rounds', rounds),
        ...fit.map((c) => input(`heat-up, ${c.id}`, c.heatUpMin, 'min')),
      ],
      source: 'EDIS_PLUM',
      status: 'estimate',
    }),
  };
}
