/** The damsons of 12 September: three blue buckets, two batches on the 13th, up to the step a test asks for. */
import type { Db } from '#lib/store/database/open-database.ts';
import type { BatchAsk } from '#lib/usecases/batch-ask.ts';
import { fillBatch, processLoad } from '#lib/usecases/batch-flow.ts';
import type { Context } from '#lib/usecases/context.ts';
import { type HarvestInput, recordHarvest } from '#lib/usecases/record-harvest.ts';
import { startBatches } from '#lib/usecases/start-batches.ts';
import { demoAt, doneOf } from '#test/support/demo-database.ts';

export const CODES = ['25256-DAM-A', '25256-DAM-B'] as const;
const TARE = 620;

export const bucket = (grossG: number, tareG = TARE) => ({
  grossG,
  tareG,
  containerId: 'wrenlatch:container:blue-bucket',
  containerCount: 1,
  text: (grossG / 1000).toFixed(2),
  unit: 'kg' as const,
});

export const damsons = (change: Partial<HarvestInput> = {}): HarvestInput => ({
  id: 'harvest-damsons',
  rowId: 'D3|damson',
  day: '2025-09-12',
  at: null,
  readings: [bucket(5620), bucket(5100), bucket(4880)],
  grades: { perfect: 9000, blemished: 3700, soft: 1040 },
  groundFall: false,
  nothing: null,
  person: null,
  device: null,
  ...change,
});

export const damsonAsk = (change: Partial<BatchAsk> = {}): BatchAsk => ({
  recipeId: 'damson-jam',
  draws: [
    { lotId: 'harvest-damsons.soft', grams: 1040 },
    { lotId: 'harvest-damsons.blemished', grams: 1960 },
  ],
  kitchenId: null,
  panCode: null,
  jarKind: null,
  method: 'boiling-water',
  trimG: 240,
  brix: 14,
  waterC: 98.6,
  batches: null,
  amounts: {},
  ...change,
});

/** Weighed in on Friday evening; the context of Saturday evening. */
export async function weighedIn(db: Db, change: Partial<HarvestInput> = {}): Promise<Context> {
  doneOf(await recordHarvest(await demoAt(db, '2025-09-12', '18:10'), damsons(change)));
  return demoAt(db, '2025-09-13', '18:00');
}

export async function lit(db: Db, change: Partial<HarvestInput> = {}): Promise<Context> {
  const ctx = await weighedIn(db, change);
  doneOf(await startBatches(ctx, 'start-damsons', damsonAsk()));
  return ctx;
}

export const filling = (code: string) => ({
  id: `fill-${code}`,
  code,
  jars: 6,
  partialG: 274,
  skimmingsG: 0,
  panLossG: 0,
  trimG: null,
  keepTrim: false,
});

/** Both batches filled. */
export async function filled(db: Db): Promise<Context> {
  const ctx = await lit(db);
  for (const code of CODES) doneOf(await fillBatch(ctx, filling(code)));
  return ctx;
}

/** Both out of the canner at 19:30 on Saturday; they stand to cool. */
export async function cooling(db: Db): Promise<Context> {
  await filled(db);
  const ctx = await demoAt(db, '2025-09-13', '19:30');
  doneOf(await processLoad(ctx, { id: 'out-of-canner', codes: [...CODES], step: 'out', minutes: 10, deviation: null }));
  return ctx;
}
