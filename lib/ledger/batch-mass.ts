/** Mass in, mass out: what went into a batch against what came of it, from its movements. */
import { isLot, type Movement } from './movement.ts';

export interface BatchMass {
  inG: number;
  jarsG: number;
  otherLotsG: number;
  bySink: Record<string, number>;
  /** In less out; zero once a batch is filled. */
  openG: number;
}

/** Adds up the movements that touch the batch lot. Counter-movements subtract by themselves. */
export function batchMass(
  batchLotId: string,
  movements: readonly Movement[],
  isJars: (lotId: string) => boolean,
): BatchMass {
  const mass: BatchMass = { inG: 0, jarsG: 0, otherLotsG: 0, bySink: {}, openG: 0 };
  for (const m of movements) {
    const g = m.grams ?? m.qty;
    if (isLot(m.to) && m.to.lot === batchLotId) mass.inG += g;
    if (!isLot(m.from) || m.from.lot !== batchLotId) continue;
    if (!isLot(m.to)) mass.bySink[m.to.sink] = (mass.bySink[m.to.sink] ?? 0) + g;
    else if (isJars(m.to.lot)) mass.jarsG += g;
    else mass.otherLotsG += g;
  }
  const sinks = Object.values(mass.bySink).reduce((a, b) => a + b, 0);
  mass.openG = mass.inG - mass.jarsG - mass.otherLotsG - sinks;
  return mass;
}
