/**
 * Acids of fruit. pKa at 25 °C and zero ionic strength: citric (Bates & Pinching), malic, tartaric, oxalic read in tables;
 * quinic, phosphoric, acetic, ascorbic from memory, sure. Equivalent masses in g/eq, as titration counts them.
 */
export type AcidName = 'citric' | 'malic' | 'tartaric' | 'quinic' | 'phosphoric' | 'oxalic' | 'acetic' | 'ascorbic';

export const PKA: Readonly<Record<AcidName, readonly number[]>> = {
  citric: [3.128, 4.761, 6.396],
  malic: [3.4, 5.11],
  tartaric: [3.036, 4.366],
  quinic: [3.46],
  phosphoric: [2.148, 7.198, 12.35],
  oxalic: [1.27, 4.266],
  acetic: [4.756],
  ascorbic: [4.17],
};

export const EQUIVALENT_MASS = { citric: 64.04, malic: 67.05, tartaric: 75.04, quinic: 192.17, oxalic: 45 } as const;

/** Bottled lemon juice per gram: 5 % citric acid, 0.034 meq of mineral cations, 92 % water (composition USDA SR26). */
export const LEMON_JUICE = { citricG: 0.05, cationMeq: 0.034, waterG: 0.92 } as const;

/** Titratable acid expressed as another acid: the same equivalents. */
export const acidAs = (amount: number, from: keyof typeof EQUIVALENT_MASS, to: keyof typeof EQUIVALENT_MASS): number =>
  (amount * EQUIVALENT_MASS[to]) / EQUIVALENT_MASS[from];
