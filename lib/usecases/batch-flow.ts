/** From the stove to the canner: readings, filling, processing. Each is one act; the seals follow in seal-check.ts. */

import { drawOldest } from '#lib/ledger/acts/draw-oldest.ts';
import { fillJars } from '#lib/ledger/acts/fill-jars.ts';
import { panLotId } from '#lib/ledger/acts/start-batch.ts';
import type { BatchRecord } from '#lib/ledger/batch-record.ts';
import { type Act, childId, type Entry, isRefusal, type Refusal } from '#lib/ledger/entry.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import { newLot, worstGrade } from '#lib/ledger/lot.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import { SET_ASIDE_MATERIALS, trimMaterial } from '#lib/reference/set-aside-materials.ts';
import { driedMass } from '#lib/science/drying-target.ts';
import { batchOfCode, loadBatches } from '#lib/store/batch-store.ts';
import type { Tx } from '#lib/store/database/open-database.ts';
import { loadLots, movementsOf, type Written, writeAct } from '#lib/store/ledger-store.ts';
import { roomOfKind } from '#lib/store/place.ts';
import { counted, kilograms } from '#lib/units/format.ts';
import { addDays } from '#lib/units/plain-date.ts';
import { actOf } from './act-of.ts';
import type { Context } from './context.ts';
import { sheetOf } from './frozen-sheet.ts';
import { heldByHighPh, holdAtFilling, PROCESS_HOLD, withHold } from './ph-hold.ts';
import { recordedRecipe } from './recipes-here.ts';
import { freeSetAsideCode } from './set-aside-step.ts';

export interface Told {
  said: string;
}

export interface ReadingInput {
  id: string;
  code: string;
  kind: 'temperature' | 'weight' | 'brix' | 'set-test';
  /** °C, kg, °Bx; for a set test 0 = runs, 1 = thickens, 2 = set. */
  value: number;
}
const READING_UNIT = { temperature: '°C', weight: 'kg', brix: '°Bx', 'set-test': 'set' } as const;

/** A reading at the stove: the log is a by-product of looking. */
export const logReading = (ctx: Context, input: ReadingInput): Promise<Written<Told>> =>
  onBatch(ctx, input.id, input.code, ['cooking'], async (_tx, batch) => {
    const act = actOf(ctx, input.id, 'process', { ...input });
    const unit = READING_UNIT[input.kind];
    const text =
      input.kind === 'set-test' ? ['runs off the plate', 'thickens', 'set'][input.value] : `${input.value} ${unit}`;
    return {
      entry: {
        ...nothingMoved(act),
        readings: [
          {
            id: childId(input.id, 'reading'),
            batchId: batch.id,
            kitchenId: null,
            kind: input.kind,
            day: ctx.today,
            at: act.at,
            value: Math.round(input.value * 100),
            unit,
            instrument: null,
            note: null,
          },
        ],
        batchChanges: [
          { batchId: batch.id, addLog: [{ at: act.at, what: `${input.kind.replace('-', ' ')}: ${text}` }] },
        ],
      },
      tell: { said: `Logged: ${input.kind.replace('-', ' ')} ${text}.` },
    };
  });

export interface FillInput {
  id: string;
  code: string;
  jars: number;
  partialG: number;
  skimmingsG: number;
  panLossG: number;
  /** Trim as weighed; the sheet's when null. */
  trimG: number | null;
  keepTrim: boolean;
  seedsOut?: boolean;
  /** Ground-fall or brown core was seen in it. */
  brownCore?: boolean;
}

/** Jars filled, counted; the partial one to the fridge; the rest of the mass is accounted for. */
export const fillBatch = (ctx: Context, input: FillInput): Promise<Written<Told>> =>
  onBatch(ctx, input.id, input.code, ['cooking'], async (tx, batch) => {
    const sheet = sheetOf(batch);
    const recipe = recordedRecipe(ctx.place, batch.recipeId);
    const act = actOf(ctx, input.id, 'fill', { ...input });
    const panG = (await loadLots(tx, ctx.place.id, { ids: [panLotId(batch.id)] }))[0]?.onHand ?? 0;
    const glass = ctx.place.jarKinds.find((k) => k.code === sheet.jarKind && k.canning);
    // A batch that only lacks a reading is processed like the rest and held until the reading is there.
    const onShelf = glass !== undefined && (sheet.shelf || (sheet.needs.length > 0 && sheet.processMin !== null));
    const hold = onShelf && !sheet.shelf ? holdAtFilling(sheet.needs) : null;
    const lids = glass && input.jars > 0 ? await oldest(tx, ctx, 'lids', 'lid-regular', input.jars, 'lids') : [];
    if (isRefusal(lids)) return lids;
    const empties =
      glass && input.jars > 0
        ? await oldest(tx, ctx, 'empties', glass.code, input.jars, `empty ${glass.label} jars`)
        : [];
    if (isRefusal(empties)) return empties;
    const trimG = input.trimG ?? sheet.trimG;
    if (input.keepTrim && input.brownCore)
      return { refused: 'trim with ground-fall fruit or brown cores is not kept for food: hens or compost' };
    const kept =
      input.keepTrim && trimG > 0
        ? await keptTrim(ctx, tx, { batch, act, recipe, seedsOut: input.seedsOut === true }, trimG)
        : null;
    if (isRefusal(kept)) return kept;
    const netG = Math.min(
      sheet.jarG ?? Number.POSITIVE_INFINITY,
      input.jars > 0 ? Math.floor((panG - trimG - input.partialG - input.skimmingsG - input.panLossG) / input.jars) : 0,
    );
    if (input.jars > 0 && netG <= 0)
      return {
        refused: `${counted(input.jars, 'jar')} cannot be filled from ${kilograms(panG)} less ${kilograms(trimG)} of trim`,
      };
    const cold = onShelf ? null : coldRoom(ctx, sheet.ways);
    const filling = fillJars({
      act,
      batch,
      panG,
      jars: [
        {
          kind: sheet.jarKind ?? 'pack',
          unit: glass || recipe.jarSizes.length > 0 ? 'jar' : 'pack',
          count: input.jars,
          netGEach: netG,
        },
      ],
      lotKind: onShelf ? 'jars' : cold?.kind === 'freezer' ? 'frozen' : cold?.kind === 'dry' ? 'dried' : 'cold-jars',
      foodId: recipe.fruits[0]?.foodIds[0] ?? null,
      grade: recipe.kind === 'frozen' ? await worstOf(ctx, tx, batch) : null,
      partialG: input.partialG,
      partialUseBy: addDays(ctx.today, 7),
      losses: { skimmings: input.skimmingsG, 'pan-loss': input.panLossG, ...(kept ? {} : { trim: trimG }) },
      ...(kept ? { keptTrim: { lot: kept, grams: trimG } } : {}),
      lids,
      empties,
      bestBefore: addDays(ctx.today, 365),
      roomId: onShelf ? (roomOfKind(ctx.place, 'shelf')?.id ?? null) : (cold?.id ?? null),
      fridgeRoomId: roomOfKind(ctx.place, 'fridge')?.id ?? null,
      household: sheet.household,
      process: onShelf ? 'unknown' : null,
      details: { recipe: recipe.title },
    });
    if (isRefusal(filling)) return filling;
    const partial = input.partialG > 0 ? `, ${input.partialG} g to the fridge` : '';
    const log = [{ at: act.at, what: `${counted(input.jars, 'jar')} filled${partial}` }];
    const state = onShelf ? ('filled' as const) : ('jarred' as const);
    const flags = Array.isArray(batch.inputs.flags) ? (batch.inputs.flags as string[]) : [];
    const lots = filling.lots.map((l) => (l.kind === 'jars' ? { ...l, hold, flags } : l));
    return {
      entry: { ...filling, lots, batchChanges: [{ batchId: batch.id, state, filledAt: act.at, addLog: log }] },
      tell: { said: `${counted(input.jars, 'jar')} filled${partial}.${kept ? keptText(kept, trimG) : ''}` },
    };
  });

/** "5.39 kg kept as S-25270-APC-1: about 1.05 kg dry. Take the seeds out first." */
function keptText({ code, details }: Pick<HeldLot, 'code' | 'details'>, grams: number): string {
  const material = SET_ASIDE_MATERIALS.find((m) => m.id === details.material);
  const dry = material
    ? `: about ${kilograms(driedMass({ freshG: grams, w0: material.w0, wt: material.wt }))} dry`
    : '';
  const seeds = material?.seeds && details.seedsOut !== true ? ' Take the seeds out before it is dried.' : '';
  return ` ${kilograms(grams)} of trim kept as ${code}${dry}.${seeds}`;
}

const oldest = async (tx: Tx, ctx: Context, kind: 'lids' | 'empties', item: string, n: number, what: string) =>
  drawOldest(await loadLots(tx, ctx.place.id, { kinds: [kind], item }), n, what);

/** Where a batch goes that is not for the shelf: by its first published way. */
function coldRoom(ctx: Context, ways: readonly string[]) {
  const kind = ways.includes('dried') ? 'dry' : ways.includes('freezer') ? 'freezer' : 'fridge';
  return roomOfKind(ctx.place, kind) ?? null;
}

/** Lots of fruit the pan was filled from, frozen packs too. */
async function fruitInPan(ctx: Context, tx: Tx, batch: BatchRecord): Promise<HeldLot[]> {
  const drawn = (await movementsOf(tx, ctx.place.id, [panLotId(batch.id)])).flatMap((m) =>
    'lot' in m.from ? [m.from.lot] : [],
  );
  const lots = await loadLots(tx, ctx.place.id, { ids: drawn, emptied: true });
  return lots.filter((l) => l.kind === 'fruit' || l.kind === 'frozen');
}

const worstOf = async (ctx: Context, tx: Tx, batch: BatchRecord) =>
  worstGrade((await fruitInPan(ctx, tx, batch)).map((l) => l.grade ?? 'perfect'));

/** The trim as an ingredient: refused where any of its fruit was ground-fall or cull; it takes the worst grade. */
async function keptTrim(
  ctx: Context,
  tx: Tx,
  { batch, act, recipe, seedsOut }: { batch: BatchRecord; act: Act; recipe: Recipe; seedsOut: boolean },
  grams: number,
): Promise<ReturnType<typeof newLot> | Refusal> {
  const fruit = await fruitInPan(ctx, tx, batch);
  const bad = fruit.find((l) => l.groundFall || l.grade === 'cull');
  if (bad)
    return {
      refused: `the trim is not kept for food: ${bad.code} was ${bad.groundFall ? 'picked up from the ground' : 'culled'}`,
    };
  const material = trimMaterial(
    recipe.byProducts.map((b) => b.material),
    fruit.map((l) => l.foodId),
  );
  return newLot({
    id: childId(act.id, 'trim'),
    code: await freeSetAsideCode(ctx, tx, act.day, material?.letters ?? batch.code.split('-')[1] ?? 'TRM'),
    kind: 'set-aside',
    label: material?.name ?? `Fresh trim of ${batch.label.toLowerCase()}`,
    unit: 'g',
    item: 'fresh-trim',
    foodId: fruit[0]?.foodId ?? null,
    grade: worstGrade(fruit.map((l) => l.grade ?? 'perfect')),
    batchId: batch.id,
    parentActId: act.id,
    madeOn: ctx.today,
    since: act.at,
    roomId: roomOfKind(ctx.place, 'fridge')?.id ?? null,
    bestBefore: addDays(ctx.today, 1),
    details: {
      ...(material ? { material: material.id } : {}),
      state: 'fresh',
      strength: 'untested',
      seedsOut,
      grams,
    },
  });
}

export interface ProcessInput {
  id: string;
  /** Batches in this load. */
  codes: string[];
  step: 'boiling' | 'out';
  /** Refused while the minutes are not up: a knuckle too early writes nothing. */
  whole?: boolean;
  minutes: number | null;
  deviation: string | null;
}

/** The canner's clock: it starts at "boiling again", and the jars' process verdict is decided when they come out. */
export async function processLoad(ctx: Context, input: ProcessInput): Promise<Written<Told>> {
  return writeAct(ctx.db, ctx.place.id, input.id, ctx.enteredAt, async (tx) => {
    const all = await Promise.all(input.codes.map((code) => batchOfCode(tx, ctx.place.id, code)));
    const batches = all.filter((b): b is BatchRecord => b !== null && b.state === 'filled');
    if (batches.length === 0) return { refused: 'no filled batch waits for the canner' };
    const act = actOf(ctx, input.id, 'process', { ...input });
    if (input.step === 'boiling') {
      const lots = (await Promise.all(batches.map((b) => jarLotsOf(tx, ctx, b)))).flat();
      const held = batches.find((b) => lots.some((l) => l.batchId === b.id && heldByHighPh(l.hold)));
      if (held)
        return { refused: `${held.code} is held for its pH: no boil puts that right. Leave it out of the load` };
      return boiling(act, batches);
    }
    return out(ctx, tx, act, batches, input);
  });
}

function boiling(act: Act, batches: BatchRecord[]): { entry: Entry; tell: Told } {
  const minutes = Math.max(...batches.map((b) => sheetOf(b).processMin ?? 0));
  return {
    entry: {
      ...nothingMoved(act),
      batchChanges: batches.map((b) => ({
        batchId: b.id,
        result: { ...b.result, boilingAt: act.at },
        addLog: [{ at: act.at, what: 'boiling again, the clock runs' }],
      })),
    },
    tell: { said: `The clock runs: ${minutes} minutes from now.` },
  };
}

async function out(
  ctx: Context,
  tx: Tx,
  act: Act,
  batches: BatchRecord[],
  input: ProcessInput,
): Promise<{ entry: Entry; tell: Told } | Refusal> {
  const changes: Entry['changes'] = [];
  const verdicts: string[] = [];
  for (const b of batches) {
    const kept = input.minutes ?? minutesSince(b, act.at);
    if (kept === null) return { refused: `${b.code}: the clock was never started. Say for how many minutes it boiled` };
    const required = sheetOf(b).processMin ?? Number.POSITIVE_INFINITY;
    if (input.whole && kept < required)
      return {
        refused: `${kept} of ${required} minutes: leave them in. If they came out, say so on the page of the batch`,
      };
    const process = !input.deviation && kept >= required ? ('as tested' as const) : ('not as tested' as const);
    verdicts.push(
      process === 'as tested'
        ? `${b.code} as tested`
        : `${b.code} not as tested (${input.deviation ?? `${kept} of ${required} minutes`})`,
    );
    for (const lot of await jarLotsOf(tx, ctx, b))
      changes.push({
        lotId: lot.id,
        process,
        since: act.at,
        ...(process === 'not as tested' ? { hold: withHold(lot.hold, PROCESS_HOLD) } : {}),
      });
  }
  return {
    entry: {
      ...nothingMoved(act),
      changes,
      batchChanges: batches.map((b, i) => ({
        batchId: b.id,
        state: 'cooling' as const,
        outAt: act.at,
        addLog: [{ at: act.at, what: `out of the canner: ${verdicts[i]}` }],
      })),
    },
    tell: { said: `Out: ${verdicts.join('; ')}. Leave them 12 to 24 hours, then check each seal.` },
  };
}

function minutesSince(b: BatchRecord, at: string): number | null {
  const started = b.result.boilingAt;
  return typeof started === 'string' ? Math.floor((Date.parse(at) - Date.parse(started)) / 60_000 + 1 / 60) : null;
}

export const jarLotsOf = async (tx: Tx, ctx: Context, b: BatchRecord): Promise<HeldLot[]> =>
  (await loadLots(tx, ctx.place.id, { batchId: b.id, emptied: true })).filter((l) => l.kind === 'jars');

export const nothingMoved = (act: Act): Entry => ({ act, lots: [], movements: [], changes: [] });

/** Runs an act on a batch that must be in one of these states; says in words when it is not. */
export function onBatch<T extends Told>(
  ctx: Context,
  id: string,
  code: string,
  states: BatchRecord['state'][],
  make: (tx: Tx, batch: BatchRecord) => Promise<{ entry: Entry; tell: T } | Refusal>,
): Promise<Written<T>> {
  return writeAct(ctx.db, ctx.place.id, id, ctx.enteredAt, async (tx) => {
    const batch = await batchOfCode(tx, ctx.place.id, code);
    if (!batch) return { refused: `there is no batch ${code}` };
    if (!states.includes(batch.state)) return { refused: `${code} is ${batch.state} already` };
    return make(tx, batch);
  });
}

/** Filled batches of the day that could share a canner load. */
export const waitingForCanner = (ctx: Context): Promise<BatchRecord[]> =>
  loadBatches(ctx.db, ctx.place.id, { states: ['filled'] });
