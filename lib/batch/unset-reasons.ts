/**
 * Why a batch did not set, ranked from its own log: what was measured comes before what was planned, and what is missing from
 * the log is said to be missing. Causes: NCHFP, problems with jellied products; the order and the marks are this project's.
 */
import { counted, mass } from '#lib/units/format.ts';

export interface UnsetLog {
  /** Pan weight to stop at and the last one logged, g. */
  finalG: number | null;
  lastG: number | null;
  /** Aim and last reading of the refractometer, °Bx. */
  brix: number | null;
  lastBrix: number | null;
  /** Stop and last thermometer reading, °C. */
  stopC: number | null;
  lastC: number | null;
  /** The last cold plate at the stove: 0 ran, 1 thickened, 2 set. */
  lastPlate: number | null;
  boiledMin: number | null;
  plannedMin: number | null;
  /** Prepared fruit or juice in the one pan, g, and the most a pan of it should hold. */
  preparedG: number;
  ceilingG: number;
  /** Share of the fruit graded soft, 0 to 1. */
  softShare: number;
  lowPectin: readonly string[];
  /** Sugar weighed and sugar by the recipe, g. */
  sugarG: number | null;
  recipeSugarG: number | null;
  powder: boolean;
}

/** Strongest first; never empty. */
export function unsetReasons(l: UnsetLog): string[] {
  const found: [weight: number, words: string][] = [];
  const add = (weight: number, words: string) => found.push([weight, words]);
  const over = l.finalG !== null && l.lastG !== null ? l.lastG / l.finalG - 1 : 0;
  if (l.finalG !== null && l.lastG !== null && over > 0.02)
    add(
      10 + over,
      `Stopped early: the pan weighed ${mass(l.lastG)}, ${mass(l.lastG - l.finalG)} over its stop weight.`,
    );
  if (l.brix !== null && l.lastBrix !== null && l.lastBrix < l.brix - 1)
    add(9, `Too thin: the refractometer read ${l.lastBrix} °Bx, ${l.brix} was the aim.`);
  if (l.stopC !== null && l.lastC !== null && l.lastC < l.stopC - 0.5)
    add(8, `Stopped cool: ${l.lastC.toFixed(1)} °C at the last reading, ${l.stopC.toFixed(1)} °C was the guide.`);
  if (l.lastPlate !== null && l.lastPlate < 2)
    add(7, `The last cold plate at the stove ${l.lastPlate === 0 ? 'ran' : 'only thickened'}.`);
  if (l.sugarG !== null && l.recipeSugarG !== null && l.sugarG < l.recipeSugarG * 0.95)
    add(6, `Short of sugar: ${mass(l.sugarG)} where the recipe takes ${mass(l.recipeSugarG)}.`);
  if (l.boiledMin !== null && l.plannedMin !== null && l.boiledMin > 2 * l.plannedMin)
    add(
      5,
      `Boiled ${counted(Math.round(l.boiledMin), 'minute')}, ${Math.round(l.plannedMin)} were planned: long boiling breaks pectin.`,
    );
  if (l.softShare > 0)
    add(
      3 + l.softShare,
      `${Math.round(l.softShare * 100)} % of the fruit was soft: overripe fruit has lost pectin and acid.`,
    );
  if (l.preparedG > l.ceilingG)
    add(3, `A large pan: ${mass(l.preparedG)}, where ${mass(l.ceilingG)} is the most that sets well.`);
  if (l.lowPectin.length > 0) add(2, `Little pectin of its own: ${l.lowPectin.join(', ')}.`);
  if (l.powder) add(2, 'Its pectin came from a powder whose strength is an estimate.');
  if (l.lastG === null && l.lastBrix === null && l.lastC === null)
    add(
      1,
      'Nothing was logged at the end of the boil (no weight, no °Bx, no temperature), so an early stop cannot be ruled out.',
    );
  if (found.length === 0) add(0, 'The log shows no cause: its end weight and readings met the sheet.');
  return found.sort(([a], [b]) => b - a).map(([, words]) => words);
}
