/**
 * How long a season forecast takes: 10,000 seasons x 52 weeks x 30 products, against a bare loop that only writes the same
 * number of product-weeks into a typed array, and against a bare loop that does only the arithmetic of use: the keyed number,
 * the count drawn from it, the stock less it. What the ratio leaves is the pantry itself: best-by dates, batches, jars, room.
 * Run: node test/bench/run.mjs
 */
import { allocOut } from '#lib/forecast/out.ts';
import type { ProductSpec, Scenario } from '#lib/forecast/scenario.ts';
import { drawSeasons } from '#lib/forecast/season-draws.ts';
import { simulate } from '#lib/forecast/simulate.ts';
import { bands } from '#lib/forecast/summary.ts';
import { product, scenario } from '../forecast/toy-scenario.ts';

const WEEKS = 52;
const PRODUCTS = 30;
const CROPS = 8;
const ROWS = 4096;
const SEASONS = 10_000;

const products: ProductSpec[] = Array.from({ length: PRODUCTS }, (_, i) =>
  product({
    id: `product ${i}`,
    store: i % 6 === 0 ? 2 : 0,
    perColumn: i % 6 === 0 ? 1 : 8,
    perUnit: i % 6 === 0 ? 0.6 : 7.2,
    container: i % 3,
    usePerWeek: 0.06 + (0.84 * i) / PRODUCTS,
    rateCv: 0.25,
    dispersion: 1.5,
    lifeWeeks: 40 + (i % 6) * 10,
    crop: i % CROPS,
    kgPerJar: 0.25 + (i % 4) * 0.1,
    jarsPerBatch: 4 + (i % 5),
    hoursPerBatch: 0.5 + (i % 7) * 0.4,
    yieldSd: 0.06,
    returnProb: 0.95,
    openStore: 1,
    openUnit: 0.4,
    openWeeks: 3,
  }),
);

const base: Scenario = scenario({
  weeks: WEEKS,
  stores: [
    { id: 'shelf', capacity: 480, unit: 'cm' },
    { id: 'fridge', capacity: 25, unit: 'l' },
    { id: 'freezer', capacity: 60, unit: 'l', hard: true },
  ],
  containers: ['a', 'b', 'c'].map((id, i) => ({
    id,
    empties: 60 + 40 * i,
    lid: 0,
    diameterCm: 7,
    heightCm: 10,
    ml: 350,
  })),
  lids: [{ id: 'lid', stock: 300 }],
  crops: Array.from({ length: CROPS }, (_, i) => ({
    id: `crop ${i}`,
    keepPerWeek: 0.1 + 0.09 * i,
    freshKgPerWeek: 0.5,
    onHandKg: 0,
  })),
  products,
  lots: products.flatMap((p, i) =>
    [0, 1].map((k) => ({ product: i, jars: Math.ceil(p.usePerWeek * 11), bestByWeek: 12 + 20 * k })),
  ),
  events: [{ id: 'presents', week: 33, product: 1, mean: 3, fixed: true, returnProb: 0.5 }],
  intentions: products.map((p, i) => ({
    product: i,
    target: Math.ceil(p.usePerWeek * 45),
    fromWeek: 0,
    toWeek: 51,
    maxBatchesPerWeek: 2,
  })),
  hours: Array.from({ length: WEEKS }, (_, w) => (w >= 14 && w < 28 ? 10 : 6)),
  missWeekProb: 0.12,
});
const worth = products.map((p) =>
  Float32Array.from({ length: 160 }, (_, s) => 4 * (1 - s / (p.usePerWeek * 50)) - p.hoursPerBatch / 2),
);
const best: Scenario = { ...base, batchWorth: worth };

const paths = Array.from({ length: CROPS }, (_, c) =>
  Float32Array.from({ length: ROWS * WEEKS }, (_, i) => {
    const [row, week] = [Math.floor(i / WEEKS), i % WEEKS];
    const kg = 8 * Math.exp(-0.5 * (week - 6 - 2 * c) ** 2) * (0.2 + (1.6 * row) / ROWS);
    return kg > 0.01 ? kg : 0;
  }),
);
const banks = { paths, rows: paths.map(() => ROWS) };
const draws = drawSeasons(base, banks, { n: SEASONS, seed: 1 });
const out = allocOut(base, SEASONS);
const bare = new Uint16Array(SEASONS * WEEKS * PRODUCTS);

function bareLoop(): number {
  let x = 1;
  for (let i = 0; i < bare.length; i++) {
    x = (Math.imul(x, 1664525) + 1013904223) | 0;
    bare[i] = x >>> 24;
  }
  return bare[bare.length - 1] as number;
}

/** One addressed number, one negative binomial count and one subtraction a product-week, in flat arrays; nothing else. */
function bareArithmetic(): number {
  const rate = Float64Array.from(products, (p) => p.usePerWeek);
  const zero = Float64Array.from(products, (p) =>
    Math.exp((-p.usePerWeek * Math.log(p.dispersion)) / (p.dispersion - 1)),
  );
  const invPhi = Float64Array.from(products, (p) => 1 / p.dispersion);
  const start = Int32Array.from(products, (p) => Math.ceil(p.usePerWeek * 52));
  const stock = new Int32Array(PRODUCTS);
  for (let s = 0, at = 0; s < SEASONS; s++) {
    stock.set(start);
    for (let w = 0; w < WEEKS; w++) {
      for (let p = 0; p < PRODUCTS; p++, at++) {
        let h = Math.imul(s + 1, 0x85ebca6b) ^ Math.imul(w + 1, 0x9e3779b1) ^ Math.imul(p + 1, 0xc2b2ae35);
        h ^= h >>> 16;
        h = Math.imul(h, 0x21f0aaad);
        h ^= h >>> 15;
        h = Math.imul(h, 0x735a2d97);
        h ^= h >>> 15;
        const u = ((h >>> 0) + 0.5) * 2 ** -32;
        let pk = zero[p] as number;
        let below = pk;
        let wanted = 0;
        const l = (rate[p] as number) * (invPhi[p] as number);
        const q = 1 - (invPhi[p] as number);
        while (u > below && wanted < 120) {
          pk = (pk * (l + wanted * q)) / (wanted + 1);
          wanted++;
          below += pk;
        }
        const left = Math.max(0, (stock[p] as number) - wanted);
        stock[p] = left;
        bare[at] = left;
      }
    }
  }
  return bare[bare.length - 1] as number;
}

/** CPU milliseconds, the quickest of `runs`: other work on the machine only ever adds. */
function quickest(runs: number, work: () => unknown): number {
  let most = Number.POSITIVE_INFINITY;
  for (let i = 0; i < runs; i++) {
    const start = process.cpuUsage();
    work();
    const spent = process.cpuUsage(start);
    most = Math.min(most, (spent.user + spent.system) / 1000);
  }
  return most;
}

const small = drawSeasons(base, banks, { n: 1000, seed: 1 });
const smallOut = allocOut(base, 1000);
const cold = quickest(1, () => simulate({ scenario: best, draws: small, out: smallOut }));
const full = quickest(1, () => simulate({ scenario: best, draws, out }));
const loop = quickest(5, bareLoop);
const arithmetic = quickest(5, bareArithmetic);
const rows: [string, number][] = [
  ['1,000 seasons, first call', cold],
  ['10,000 seasons after those, first call', full],
  ['1,000 seasons, warm', quickest(4, () => simulate({ scenario: best, draws: small, out: smallOut }))],
  ['10,000 seasons, list order', quickest(5, () => simulate({ scenario: base, draws, out }))],
  ['10,000 seasons, best first', quickest(5, () => simulate({ scenario: best, draws, out }))],
  ['season draws, 39 names x 10,000', quickest(2, () => drawSeasons(base, banks, { n: SEASONS, seed: 2 }))],
  [
    'P10, P50, P90 of every week and product',
    quickest(2, () => {
      for (let w = 0; w < WEEKS; w++) for (let p = 0; p < PRODUCTS; p++) bands(out, w, p, [0.1, 0.5, 0.9]);
    }),
  ],
];
const productWeeks = SEASONS * WEEKS * PRODUCTS;
process.stdout.write(
  `bare loop, ${productWeeks / 1e6} M writes: ${loop.toFixed(0)} ms CPU; with the arithmetic of use: ${arithmetic.toFixed(0)} ms CPU\n`,
);
for (const [name, ms] of rows)
  process.stdout.write(
    `${name}: ${ms.toFixed(0)} ms CPU, ${(ms / loop).toFixed(1)} x the bare loop, ${(ms / arithmetic).toFixed(2)} x with the arithmetic\n`,
  );
