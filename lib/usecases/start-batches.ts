/** The batches are lit: everything weighed leaves its lots, and the sheet is frozen with each batch. One act, one transaction. */

import type { PanSheet } from '#lib/batch/pan-sheets.ts';
import { drawOldest } from '#lib/ledger/acts/draw-oldest.ts';
import { type Draw, startBatch } from '#lib/ledger/acts/start-batch.ts';
import type { BatchRecord, ReadingRecord } from '#lib/ledger/batch-record.ts';
import { type Act, childId, type Entry, isRefusal, type Refusal } from '#lib/ledger/entry.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import { batchCode, foodCode } from '#lib/ledger/lot-code.ts';
import type { DoseItem } from '#lib/reference/recipes/dose-items.ts';
import { batchCodesOfDay } from '#lib/store/batch-store.ts';
import type { Tx } from '#lib/store/database/open-database.ts';
import { loadLots, type Written, writeAct } from '#lib/store/ledger-store.ts';
import { splitWhole } from '#lib/units/split.ts';
import { actOf } from './act-of.ts';
import type { BatchAsk } from './batch-ask.ts';
import type { Context } from './context.ts';
import { type Draft, draftBatch, inStockUnit, isReady, STOCK_OF_DOSE } from './draft-batch.ts';
import { frozenSheet } from './freeze-sheet.ts';

/** Named in each batch, so that a corrected formula never rewrites a jar that stands. */
export const FORMULA_VERSION = '1';

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
    const act = actOf(ctx, id, 'start-batch', { ...ask });
    const codes = await freeCodes(ctx, tx, draft);
    const entry = await entryOf(ctx, tx, act, draft, codes);
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

async function entryOf(ctx: Context, tx: Tx, act: Act, draft: Draft, codes: string[]): Promise<Entry | Refusal> {
  const stock = await loadLots(tx, ctx.place.id, { kinds: ['supply', 'set-aside'] });
  const parts: Entry[] = [];
  const equal = codes.map(() => 1);
  const raw = draft.lots.map(({ lot, grams }) => ({ lot, shares: splitWhole(grams, equal) }));
  for (const [i, code] of codes.entries()) {
    const pan = draft.sheet.pans[i];
    const fruit = raw.map(
      ({ lot, shares }): Draw => ({ lotId: lot.id, qty: shares[i] as number, grams: shares[i] as number }),
    );
    const doses = pan ? drawDoses(pan, stock) : [];
    if (isRefusal(doses)) return doses;
    const batch = recordOf(ctx, act, draft, code, i);
    const started = startBatch({
      act,
      batch,
      draws: [...fruit, ...doses],
      waterG: waterG(pan),
      household: draft.sheet.householdOnly,
    });
    parts.push(withBoughtIn(started, pan));
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

const doseG = (pan: PanSheet, item: DoseItem): number =>
  pan.doses.filter((d) => d.item === item).reduce((g, d) => g + Math.round(d.grams.value), 0);
const waterG = (pan: PanSheet | undefined): number => (pan ? doseG(pan, 'water') : 0);

/** Doses kept in stock leave their lots, oldest first; `stock` is run down in place for the next pan. */
function drawDoses(pan: PanSheet, stock: HeldLot[]): Draw[] | Refusal {
  const draws: Draw[] = [];
  for (const item of new Set(pan.doses.map((d) => d.item))) {
    const of = STOCK_OF_DOSE[item];
    const grams = doseG(pan, item);
    if (!of || grams <= 0) continue;
    const found = drawOldest(
      stock.filter((l) => l.item === of && isReady(l)),
      inStockUnit(item, grams),
      of.replaceAll('-', ' '),
    );
    if (isRefusal(found)) return found;
    const masses = splitWhole(
      grams,
      found.map((d) => d.count),
    );
    for (const [i, d] of found.entries()) {
      draws.push({ lotId: d.lotId, qty: d.count, grams: masses[i] as number });
      const lot = stock.find((l) => l.id === d.lotId) as HeldLot;
      lot.onHand -= d.count;
    }
  }
  return draws;
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

function recordOf(ctx: Context, act: Act, draft: Draft, code: string, i: number): BatchRecord {
  return {
    id: childId(act.id, `batch-${i + 1}`),
    code,
    recipeId: draft.recipe.id,
    label: draft.recipe.title,
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
    },
    result: frozenSheet(draft, i) as unknown as Record<string, unknown>,
    log: [{ at: act.at, what: 'burner lit' }],
  };
}

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
