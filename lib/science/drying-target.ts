/** What dried fruit must weigh, by definition of the moistures: dry matter stays. Moistures are shares of the wet weight, 0 to below 1. */
export function driedMass(lot: { freshG: number; w0: number; wt: number }): number {
  for (const w of [lot.w0, lot.wt])
    if (!(w >= 0 && w < 1)) throw new RangeError(`a moisture is 0 to below 1, got ${w}`);
  if (!(lot.freshG >= 0)) throw new RangeError(`a mass is 0 g or more, got ${lot.freshG}`);
  return (lot.freshG * (1 - lot.w0)) / (1 - lot.wt);
}

/** Fresh moisture that a lot had, from what it weighed dried to a known moisture. */
export const freshMoisture = (lot: { freshG: number; driedG: number; wt: number }): number =>
  1 - (lot.driedG * (1 - lot.wt)) / lot.freshG;
