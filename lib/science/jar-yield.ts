/**
 * How many jars a batch fills. Source: arithmetic on the pan target and the density at 20 °C; against printed yields it is within
 * half a jar in three of five recipes and 0.6-0.7 jar low in two, so a count is shown with one jar in five either way.
 */
import { celsius } from '#lib/units/quantity.ts';
import { sucroseDensity } from './density.ts';

export interface JarKind {
  readonly id: string;
  readonly fillMl: number;
  /** Empty jars at hand; no limit when not given. */
  readonly available?: number;
}

export interface JarYield {
  readonly counts: readonly { readonly id: string; readonly jars: number; readonly jarG: number }[];
  /** What does not fill a whole jar, g: for the fridge. */
  readonly leftoverG: number;
  /** Grams in one jar of the first kind. */
  readonly jarG: number;
  readonly low: number;
  readonly high: number;
}

const SPREAD = 0.2;

/** Kinds are filled in the order given. `lossG` is the film on pan and tools and the foam (0 until learnt). */
export function jarYield(batch: {
  panTargetG: number;
  brix: number;
  lossG: number;
  jars: readonly JarKind[];
}): JarYield {
  const gPerMl = sucroseDensity(batch.brix, celsius(20)) / 1000;
  const toFill = Math.max(0, batch.panTargetG - batch.lossG);
  let leftoverG = toFill;
  const counts = batch.jars.map(({ id, fillMl, available = Number.POSITIVE_INFINITY }) => {
    if (!(fillMl > 0)) throw new RangeError(`a jar holds more than 0 mL, got ${fillMl}`);
    const jarG = fillMl * gPerMl;
    const jars = Math.min(available, Math.floor(leftoverG / jarG + 1e-9));
    leftoverG = Math.max(0, leftoverG - jars * jarG);
    return { id, jars, jarG };
  });
  const first = counts[0];
  if (!first) throw new RangeError('a jar size is needed');
  return {
    counts,
    leftoverG,
    jarG: first.jarG,
    low: Math.floor((toFill / first.jarG) * (1 - SPREAD)),
    high: Math.ceil((toFill / first.jarG) * (1 + SPREAD)),
  };
}
