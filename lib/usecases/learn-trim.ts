/**
 * The trim of one fruit, as published and as weighed here. A weighing is the trim of a filled batch of that fruit alone, on
 * the sheet or at the filling, or apples cut to rings; what was left as suggested teaches nothing.
 */

import { panLotId } from '#lib/ledger/acts/start-batch.ts';
import { isLot } from '#lib/ledger/movement.ts';
import { fruitOf } from '#lib/reference/fruits.ts';
import { refuseOf } from '#lib/reference/refuse.ts';
import { SOURCES } from '#lib/reference/sources.ts';
import type { Learnt } from '#lib/science/learn-factor.ts';
import { trimShare } from '#lib/science/learn-trim.ts';
import { loadActs, type StoredAct } from '#lib/store/act-store.ts';
import { loadBatches } from '#lib/store/batch-store.ts';
import { loadLots, movementsOf } from '#lib/store/ledger-store.ts';
import { counted } from '#lib/units/format.ts';
import type { Context } from './context.ts';
import { sheetOf } from './frozen-sheet.ts';
import { lastForgotten } from './learn-records.ts';

export interface TrimKnown {
  /** Shares of the fruit's weight. */
  published: number;
  source: string;
  learnt: Learnt;
}

/** The source by the first words of its title: "published 8 % (USDA National …), here 7.1 % (6.2 to 8.1) from 3 weighings". */
export function trimText({ published, source, learnt }: TrimKnown): string {
  const pct = (share: number) => `${Math.round(1000 * share) / 10}`;
  const printed = `published ${pct(published)} % (${source.split(/[,;(]/)[0]?.trim()})`;
  if (learnt.n === 0) return `${printed}; not weighed here yet`;
  return `${printed}, here ${pct(learnt.middle)} % (${pct(learnt.low)} to ${pct(learnt.high)}) from ${counted(learnt.n, 'weighing')}`;
}

/** Of a fruit in the pan; null where nothing is trimmed off it. */
export async function trimOfFruit(ctx: Context, foodId: string): Promise<TrimKnown | null> {
  const { wastePct, status } = fruitOf(foodId);
  if (wastePct <= 0) return null;
  const published = wastePct / 100;
  const { acts } = await countedActs(ctx, 'fill');
  const weighed = acts.map(({ payload: p }) => ({
    code: String(p.code),
    trimG: typeof p.trimG === 'number' ? p.trimG : null,
  }));
  const seen = await sharesOf(ctx, foodId, published, weighed);
  return { published, source: SOURCES[status.waste.source].title, learnt: trimShare(published, seen) };
}

/** Of apples peeled, cored and cut to rings. */
export async function trimOfRings(ctx: Context): Promise<TrimKnown> {
  const row = refuseOf('apple-dessert').find((r) => r.pct === 23);
  if (!row) throw new RangeError('the row of apple core, stem and peel is missing');
  const { acts } = await countedActs(ctx, 'set-aside');
  const fruit = new Map(
    (await loadLots(ctx.db, ctx.place.id, { kinds: ['fruit'], emptied: true })).map((l) => [l.id, l.foodId]),
  );
  const seen = acts.flatMap(({ payload: p }) => {
    const cut = p.step === 'cut' && typeof p.rawG === 'number' && typeof p.cutG === 'number' && p.rawG > p.cutG;
    const apples = fruit.get(String(p.lotId))?.startsWith('apple-');
    return cut && apples ? [1 - (p.cutG as number) / (p.rawG as number)] : [];
  });
  const published = row.pct / 100;
  return { published, source: SOURCES[row.source].title, learnt: trimShare(published, seen) };
}

/** Acts of a kind that stand, since the last "forget". */
async function countedActs(ctx: Context, kind: StoredAct['kind']): Promise<{ acts: StoredAct[] }> {
  const acts = await loadActs(ctx.db, ctx.place.id, { kinds: [kind, 'correct'] });
  const since = lastForgotten(acts);
  const wrong = new Set(acts.flatMap((a) => (a.corrects ? [a.corrects] : [])));
  return { acts: acts.filter((a) => a.kind === kind && !wrong.has(a.id) && (since === null || a.at > since)) };
}

/** Share of the raw fruit that was weighed as trim, of batches of this fruit alone. */
async function sharesOf(
  ctx: Context,
  foodId: string,
  published: number,
  weighed: readonly { code: string; trimG: number | null }[],
): Promise<number[]> {
  if (weighed.length === 0) return [];
  const batches = (await loadBatches(ctx.db, ctx.place.id)).filter((b) => b.formulaVersion !== 'season');
  const own = weighed.flatMap((w) => {
    const batch = batches.find((b) => b.code === w.code);
    if (!batch) return [];
    const sheet = sheetOf(batch);
    return [{ trimG: w.trimG ?? sheet.trimG, sheet, pan: panLotId(batch.id) }];
  });
  const movements = await movementsOf(
    ctx.db,
    ctx.place.id,
    own.map((o) => o.pan),
  );
  const from = [...new Set(movements.flatMap((m) => (isLot(m.from) ? [m.from.lot] : [])))];
  const fruit = new Map((await loadLots(ctx.db, ctx.place.id, { ids: from, emptied: true })).map((l) => [l.id, l]));
  return own.flatMap(({ pan, sheet, trimG }) => {
    const into = movements.flatMap((m) => {
      const lot = isLot(m.to) && m.to.lot === pan && isLot(m.from) ? fruit.get(m.from.lot) : undefined;
      return lot?.kind === 'fruit' || lot?.kind === 'frozen' ? [{ lot, grams: m.grams ?? 0 }] : [];
    });
    const rawG = into.reduce((g, i) => g + i.grams, 0);
    const alone = into.every((i) => i.lot.kind === 'fruit' && i.lot.foodId === foodId);
    const suggested = Math.abs(trimG - rawG * published) <= into.length + 1;
    return rawG > 0 && alone && sheet.trimG > 0 && trimG > 0 && !suggested ? [trimG / rawG] : [];
  });
}
