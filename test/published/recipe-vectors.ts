/** Published recipes with the jars they print, and the balance the program makes of them. */
import { readFileSync } from 'node:fs';
import { sucroseDensity } from '#lib/science/density.ts';
import { massBalance } from '#lib/science/mass-balance.ts';
import { bisection } from '#lib/science/root.ts';
import { celsius } from '#lib/units/quantity.ts';

type YieldUnit = 'half_pint' | 'pint' | 'quart' | 'six_oz_glass';

interface Yield {
  readonly min: number;
  readonly max: number;
  readonly unit: YieldUnit;
}

export interface RecipeVector {
  readonly id: string;
  readonly product: string;
  readonly inputs: readonly { readonly item: string; readonly grams: number; readonly brix: number }[];
  readonly finish: { readonly boilOff: number } | { readonly brix: number; readonly solidsAfterG: number };
  readonly published: Yield;
  readonly alternative?: Yield & { readonly source: string };
  readonly computed: {
    readonly solublesG: number;
    readonly batchG: number;
    readonly volumeMl: number;
    readonly brix: number;
    readonly yield: number;
    readonly impliedBrix: number;
  };
  readonly source: readonly string[];
  readonly status: 'verified' | 'memory' | 'secondary';
}

interface Vectors {
  readonly dated: string;
  readonly unitMl: Readonly<Record<YieldUnit, number>>;
  readonly rows: readonly RecipeVector[];
}

export const RECIPE_VECTORS: Vectors = JSON.parse(
  readFileSync(new URL('../golden/recipe-vectors.json', import.meta.url), 'utf8'),
);

/** °Bx held within the range of the vectors' own density, 20 to 70. */
const volumeOf = (grams: number, brix: number): number =>
  grams / (sucroseDensity(Math.min(70, Math.max(20, brix)), celsius(20)) / 1000);

export function computeVector(vector: RecipeVector): RecipeVector['computed'] {
  const { finish } = vector;
  const balanceAt = (targetBrix: number) =>
    massBalance({ inputs: vector.inputs.map((i) => ({ grams: i.grams, solublePct: i.brix })), targetBrix });
  const { solidsG, chargeG } = balanceAt(65);
  const after = 'brix' in finish ? finish.solidsAfterG : 0;
  const batchG = 'brix' in finish ? balanceAt(finish.brix).panTargetG + after : chargeG * (1 - finish.boilOff);
  const brix = 'brix' in finish ? finish.brix : (100 * solidsG) / batchG;
  const volumeMl = volumeOf(batchG, brix);
  const unit = RECIPE_VECTORS.unitMl[vector.published.unit];
  const wanted = ((vector.published.min + vector.published.max) / 2) * unit;
  const volumeAt = (b: number): number => volumeOf((100 * solidsG) / b + after, b);
  const impliedBrix =
    volumeAt(70) >= wanted
      ? 70
      : volumeAt(22) <= wanted
        ? 22
        : bisection((b) => volumeAt(b) - wanted, { low: 22, high: 70 });
  return { solublesG: solidsG, batchG, volumeMl, brix, yield: volumeMl / unit, impliedBrix };
}
