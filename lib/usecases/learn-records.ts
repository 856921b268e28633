/**
 * What the batches on record can teach: each own batch since the last "forget", with the figures its readings and its filling
 * give. A batch gives what was logged and nothing is filled in for it; season records of the demo give nothing.
 */
import { panLotId } from '#lib/ledger/acts/start-batch.ts';
import type { BatchRecord, ReadingRecord } from '#lib/ledger/batch-record.ts';
import { isLot } from '#lib/ledger/movement.ts';
import { panLossRate } from '#lib/science/learn-evaporation.ts';
import type { Observed } from '#lib/science/learn-factor.ts';
import { inversionSeen } from '#lib/science/learn-inversion.ts';
import type { PlateSeen } from '#lib/science/learn-powder.ts';
import { loadActs, type StoredAct } from '#lib/store/act-store.ts';
import { loadBatches, readingsOf } from '#lib/store/batch-store.ts';
import type { Db, Tx } from '#lib/store/database/open-database.ts';
import { loadLots, movementsOf } from '#lib/store/ledger-store.ts';
import type { Context } from './context.ts';
import { type FrozenSheet, sheetOf } from './frozen-sheet.ts';
import { type PowderIn, plateSeen } from './learn-plate.ts';
import { recordedRecipe } from './recipes-here.ts';

export interface BatchTaught {
  code: string;
  kitchenId: string;
  panCode: string | null;
  evaporation: Observed | null;
  loss: Observed | null;
  inversion: Observed | null;
  plate: PlateSeen | null;
  /** Code of the apple powder lot the batch drew most from; null without one. */
  powderLot: string | null;
}

export interface LearnRecords {
  /** Instant from which batches count; null when nothing was ever forgotten. */
  since: string | null;
  batches: BatchTaught[];
}

export const FORGET = 'learnt';

export async function learnRecords(ctx: Context, db: Db | Tx = ctx.db): Promise<LearnRecords> {
  const { place } = ctx;
  const [acts, batches, readings, lots] = await Promise.all([
    loadActs(db, place.id, { kinds: ['fill', 'correct'] }),
    loadBatches(db, place.id),
    readingsOf(db, place.id, {}),
    loadLots(db, place.id, { kinds: ['fruit', 'frozen'], emptied: true }),
  ]);
  const inPans = await powderInPans(ctx, db);
  const since = lastForgotten(acts);
  const wrong = new Set(acts.flatMap((a) => (a.corrects ? [a.corrects] : [])));
  const fills = acts.filter((a) => a.kind === 'fill' && !wrong.has(a.id));
  const own = batches.filter(
    (b) => b.formulaVersion !== 'season' && (since === null || (b.startedAt !== null && b.startedAt > since)),
  );
  return {
    since,
    batches: own.map((b) => {
      const logged = readings.filter((r) => r.batchId === b.id);
      const fill = fills.find((a) => a.payload.code === b.code);
      const powders = inPans.get(panLotId(b.id)) ?? [];
      return {
        code: b.code,
        kitchenId: b.kitchenId,
        panCode: b.panCode,
        evaporation: panLossRate(
          logged.filter((r) => r.kind === 'weight').map((r) => ({ minutes: minuteOf(r), grams: r.value * 10 })),
        ),
        loss: fill ? lossOf(fill) : null,
        inversion: inversionOf(b, sheetOf(b), logged),
        plate: plateSeen(b, recordedRecipe(place, b.recipeId), sheetOf(b), { logged, lots, powders }),
        powderLot: powders[0]?.code ?? null,
      };
    }),
  };
}

/** For each pan that drew apple powder, the lots it came from with their grams, the most first. */
async function powderInPans(ctx: Context, db: Db | Tx): Promise<Map<string, PowderIn[]>> {
  const lots = await loadLots(db, ctx.place.id, { kinds: ['set-aside'], item: 'apple-powder', emptied: true });
  const code = new Map(lots.map((l) => [l.id, l.code]));
  const pans = new Map<string, PowderIn[]>();
  for (const { from, to, qty } of await movementsOf(db, ctx.place.id, [...code.keys()])) {
    const drawn = isLot(from) ? code.get(from.lot) : undefined;
    if (!drawn || !isLot(to)) continue;
    pans.set(to.lot, [...(pans.get(to.lot) ?? []), { code: drawn, grams: qty }]);
  }
  for (const powders of pans.values()) powders.sort((a, b) => b.grams - a.grams);
  return pans;
}

/** Instant of the last "forget"; null when there was none. */
export const lastForgotten = (acts: readonly StoredAct[]): string | null =>
  acts
    .filter((a) => a.kind === 'correct' && a.payload.forget === FORGET)
    .map((a) => a.at)
    .sort()
    .at(-1) ?? null;

const minuteOf = (r: ReadingRecord): number => Date.parse(r.at) / 60_000;

/** Skimmings and what stuck, as weighed when the jars were filled. The form starts at 0, so 0 g counts as not weighed. */
function lossOf(fill: StoredAct): Observed | null {
  const of = (key: string): number => (typeof fill.payload[key] === 'number' ? (fill.payload[key] as number) : 0);
  const grams = of('skimmingsG') + of('panLossG');
  return grams > 0 ? { value: grams, relSd: 0 } : null;
}

/** A refractometer and a thermometer reading belong to the same finish when they are this near, minutes. */
const SAME_FINISH_MIN = 10;

function inversionOf(b: BatchRecord, sheet: FrozenSheet, logged: readonly ReadingRecord[]): Observed | null {
  const of = (kind: ReadingRecord['kind']) => logged.filter((r) => r.kind === kind);
  const brix = of('brix').at(-1);
  const stop = brix && of('temperature').findLast((r) => Math.abs(minuteOf(r) - minuteOf(brix)) <= SAME_FINISH_MIN);
  const pHs = of('ph').map((r) => r.value / 100);
  const waterC = typeof b.inputs.waterC === 'number' ? b.inputs.waterC : null;
  const sugarG = sheet.doses?.find((d) => d.name === 'sugar')?.grams ?? 0;
  if (!brix || !stop || pHs.length === 0 || waterC === null || !sheet.finalG || !sheet.brix) return null;
  const atBoil = logged.filter(
    (r) => r.kind === 'weight' || (r.kind === 'temperature' && r.value / 100 >= waterC - 0.5),
  );
  const solidsG = (sheet.finalG * sheet.brix) / 100;
  const addedShare = sugarG / solidsG;
  if (!(addedShare > 0 && addedShare <= 1) || brix.value / 100 >= 85) return null;
  return inversionSeen({
    brix: brix.value / 100,
    stopC: stop.value / 100,
    waterC,
    pH: pHs.reduce((s, x) => s + x, 0) / pHs.length,
    boiledMin: minuteOf(stop) - Math.min(...atBoil.map(minuteOf)),
    startBrix: (100 * solidsG) / sheet.mixG,
    addedShare,
  });
}
