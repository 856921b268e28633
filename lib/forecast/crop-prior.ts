/** What is believed about a crop before its first record of the season. Masses in kg, days on any one day count. */
export interface CropPrior {
  /** Kinds of year (ordinary; failed): weight, mean of the season's total in kg, coefficient of variation. */
  readonly total: readonly { readonly weight: number; readonly mean: number; readonly cv: number }[];
  /** Day by which half is ripe. */
  readonly mid: { readonly mean: number; readonly sd: number };
  /** Days from 10 % to 90 % ripe, lognormal. */
  readonly width: { readonly median: number; readonly sdLog: number };
  /** Weights of the curves long tail, symmetric, late rush. */
  readonly shapes: readonly [number, number, number];
  /** Evenness of picking: a pick expected to be a share d of the crop has CV 1/sqrt(kappa d). */
  readonly kappa: { readonly values: readonly number[]; readonly weights: readonly number[] };
}

/** Curve weights and evenness in use until a crop's own picks say otherwise; from memory, checked on simulated orchards only. */
export const SHAPE_WEIGHTS: readonly [number, number, number] = [0.45, 0.4, 0.15];
export const EVENNESS = { values: [6, 12, 25, 50, 100], weights: [0.1, 0.25, 0.3, 0.25, 0.1] } as const;
