import { allocOut, type Out } from '#lib/forecast/out.ts';
import type { CropSpec, ProductSpec, Scenario } from '#lib/forecast/scenario.ts';
import { type DrawOptions, type Draws, drawSeasons } from '#lib/forecast/season-draws.ts';
import { simulate } from '#lib/forecast/simulate.ts';

/** A jam in a jar on a shelf that nobody eats and nobody makes, until told otherwise. */
export const product = (over: Partial<ProductSpec> & { id: string }): ProductSpec => ({
  store: 0,
  container: 0,
  perColumn: 10,
  perUnit: 7.2,
  lifeWeeks: 60,
  usePerWeek: 0,
  rateCv: 0,
  dispersion: 1,
  crop: -1,
  kgPerJar: 0.25,
  sugarKgPerJar: 0.2,
  jarsPerBatch: 6,
  hoursPerBatch: 1.5,
  yieldSd: 0,
  returnProb: 0,
  returnLagWeeks: 3,
  openStore: -1,
  openUnit: 0,
  openWeeks: 0,
  ...over,
});

/** One shelf without limit, one jar size without a lid, no fruit. */
export const scenario = (over: Partial<Scenario> & Pick<Scenario, 'products'>): Scenario => {
  const weeks = over.weeks ?? 52;
  return {
    weeks,
    stores: [{ id: 'shelf', capacity: 1000, unit: 'cm' }],
    containers: [{ id: 'jar', empties: 1000, lid: -1, diameterCm: 7, heightCm: 10, ml: 350 }],
    lids: [],
    crops: [],
    lots: [],
    events: [],
    planned: [],
    intentions: [],
    hours: new Array<number>(weeks).fill(0),
    missWeekProb: 0,
    ...over,
  };
};

export const noBanks = { paths: [], rows: [] };

export function runSeasons(sc: Scenario, options: DrawOptions, paths: Float32Array[] = []): { out: Out; draws: Draws } {
  const rows = paths.map((p) => p.length / sc.weeks);
  const draws = drawSeasons(sc, { paths, rows }, options);
  const out = allocOut(sc, options.n);
  simulate({ scenario: sc, draws, out });
  return { out, draws };
}

/**
 * An invented holding with everything switched on: three crops, hard freezer, limited lids, gifts, market days, planned
 * batches, a kitchen that falls through, lumpy use. Week 0 = 1 May.
 */
export function holding(policy: 'list' | 'best', weeks = 52): { sc: Scenario; paths: Float32Array[] } {
  const crops: CropSpec[] = [
    { id: 'strawberry', keepPerWeek: 0.05, freshKgPerWeek: 1, onHandKg: 0 },
    { id: 'plum', keepPerWeek: 0.25, freshKgPerWeek: 1.5, onHandKg: 2 },
    { id: 'apple', keepPerWeek: 0.85, freshKgPerWeek: 2.5, onHandKg: 0 },
  ];
  const jam = {
    dispersion: 1.5,
    rateCv: 0.25,
    yieldSd: 0.06,
    returnProb: 0.95,
    openStore: 1,
    openUnit: 0.4,
    openWeeks: 3,
  };
  const products = [
    product({ id: 'strawberry jam', usePerWeek: 0.6, crop: 0, lifeWeeks: 52, ...jam }),
    product({ id: 'plum jam', usePerWeek: 0.5, crop: 1, lifeWeeks: 60, ...jam }),
    product({
      id: 'plum frozen',
      usePerWeek: 0.4,
      crop: 1,
      lifeWeeks: 45,
      store: 2,
      container: 1,
      perColumn: 1,
      perUnit: 0.8,
      jarsPerBatch: 5,
      hoursPerBatch: 0.7,
    }),
    product({ id: 'apple sauce', usePerWeek: 0.7, crop: 2, lifeWeeks: 70, kgPerJar: 0.6, sugarKgPerJar: 0.03, ...jam }),
    product({ id: 'apple butter', usePerWeek: 0.2, crop: 2, lifeWeeks: 80, kgPerJar: 0.9, hoursPerBatch: 3, ...jam }),
  ];
  const sc = scenario({
    weeks,
    stores: [
      { id: 'shelf', capacity: 45, unit: 'cm' },
      { id: 'fridge', capacity: 25, unit: 'l' },
      { id: 'freezer', capacity: 14, unit: 'l', hard: true },
    ],
    containers: [
      { id: 'jar', empties: 50, lid: 0, diameterCm: 7, heightCm: 10, ml: 350 },
      { id: 'bag', empties: 0, lid: -1, diameterCm: 0, heightCm: 0, ml: 800, unlimited: true },
    ],
    lids: [{ id: 'lid', stock: 70, limited: true }],
    crops,
    products,
    lots: [
      { product: 0, jars: 9, bestByWeek: 10 },
      { product: 0, jars: 4, bestByWeek: 30 },
      { product: 1, jars: 12, bestByWeek: 25 },
      { product: 2, jars: 3, bestByWeek: 8 },
      { product: 3, jars: 15, bestByWeek: 22 },
    ],
    events: [
      { id: 'presents', week: 33, product: 1, mean: 3, fixed: true, returnProb: 0.5 },
      { id: 'market', week: 30, product: 3, mean: 6, returnProb: 0 },
      { id: 'second market', week: 30, product: 3, mean: 2, returnProb: 0 },
    ],
    planned: [
      { id: 'first plums', week: 15, product: 1, batches: 1, prob: 0.8 },
      { id: 'second plums', week: 15, product: 1, batches: 1, prob: 0.5 },
    ],
    intentions: [0, 1, 2, 3, 4].map((p) => ({ product: p, target: 25, fromWeek: 0, toWeek: 51, maxBatchesPerWeek: 2 })),
    hours: Array.from({ length: weeks }, (_, w) => (w >= 14 && w < 28 ? 10 : 6)),
    missWeekProb: 0.12,
  });
  const worth = products.map((p, i) =>
    Float32Array.from({ length: 160 }, (_, s) => (4 + i) * (1 - s / 40) - p.hoursPerBatch),
  );
  return {
    sc: policy === 'best' ? { ...sc, batchWorth: worth } : sc,
    paths: crops.map((_, c) => hill(weeks, [6, 15, 20][c] as number, [14, 45, 110][c] as number)),
  };
}

/** 64 years of one crop around a week, from a thin to a heavy one. */
function hill(weeks: number, mid: number, kg: number): Float32Array {
  const rows = 64;
  const bank = new Float32Array(rows * weeks);
  for (let r = 0; r < rows; r++)
    for (let w = 0; w < weeks; w++)
      bank[r * weeks + w] = kg * (0.2 + (1.6 * r) / rows) * 0.4 * Math.exp(-0.5 * (w - mid - (r % 3) + 1) ** 2);
  return bank;
}
