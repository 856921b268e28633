/**
 * Acidity of a fruit from a titration and a pH reading, and what an addition does to the pH. Sugar to 50 % and heating leave
 * the reading as it is (Sinclair, read). Source: the charge
 * balance beside this file. No published pair of before and after was found: the result is advice for taste and
 * gel. It never clears a fruit, and a tested dose is never made smaller by it.
 */
import { type AcidName, EQUIVALENT_MASS, LEMON_JUICE } from './acid-constants.ts';
import { type AcidMolality, cationAt, solvePh } from './charge-balance.ts';
import { MOLAR_MASS } from './physical-constants.ts';
import { brent } from './root.ts';

export type AcidShares = Readonly<Partial<Record<AcidName, number>>>;

/** Per kg of fruit: water, moles of each acid, equivalents of net strong cations. */
export interface AcidState {
  readonly waterKg: number;
  readonly acidMol: AcidMolality;
  readonly cationEq: number;
}

export interface AcidAddition {
  readonly citricG?: number;
  readonly malicG?: number;
  readonly tartaricG?: number;
  readonly lemonJuiceG?: number;
  readonly waterG?: number;
}

const END_POINT_PH = 8.2;
/** Meter 0.1, model 0.2, uneven mixing 0.1: what a predicted pH must stay clear of. */
const PREDICTION_SD = 0.2;

const scaled = (acids: AcidShares, factor: number): AcidMolality =>
  Object.fromEntries((Object.entries(acids) as [AcidName, number][]).map(([name, n]) => [name, n * factor]));

/** Mole shares (sum 1) of mass shares. */
export function moleShares(massShares: Readonly<Partial<Record<keyof typeof EQUIVALENT_MASS, number>>>): AcidShares {
  const moles = (Object.entries(massShares) as [keyof typeof EQUIVALENT_MASS, number][]).map(
    ([name, mass]) => [name, mass / MOLAR_MASS[name]] as const,
  );
  const sum = moles.reduce((total, [, n]) => total + n, 0);
  return Object.fromEntries(moles.map(([name, n]) => [name, n / sum]));
}

/** Equivalents per kg of fruit of an acidity in per cent, expressed as an acid. */
export const acidEquivalents = (taPct: number, as: keyof typeof EQUIVALENT_MASS): number =>
  (taPct * 10) / EQUIVALENT_MASS[as];

/**
 * `taEqPerKg` is titrated to pH 8.2, eq per kg of fruit; `shares` are mole shares of its acids.
 * RangeError when no amount of acid gives both the titration and the pH.
 */
export function fitTitration(fruit: {
  taEqPerKg: number;
  pH: number;
  shares: AcidShares;
  waterPct: number;
}): AcidState {
  const waterKg = fruit.waterPct / 100;
  const titrated = fruit.taEqPerKg / waterKg;
  const short = (total: number): number => {
    const acids = scaled(fruit.shares, total);
    return cationAt(acids, END_POINT_PH) - cationAt(acids, fruit.pH) - titrated;
  };
  const total = brent(short, { low: titrated / 6, high: 300 * titrated + 0.05, within: 1e-13 });
  const acids = scaled(fruit.shares, total);
  return { waterKg, acidMol: scaled(acids, waterKg), cationEq: cationAt(acids, fruit.pH) * waterKg };
}

/** The same from an acidity in per cent of the fruit, expressed `as` one acid. */
export const fitAcidity = (fruit: {
  taPct: number;
  as: keyof typeof EQUIVALENT_MASS;
  pH: number;
  shares: AcidShares;
  waterPct: number;
}): AcidState => fitTitration({ ...fruit, taEqPerKg: acidEquivalents(fruit.taPct, fruit.as) });

/** pH of a state as it stands. */
export const phOf = (s: AcidState): number => solvePh(scaled(s.acidMol, 1 / s.waterKg), s.cationEq / s.waterKg);

/** A state after additions, g per kg of fruit. RangeError for a negative addition. */
export function withAddition(s: AcidState, add: AcidAddition): AcidState {
  for (const g of Object.values(add)) if (!(g >= 0)) throw new RangeError(`an addition is 0 g or more, got ${g}`);
  const lemon = add.lemonJuiceG ?? 0;
  const more = {
    citric: ((add.citricG ?? 0) + lemon * LEMON_JUICE.citricG) / MOLAR_MASS.citric,
    malic: (add.malicG ?? 0) / MOLAR_MASS.malic,
    tartaric: (add.tartaricG ?? 0) / MOLAR_MASS.tartaric,
  };
  const acidMol: Partial<Record<AcidName, number>> = { ...s.acidMol };
  for (const name of ['citric', 'malic', 'tartaric'] as const) {
    if (more[name] > 0) acidMol[name] = (acidMol[name] ?? 0) + more[name];
  }
  return {
    waterKg: s.waterKg + ((add.waterG ?? 0) + lemon * LEMON_JUICE.waterG) / 1000,
    acidMol,
    cationEq: s.cationEq + (lemon * LEMON_JUICE.cationMeq) / 1000,
  };
}

/** Predicted pH after additions, g per kg of fruit, with the model's own spread. */
export const addAcid = (s: AcidState, add: AcidAddition): { pH: number; sd: number } => ({
  pH: phOf(withAddition(s, add)),
  sd: PREDICTION_SD,
});
