/**
 * The batch that did not set: wait until its time, then why (from its own log), then syrup, a trial of one cup, or remade at
 * most four cups at a time. What is remade is a batch of its own that takes the old jars by number, new lids and the full process.
 */
import { inStockUnit, STOCK_OF_DOSE } from '#lib/batch/dose-stock.ts';
import { type UnsetLog, unsetReasons } from '#lib/batch/unset-reasons.ts';
import { drawOldest } from '#lib/ledger/acts/draw-oldest.ts';
import { type Draw, startBatch } from '#lib/ledger/acts/start-batch.ts';
import { type BatchRecord, JAR_SET, type ReadingRecord } from '#lib/ledger/batch-record.ts';
import { childId, isRefusal, type Refusal } from '#lib/ledger/entry.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import { batchCode } from '#lib/ledger/lot-code.ts';
import { type Movement, movePieces } from '#lib/ledger/movement.ts';
import { pieceCode, pieceStates } from '#lib/ledger/pieces.ts';
import { fruitOf } from '#lib/reference/fruits.ts';
import { gramsOfMeasure } from '#lib/reference/household-measures.ts';
import { type DoseItem, doseItem } from '#lib/reference/recipes/dose-items.ts';
import { judgedAfterH, REMAKE, SET_CLOCK, SYRUP_FRIDGE_DAYS } from '#lib/reference/remake.ts';
import { batchCodesOfDay } from '#lib/store/batch-store.ts';
import type { Tx } from '#lib/store/database/open-database.ts';
import { loadLots, movementsOf, piecesOf, type Written } from '#lib/store/ledger-store.ts';
import { counted, mass } from '#lib/units/format.ts';
import { type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import { splitWhole } from '#lib/units/split.ts';
import { actOf } from './act-of.ts';
import { nothingMoved, onBatch, type Told } from './batch-flow.ts';
import type { Context } from './context.ts';
import { SETS } from './due-list.ts';
import { panBatchId, sheetOf } from './frozen-sheet.ts';
import { contentsOf } from './jar-contents.ts';
import { localClock } from './local-clock.ts';
import { recipeHere } from './recipes-here.ts';
import { hoursSinceOut, mainLot } from './seal-check.ts';

export interface UnsetView {
  /** `leave`: not touched for 12 h. `setting`: may still set. `judge`: its time is up. */
  stage: 'leave' | 'setting' | 'judge';
  /** "Sun 28 Sep, 20:30". */
  judgedOn: string;
  /** What was reported of the cold jars: 0 runs, 1 soft, 2 set; null while nobody said. */
  said: number | null;
  reasons: string[];
  pieces: number[];
  /** Jars that four cups come to. */
  atOnce: number;
  trial: string;
  remade: string;
  syrupDays: number;
}

const CUP_ML = 236.5882365;
const CEILING_CUPS = 8;
const G_PER_CUP = 235;

/** Null where nothing has to set, or no jar of it is left. */
export async function readUnset(
  ctx: Context,
  batch: BatchRecord,
  readings: readonly ReadingRecord[],
): Promise<UnsetView | null> {
  const recipe = recipeHere(ctx.place, batch.recipeId);
  const lot = batch.outAt && batch.formulaVersion !== 'season' ? await mainLot(ctx.db, ctx, batch) : null;
  if (!recipe || !SETS.includes(recipe.kind) || !lot || lot.onHand === 0 || !batch.outAt) return null;
  const hours = hoursSinceOut(ctx, batch);
  const after = judgedAfterH(recipe.fruits.flatMap((p) => p.foodIds));
  const due = localClock(new Date(Date.parse(batch.outAt) + after * 3_600_000).toISOString(), ctx.place.timeZone);
  const said = readings.findLast((r) => r.kind === 'set-test' && r.instrument === JAR_SET);
  return {
    stage: hours < SET_CLOCK.leaveH ? 'leave' : hours < after ? 'setting' : 'judge',
    judgedOn: `${shortDate(due.day as PlainDate)}, ${due.time}`,
    said: said ? said.value / 100 : null,
    reasons: unsetReasons(await logOf(ctx, batch, lot, readings)),
    pieces: (await piecesOf(ctx.db, ctx.place.id, [lot.id])).get(lot.id) ?? [],
    atOnce: jarsAtOnce(ctx, lot),
    trial: dosesText(1),
    remade: dosesText(REMAKE[0].cups),
    syrupDays: SYRUP_FRIDGE_DAYS,
  };
}

const cupsOf = (ctx: Context, lot: HeldLot): number =>
  (ctx.place.jarKinds.find((k) => k.code === lot.item)?.fillMl ?? CUP_ML) / CUP_ML;
/** A half-pint is a cup, whatever its last millilitre. */
const jarsAtOnce = (ctx: Context, lot: HeldLot): number => Math.floor(REMAKE[0].cups / cupsOf(ctx, lot) + 0.05);

const KITCHEN_SPOONS = { tbspPerCup: 16, tspPerTbsp: 3 };

/** "1 tbsp sugar, 2 tbsp water, ½ tbsp bottled lemon juice, 1 tsp powdered pectin". */
function dosesText(cups: number): string {
  const [row] = REMAKE;
  const share = cups / row.cups;
  const spoons = (n: number) => `${n === 0.5 ? '½' : n} tbsp`;
  return [
    `${spoons(row.sugarCups * share * KITCHEN_SPOONS.tbspPerCup)} sugar`,
    `${spoons(row.waterCups * share * KITCHEN_SPOONS.tbspPerCup)} water`,
    `${spoons(row.lemonTbsp * share)} bottled lemon juice`,
    `${row.pectinTsp * share} tsp powdered pectin`,
  ].join(', ');
}

async function logOf(
  ctx: Context,
  batch: BatchRecord,
  lot: HeldLot,
  readings: readonly ReadingRecord[],
): Promise<UnsetLog> {
  const sheet = sheetOf(batch);
  const recipe = recipeHere(ctx.place, batch.recipeId);
  const atStove = readings.filter((r) => batch.filledAt !== null && r.at <= batch.filledAt);
  const last = (kind: ReadingRecord['kind']) => {
    const read = atStove.findLast((r) => r.kind === kind);
    return read ? read.value / 100 : null;
  };
  const kg = last('weight');
  const fruit = (await contentsOf(ctx, [lot])).get(lot.id)?.fruit ?? [];
  const drawn = Array.isArray(batch.inputs.lots) ? (batch.inputs.lots as { code: string; grams: number }[]) : [];
  const grams = (of: (l: HeldLot) => boolean) =>
    drawn.reduce((g, d) => (fruit.some((l) => l.code === d.code && of(l)) ? g + d.grams : g), 0);
  const all = grams(() => true);
  const foods = [...new Set(fruit.flatMap((l) => l.foodId ?? []))];
  const dosed = (name: string) => sheet.doses.find((d) => d.name === name)?.grams ?? null;
  const { boilStartedAt: from, boilStoppedAt: to } = sheet;
  return {
    finalG: sheet.finalG,
    lastG: kg === null ? null : kg * 1000,
    brix: sheet.brix,
    lastBrix: last('brix'),
    stopC: sheet.stopC,
    lastC: last('temperature'),
    lastPlate: last('set-test'),
    boiledMin: from && to ? (Date.parse(to) - Date.parse(from)) / 60_000 : null,
    plannedMin: sheet.boilMin,
    preparedG: sheet.preparedG,
    ceilingG: CEILING_CUPS * G_PER_CUP,
    softShare: all > 0 ? grams((l) => l.grade === 'soft') / all : 0,
    lowPectin: foods.filter((f) => fruitOf(f).setClass.startsWith('L')).map((f) => fruitOf(f).name.toLowerCase()),
    sugarG: dosed('sugar'),
    recipeSugarG: recipe?.sugar?.item === 'sugar' ? (recipe.sugar.gPerKg * sheet.preparedG) / 1000 : null,
    powder: dosed('apple powder') !== null,
  };
}

/** Sealed and sound it is only soft: the jars stay where they are under another name, and want new labels. */
export const callSyrup = (ctx: Context, input: { id: string; code: string }): Promise<Written<Told>> =>
  onBatch(ctx, input.id, input.code, ['jarred'], async (tx, batch) => {
    const lot = await mainLot(tx, ctx, batch);
    if (!lot || lot.onHand === 0) return { refused: `no jar of ${batch.code} is left` };
    if (lot.hold) return { refused: `${batch.code} is on hold: ${lot.hold}` };
    const act = actOf(ctx, input.id, 'note', { ...input });
    const label = `${batch.label.replace(/ (jam|jelly|preserve|conserve|marmalade)$/i, '')} syrup`;
    const what = `called ${label} from now on`;
    return {
      entry: {
        ...nothingMoved(act),
        changes: [{ lotId: lot.id, label }],
        batchChanges: [{ batchId: batch.id, addLog: [{ at: act.at, what }] }],
      },
      tell: { said: `${batch.code} is ${what}: ${counted(lot.onHand, 'jar')}. Print new labels.` },
    };
  });

export interface RemakeInput {
  id: string;
  code: string;
  pieces: number[];
}

/** Jars emptied into one pan with the printed sugar, water, juice and pectin. */
export const remake = (ctx: Context, input: RemakeInput): Promise<Written<Told>> =>
  onBatch(ctx, input.id, input.code, ['jarred'], async (tx, batch) => {
    const lot = await mainLot(tx, ctx, batch);
    const recipe = recipeHere(ctx.place, batch.recipeId);
    if (!lot || !recipe || !batch.outAt) return { refused: `${batch.code} has no jars to remake` };
    if (lot.hold) return { refused: `${batch.code} is on hold: ${lot.hold}` };
    const due = judgedAfterH(recipe.fruits.flatMap((p) => p.foodIds));
    const hours = hoursSinceOut(ctx, batch);
    if (hours < due)
      return { refused: `it may still set: ${Math.floor(hours)} h of ${due}. Remade too early it is lost twice` };
    const pieces = [...new Set(input.pieces)].sort((a, b) => a - b);
    const most = jarsAtOnce(ctx, lot);
    if (pieces.length > most)
      return {
        refused: `${counted(pieces.length, 'jar')} at once; ${REMAKE[0].cups} cups, ${most} of these jars, are the most`,
      };
    const here = (await piecesOf(tx, ctx.place.id, [lot.id])).get(lot.id) ?? [];
    const missing = pieces.find((n) => !here.includes(n));
    if (missing !== undefined)
      return { refused: `jar ${missing} is not one of those left of ${batch.code}: ${here.join(', ')}` };
    const netG = typeof lot.details.netG === 'number' ? lot.details.netG : null;
    const sheet = sheetOf(batch);
    if (netG === null || sheet.processMin === null) return { refused: `${batch.code} has no process to be done again` };
    const act = actOf(ctx, input.id, 'start-batch', { ...input });
    const doses = dosesFor(pieces.length * cupsOf(ctx, lot));
    const made = pieceStates(lot.id, await movementsOf(tx, ctx.place.id, [lot.id])).size;
    const drawn = await dosesOf(tx, ctx, doses);
    if (isRefusal(drawn)) return drawn;
    const code = await freeCode(tx, ctx, batch);
    const child = childBatch(ctx, { batch, lot, actId: act.id, at: act.at, code, doses, pieces, netG, made });
    const started = startBatch({
      act,
      batch: child,
      draws: drawn.draws,
      waterG: doses.find((d) => d.item === 'water')?.grams ?? 0,
      household: lot.household,
    });
    const pan = started.lots[0]?.id ?? '';
    const glass = lot.item
      ? (await loadLots(tx, ctx.place.id, { kinds: ['empties'], item: lot.item, emptied: true }))[0]
      : undefined;
    const from = pieces.map((n) => pieceCode(lot.code, n)).join(', ');
    const what = `${from} emptied into ${code}`;
    return {
      entry: {
        ...started,
        movements: [
          ...pieces.map((piece): Movement => ({ from: { lot: lot.id }, to: { lot: pan }, qty: 1, grams: netG, piece })),
          ...started.movements,
          ...drawn.bought.map(
            (b): Movement => ({ from: { sink: 'bought' }, to: { lot: pan }, qty: b, grams: b, piece: null }),
          ),
          ...(glass ? [movePieces({ sink: 'in-use' }, { lot: glass.id }, pieces.length)] : []),
        ],
        batchChanges: [{ batchId: batch.id, addLog: [{ at: act.at, what }] }],
      },
      tell: {
        said: `${what}. Weigh in ${doses.map((d) => `${mass(d.grams)} ${d.name}`).join(', ')}; boil hard ${REMAKE[0].hardBoilS} s.`,
      },
    };
  });

type Dose = { item: DoseItem; name: string; grams: number };

/** The printed amounts for so many cups, in grams. Water as 236.6 g a cup. */
function dosesFor(cups: number): Dose[] {
  const [row] = REMAKE;
  const share = cups / row.cups;
  const powder = gramsOfMeasure('pectin powder (dextrose-standardised household type)', 'tbsp');
  const grams: [DoseItem, number][] = [
    ['sugar', row.sugarCups * gramsOfMeasure('granulated sugar', 'cup')],
    ['water', row.waterCups * CUP_ML],
    ['lemon-juice-bottled', row.lemonTbsp * gramsOfMeasure('lemon juice, bottled', 'tbsp')],
    ['pectin-powder', (row.pectinTsp / KITCHEN_SPOONS.tspPerTbsp) * powder],
  ];
  return grams.map(([item, g]) => ({ item, name: doseItem(item).name, grams: Math.round(g * share) }));
}

/** Doses from their stock, oldest first; a pectin powder the house keeps no stock of is brought in as it is used. */
async function dosesOf(
  tx: Tx,
  ctx: Context,
  doses: readonly Dose[],
): Promise<{ draws: Draw[]; bought: number[] } | Refusal> {
  const draws: Draw[] = [];
  const bought: number[] = [];
  for (const { item, grams } of doses) {
    const of = STOCK_OF_DOSE[item];
    if (!of) continue;
    const stock = await loadLots(tx, ctx.place.id, { kinds: ['supply'], item: of });
    if (item === 'pectin-powder' && stock.length === 0) {
      bought.push(grams);
      continue;
    }
    const found = drawOldest(stock, inStockUnit(item, grams), of.replaceAll('-', ' '));
    if (isRefusal(found)) return found;
    const masses = splitWhole(
      grams,
      found.map((d) => d.count),
    );
    draws.push(...found.map((d, i) => ({ lotId: d.lotId, qty: d.count, grams: masses[i] as number })));
  }
  return { draws, bought };
}

/** The next letters of the day for the same fruit. */
async function freeCode(tx: Tx, ctx: Context, batch: BatchRecord): Promise<string> {
  const taken = await batchCodesOfDay(tx, ctx.place.id, ctx.today);
  const what = batch.code.split('-')[1] ?? 'MIX';
  for (let n = 0; ; n++) if (!taken.has(batchCode(ctx.today, what, n))) return batchCode(ctx.today, what, n);
}

interface Child {
  batch: BatchRecord;
  lot: HeldLot;
  actId: string;
  at: string;
  code: string;
  doses: readonly Dose[];
  pieces: readonly number[];
  netG: number;
  /** Jars the first batch made. */
  made: number;
}

/** The remade batch: the first one's process and jars, and what was added said with it. */
function childBatch(ctx: Context, c: Child): BatchRecord {
  const { boilStartedAt: _a, boilStoppedAt: _b, boilingAt: _c, ...sheet } = sheetOf(c.batch);
  const jars = c.pieces.length;
  const mixG = jars * c.netG + c.doses.reduce((g, d) => g + d.grams, 0);
  const { inputs } = c.batch;
  const earlier = Array.isArray(inputs.added) ? inputs.added : [];
  return {
    ...c.batch,
    id: childId(c.actId, 'remade'),
    code: c.code,
    state: 'cooking',
    day: ctx.today,
    startedAt: c.at,
    filledAt: null,
    outAt: null,
    inputs: {
      cookedIn: panBatchId(c.batch),
      remadeFrom: c.batch.code,
      firstDoses: inputs.firstDoses ?? sheet.doses,
      flags: c.lot.flags,
      added: [...earlier, ...c.doses.map((d) => ({ item: d.item, panG: Math.round((d.grams * c.made) / jars) }))],
    },
    result: {
      ...sheet,
      rawG: 0,
      preparedG: 0,
      trimG: 0,
      doses: c.doses.map(({ name, grams }) => ({ name, grams })),
      mixG,
      finalG: null,
      boilOffG: null,
      boilMin: null,
      brix: null,
      stopC: null,
      jars,
      jarG: c.netG,
      partialG: mixG - jars * c.netG,
      household: c.lot.household,
      steps: remakeSteps(c.doses, jars),
    },
    log: [{ at: c.at, what: `remade from ${c.batch.code}, jars ${c.pieces.join(', ')}` }],
  };
}

const remakeSteps = (doses: readonly Dose[], jars: number) => [
  {
    part: 'cook' as const,
    text: `Mix ${doses.map((d) => `${mass(d.grams)} ${d.name}`).join(', ')}; bring it to a boil, stirring all the time.`,
    caution: null,
  },
  {
    part: 'finish' as const,
    text: `Add the ${counted(jars, 'jar')}, bring back to a hard boil and boil ${REMAKE[0].hardBoilS} seconds, stirring.`,
    caution: 'Boiling sugar sticks and burns: long sleeves, a long spoon, nobody small at the stove.',
  },
  {
    part: 'fill' as const,
    text: 'Clean hot jars, new lids, ¼ in of headspace.',
    caution: 'Hot jars on cold stone crack.',
  },
  {
    part: 'process' as const,
    text: 'The full process again, from a full boil.',
    caution: 'Lift the lid away from you: steam burns before it is seen.',
  },
];
