/**
 * What a pan holds, in grams. Sugars, acids and loose ions are kept apart because each pulls on water by its own count of
 * particles; so inversion, acid and fruit potassium need no special rules later. °Bx by definition: dissolved matter in 100 of liquid.
 */
export interface Composition {
  readonly water: number;
  readonly sucrose: number;
  readonly glucose: number;
  readonly fructose: number;
  readonly citric?: number;
  readonly malic?: number;
  readonly tartaric?: number;
  /** Further ions, mmol: mg of potassium / 39.1. */
  readonly ionsMmol?: number;
  /** Pectin and other soluble polymers: counted in °Bx, not as particles. */
  readonly polymer?: number;
  /** Fibre, skin, pips: in the mass, not in °Bx. */
  readonly insoluble?: number;
}

/** 100 g of sugar syrup. `brix` 0 to below 100; `inverted` is the mass share of the sugar that is glucose and fructose. */
export function syrup(brix: number, inverted: number): Composition {
  if (!(brix >= 0 && brix < 100)) throw new RangeError(`°Bx must be 0 to below 100, got ${brix}`);
  if (!(inverted >= 0 && inverted <= 1)) throw new RangeError(`an inverted share is 0 to 1, got ${inverted}`);
  const half = (brix * inverted) / 2;
  return { water: 100 - brix, sucrose: brix * (1 - inverted), glucose: half, fructose: half };
}

/** Dissolved matter, g. */
export const dissolvedG = (c: Composition): number =>
  c.sucrose + c.glucose + c.fructose + (c.citric ?? 0) + (c.malic ?? 0) + (c.tartaric ?? 0) + (c.polymer ?? 0);

/** Everything in the pan, g. */
export const massOf = (c: Composition): number => c.water + dissolvedG(c) + (c.insoluble ?? 0);

/** Soluble solids of the liquid part, per cent: what a refractometer reads. */
export const brixOf = (c: Composition): number => (100 * dissolvedG(c)) / (c.water + dissolvedG(c));
