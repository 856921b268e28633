/** The batches are lit: everything weighed leaves its lots, and the sheet is frozen with each batch. One act, one transaction. */

import { inStockUnit, STOCK_OF_DOSE } from '#lib/batch/dose-stock.ts';
import { FORMULA_VERSION, frozenSheet } from '#lib/batch/freeze-sheet.ts';
import type { PanSheet } from '#lib/batch/pan-sheets.ts';
import { type DrawnByWeight, drawByWeight } from '#lib/ledger/acts/draw-by-weight.ts';
import { drawOldest } from '#lib/ledger/acts/draw-oldest.ts';
import { type Draw, startBatch } from '#lib/ledger/acts/start-batch.ts';
import type { BatchRecord, ReadingRecord } from '#lib/ledger/batch-record.ts';
import { type Act, childId, type Entry, isRefusal, type Refusal } from '#lib/ledger/entry.ts';
import { byWeightG, type HeldLot, isReady } from '#lib/ledger/lot.ts';
import { batchCode, foodCode } from '#lib/ledger/lot-code.ts';
import type { DoseItem } from '#lib/reference/recipes/dose-items.ts';
import { batchCodesOfDay } from '#lib/store/batch-store.ts';
import type { Tx } from '#lib/store/database/open-database.ts';
import { loadLots, type Written, writeAct } from '#lib/store/ledger-store.ts';
import { splitWhole } from '#lib/units/split.ts';
import { actOf } from './act-of.ts';
import type { BatchAsk } from './batch-ask.ts';
import type { Context } from './context.ts';
import { type Draft, draftBatch } from './draft-batch.ts';

export interface StartDone {
  codes: string[];
  said: string;
}

export async function startBatches(ctx: Context, id: string, ask: BatchAsk): Promise<Written<StartDone>> {
  return writeAct(ctx.db, ctx.place.id, id, ctx.enteredAt, async (tx) => {
    const draft = await draftBatch(ctx, ask, tx);
    if (isRefusal(draft)) return draft;
    if (!draft.sheet.storage.food) return { refused: draft.sheet.storage.reasons.join(' ') };
    if (draft.short.length > 0) return { refused: `not enough: ${draft.short.join('; ')}` };
    const { softSet } = draft.sheet.set ?? {};
    if (softSet && !ask.softSet)
      return { refused: `${softSet} Take more powder, add pectin stock, call it a sauce, or say that you go on` };
    const act = actOf(ctx, id, 'start-batch', { ...ask });
    const codes = await freeCodes(ctx, tx, draft);
    const entry = await entryOf(ctx, tx, { act, draft, codes, accepted: softSet ? (ask.softSet ?? null) : null });
    if (isRefusal(entry)) return entry;
    return { entry, tell: { codes, said: `Started ${codes.join(' and ')}.` } };
  });
}

/** Three letters of the fruit, and the next free letters of the day. */
async function freeCodes(ctx: Context, tx: Tx, draft: Draft): Promise<string[]> {
  const taken = await batchCodesOfDay(tx, ctx.place.id, ctx.today);
  const what = foodCode(draft.lots[0]?.lot.foodId ?? 'MIX');
  const codes: string[] = [];
  for (let n = 0; codes.length < panCount(draft); n++) {
    const code = batchCode(ctx.today, what, n);
    if (!taken.has(code)) codes.push(code);
  }
  return codes;
}

const panCount = (draft: Draft): number => Math.max(1, draft.sheet.pans.length);

interface Lighting {
  act: Act;
  draft: Draft;
  codes: string[];
  /** What the cook answered to the warning of a soft set; null where none was given. */
  accepted: 'accept' | 'sauce' | null;
}

async function entryOf(ctx: Context, tx: Tx, lighting: Lighting): Promise<Entry | Refusal> {
  const { act, draft, codes } = lighting;
  const stock = await loadLots(tx, ctx.place.id, { kinds: ['supply', 'set-aside'] });
  const packs = await loadLots(tx, ctx.place.id, { kinds: ['frozen', 'set-aside'], emptied: true });
  const from: Larder = { act, stock, taken: new Set(packs.map((l) => l.code)) };
  const parts: Entry[] = [];
  const equal = codes.map(() => 1);
  const raw = draft.lots.map(({ lot, grams }) => ({ held: [{ ...lot }], shares: splitWhole(grams, equal) }));
  for (const [i, _code] of codes.entries()) {
    const pan = draft.sheet.pans[i];
    const drawn = [...raw.map(({ held, shares }) => drawFruit(held, shares[i] as number, from)), drawDoses(pan, from)];
    const short = drawn.find(isRefusal);
    if (short) return short;
    const whole = drawn.filter((d): d is DrawnByWeight => !isRefusal(d));
    const batch = recordOf(ctx, lighting, i);
    const started = startBatch({
      act,
      batch,
      draws: whole.flatMap((d) => d.draws),
      waterG: waterG(pan),
      household: draft.sheet.householdOnly,
    });
    parts.push(withOpened(withBoughtIn(started, pan), whole));
  }
  return {
    act,
    lots: parts.flatMap((p) => p.lots),
    movements: parts.flatMap((p) => p.movements),
    changes: [],
    batches: parts.flatMap((p) => p.batches ?? []),
    readings: waterReading(ctx, act, draft),
  };
}

interface Larder {
  act: Act;
  /** Run down in place, pan after pan. */
  stock: HeldLot[];
  /** Codes of packs there are. */
  taken: Set<string>;
}

function drawFruit(held: HeldLot[], grams: number, from: Larder): DrawnByWeight | Refusal {
  const drawn = drawByWeight(held, grams, held[0]?.label ?? 'fruit', from);
  if (!isRefusal(drawn)) held.push(...drawn.opened);
  return drawn;
}

/** An opened pack of this entry stands before the pan that draws on it. */
const withOpened = (entry: Entry, drawn: readonly DrawnByWeight[]): Entry => ({
  ...entry,
  lots: [...drawn.flatMap((d) => d.opened.map(({ onHand: _, ...lot }) => lot)), ...entry.lots],
  movements: [...drawn.flatMap((d) => d.movements), ...entry.movements],
});

const doseG = (pan: PanSheet, item: DoseItem): number =>
  pan.doses.filter((d) => d.item === item).reduce((g, d) => g + Math.round(d.grams.value), 0);
const waterG = (pan: PanSheet | undefined): number => (pan ? doseG(pan, 'water') : 0);

/** Doses kept in stock leave their lots, oldest first. */
function drawDoses(pan: PanSheet | undefined, from: Larder): DrawnByWeight | Refusal {
  const all: DrawnByWeight = { draws: [], opened: [], movements: [] };
  for (const item of new Set(pan?.doses.map((d) => d.item))) {
    const of = STOCK_OF_DOSE[item];
    const grams = pan ? doseG(pan, item) : 0;
    if (!of || grams <= 0) continue;
    const lots = from.stock.filter((l) => l.item === of && isReady(l));
    const what = of.replaceAll('-', ' ');
    const found = lots.some((l) => byWeightG(l) === null)
      ? drawByVolume(lots, item, grams, what)
      : drawByWeight(lots, grams, what, from);
    if (isRefusal(found)) return found;
    from.stock.push(...found.opened);
    all.draws.push(...found.draws);
    all.opened.push(...found.opened);
    all.movements.push(...found.movements);
  }
  return all;
}

/** What is kept in millilitres, with the grams shared out over the lots it comes from. */
function drawByVolume(lots: HeldLot[], item: DoseItem, grams: number, what: string): DrawnByWeight | Refusal {
  const found = drawOldest(lots, inStockUnit(item, grams), what);
  if (isRefusal(found)) return found;
  const masses = splitWhole(
    grams,
    found.map((d) => d.count),
  );
  for (const d of found) (lots.find((l) => l.id === d.lotId) as HeldLot).onHand -= d.count;
  return {
    draws: found.map((d, i): Draw => ({ lotId: d.lotId, qty: d.count, grams: masses[i] as number })),
    opened: [],
    movements: [],
  };
}

/** What is not kept in stock (spices, almonds) comes in as it is used, so that the pan's mass is whole. */
function withBoughtIn(entry: Entry, pan: PanSheet | undefined): Entry {
  const panLot = entry.lots[0];
  if (!pan || !panLot) return entry;
  const outside = pan.doses.filter(
    (d) => d.item !== 'water' && !STOCK_OF_DOSE[d.item] && Math.round(d.grams.value) > 0,
  );
  const bought = outside.map((d) => ({
    from: { sink: 'bought' as const },
    to: { lot: panLot.id },
    qty: Math.round(d.grams.value),
    grams: Math.round(d.grams.value),
    piece: null,
  }));
  return { ...entry, movements: [...entry.movements, ...bought] };
}

function recordOf(ctx: Context, { act, draft, codes, accepted }: Lighting, i: number): BatchRecord {
  const warned = accepted ? (draft.sheet.set?.softSet ?? null) : null;
  return {
    id: childId(act.id, `batch-${i + 1}`),
    code: codes[i] as string,
    recipeId: draft.recipe.id,
    label: accepted === 'sauce' ? sauceName(draft) : draft.recipe.title,
    kitchenId: draft.kitchen.id,
    panCode: draft.pan?.code ?? null,
    state: 'cooking',
    day: ctx.today,
    startedAt: act.at,
    filledAt: null,
    outAt: null,
    formulaVersion: FORMULA_VERSION,
    inputs: {
      lots: draft.lots.map(({ lot, grams }) => ({ code: lot.code, grams })),
      jarKind: draft.jarKind?.code ?? null,
      waterC: draft.waterC,
      ...(warned ? { softSet: { warned, answer: accepted } } : {}),
    },
    result: frozenSheet(draft, i) as unknown as Record<string, unknown>,
    log: [
      ...(warned
        ? [{ at: act.at, what: `warned: ${warned} Went on${accepted === 'sauce' ? ', to be called a sauce' : ''}.` }]
        : []),
      { at: act.at, what: 'burner lit' },
    ],
  };
}

/** "Sour cherry sauce": what is not sure to set is not called a jam. */
const sauceName = ({ recipe }: Draft): string =>
  `${recipe.title.replace(/ (jam|jelly|preserve|conserve|marmalade)\b.*$/i, '')} sauce`;

/** A reading typed on the sheet is kept as the day's. */
const waterReading = (ctx: Context, act: Act, draft: Draft): ReadingRecord[] =>
  draft.waterFrom === 'typed' && draft.waterC !== null
    ? [
        {
          id: childId(act.id, 'water'),
          batchId: null,
          kitchenId: draft.kitchen.id,
          kind: 'water',
          day: ctx.today,
          at: act.at,
          value: Math.round(draft.waterC * 100),
          unit: '°C',
          instrument: null,
          note: null,
        },
      ]
    : [];
