/**
 * The pH log of a batch: a meter's reading of the cooled product, with the two buffers read beside it. Buffers more than 0.1
 * off make it void. At 4.6 or below a hold for want of a reading ends; above, the jars are not for the shelf. The highest
 * valid reading of a batch decides, for jars of one batch can differ. A predicted pH never comes here.
 * Limit 4.6: 21 CFR 114; a fruit whose own rule is stricter keeps its own. Below 4.4 the figure is simply recorded; from
 * there it is marked (rule of this project, see readingStanding).
 */
import { ACID_LIMIT_PH, readingStanding } from '#lib/batch/ph-reading.ts';
import type { BatchRecord, ReadingRecord } from '#lib/ledger/batch-record.ts';
import { type Act, childId, type Entry, type Refusal } from '#lib/ledger/entry.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import { FRUITS } from '#lib/reference/fruits.ts';
import { lowAcidRuleOf } from '#lib/reference/low-acid-rules.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import { readingsOf } from '#lib/store/batch-store.ts';
import type { Tx } from '#lib/store/database/open-database.ts';
import type { Written } from '#lib/store/ledger-store.ts';
import { actOf } from './act-of.ts';
import { jarLotsOf, onBatch, type Told } from './batch-flow.ts';
import type { Context } from './context.ts';
import { waitsForPh, withHighPh, withoutPhHold } from './ph-hold.ts';
import { recipeHere } from './recipes-here.ts';

export interface PhInput {
  id: string;
  code: string;
  pH: number;
  /** What the meter read in the pH 4.01 buffer. */
  lowRead: number;
  highNominal: number;
  /** What the meter read in the upper buffer. */
  highRead: number;
  /** Which jar, in the person's words. */
  jar: string | null;
}

/** `void` says why the reading does not count; it is in the batch's log all the same. */
export type PhTold = Told & { void: string | null };

export const LOW_BUFFER = 4.01;
export const PH_STATES: BatchRecord['state'][] = ['filled', 'cooling', 'jarred'];

export const logPh = (ctx: Context, input: PhInput): Promise<Written<PhTold>> =>
  onBatch<PhTold>(ctx, input.id, input.code, PH_STATES, async (tx, batch) => {
    const act = actOf(ctx, input.id, 'process', { ...input, kind: 'ph' });
    const standing = readingStanding({
      pH: input.pH,
      buffers: [
        { nominal: LOW_BUFFER, read: input.lowRead },
        { nominal: input.highNominal, read: input.highRead },
      ],
    });
    if (!standing.ok) return voidReading(act, batch, input.pH, standing.reason);
    const lots = await jarLotsOf(tx, ctx, batch);
    return takenReading(ctx, tx, { act, batch, lots, input, amber: standing.amber });
  });

function voidReading(act: Act, batch: BatchRecord, pH: number, reason: string): { entry: Entry; tell: PhTold } {
  const what = `pH ${pH.toFixed(2)} void: ${reason}`;
  return {
    entry: {
      act,
      lots: [],
      movements: [],
      changes: [],
      batchChanges: [{ batchId: batch.id, addLog: [{ at: act.at, what }] }],
    },
    tell: { said: what, void: `The reading is void: ${reason}` },
  };
}

interface Taken {
  act: Act;
  batch: BatchRecord;
  lots: HeldLot[];
  input: PhInput;
  amber: boolean;
}

async function takenReading(ctx: Context, tx: Tx, t: Taken): Promise<{ entry: Entry; tell: PhTold } | Refusal> {
  const { act, batch, lots, input } = t;
  const limit = shelfLimit(recipeHere(ctx.place, batch.recipeId), lots);
  const earlier = (await readingsOf(tx, ctx.place.id, { batchId: batch.id, kind: 'ph' })).map((r) => r.value / 100);
  const highest = Math.max(input.pH, ...earlier);
  const tooHigh = highest > limit;
  const flag = t.amber && !tooHigh ? `pH ${input.pH.toFixed(2)}, close to 4.6: read a second jar` : null;
  const changes = lots.map((lot) => ({
    lotId: lot.id,
    hold: tooHigh ? withHighPh(lot.hold, highest, limit) : withoutPhHold(lot.hold),
    ...(flag ? { flags: [...lot.flags, flag] } : {}),
  }));
  const freed = !tooHigh && lots.some((l) => waitsForPh(l.hold));
  const action = actionOf({ input, highest, limit, freed, amber: t.amber, canned: lots.length > 0 });
  const what = `pH ${input.pH.toFixed(2)} of the cooled product${input.jar ? `, ${input.jar}` : ''}: ${action}`;
  return {
    entry: {
      act,
      lots: [],
      movements: [],
      changes,
      readings: [readingRow(act, batch, input)],
      batchChanges: [{ batchId: batch.id, addLog: [{ at: act.at, what }] }],
    },
    tell: { said: `Recorded: ${what}.`, void: null },
  };
}

/** The strictest of 4.6 and the rules of the fruit in the batch. */
export function shelfLimit(recipe: Recipe | undefined, lots: readonly HeldLot[]): number {
  const foods = new Set([
    ...(recipe?.fruits.flatMap((f) => f.foodIds) ?? []),
    ...lots.flatMap((l) => (l.foodId ? [l.foodId] : [])),
  ]);
  const own = [...foods].flatMap((id) => {
    const rule = FRUITS.find((f) => f.id === id)?.lowAcidRule;
    const limit = rule ? lowAcidRuleOf(rule).stopAbovePH : undefined;
    return limit === undefined ? [] : [limit];
  });
  return Math.min(ACID_LIMIT_PH, ...own);
}

function actionOf(a: {
  input: PhInput;
  highest: number;
  limit: number;
  freed: boolean;
  amber: boolean;
  canned: boolean;
}): string {
  if (a.highest > a.limit) {
    const other =
      a.highest > a.input.pH ? `; an earlier jar read ${a.highest.toFixed(2)}, and the highest decides` : '';
    return a.canned
      ? `on hold, not for shelf (above ${a.limit})${other}. To the freezer or the fridge`
      : `above ${a.limit}${other}; it stays cold`;
  }
  const close = a.amber ? `; it is close to 4.6, so read a second jar` : '';
  return `${a.freed ? 'recorded, the hold for a pH reading ends' : 'recorded'}${close}`;
}

const readingRow = (act: Act, batch: BatchRecord, input: PhInput): ReadingRecord => ({
  id: childId(act.id, 'ph'),
  batchId: batch.id,
  kitchenId: null,
  kind: 'ph',
  day: act.day,
  at: act.at,
  value: Math.round(input.pH * 100),
  unit: 'pH',
  instrument: `${LOW_BUFFER.toFixed(2)} read ${input.lowRead.toFixed(2)}, ${input.highNominal.toFixed(2)} read ${input.highRead.toFixed(2)}`,
  note: input.jar,
});
