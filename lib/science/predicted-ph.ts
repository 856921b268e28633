/**
 * pH of a fruit from table acidity and minerals, without a meter. On 24 fruits rms 0.26 with a bias of -0.13 and a worst case
 * of -0.59: it errs to the unsafe side. For flavour and gel only.
 * Source: the charge balance beside this file; acidity and minerals come with their own.
 */
import { type AcidShares, fitTitration } from './acid-balance.ts';
import { brent } from './root.ts';

/** mg per 100 g. */
export interface Minerals {
  readonly K: number;
  readonly Na?: number;
  readonly Mg?: number;
  readonly Ca?: number;
  readonly P?: number;
}

/** Net strong cations, eq per kg of fruit; calcium counted half. */
export const mineralCation = (m: Minerals): number =>
  (10 * (m.K / 39.1 + (m.Na ?? 0) / 22.99 + (2 * (m.Mg ?? 0)) / 24.305 + (m.Ca ?? 0) / 40.08 - (m.P ?? 0) / 30.97)) /
  1000;

/** RangeError when no pH from 2.0 to 5.6 fits: the minerals of the table then exceed its acid. */
export function predictedPh(fruit: {
  taEqPerKg: number;
  shares: AcidShares;
  waterPct: number;
  minerals: Minerals;
}): number {
  const wanted = mineralCation(fruit.minerals);
  return brent((pH) => fitTitration({ ...fruit, pH }).cationEq - wanted, { low: 2, high: 5.6, within: 1e-9 });
}
