/** The stock-take: a blind count by shelf, then the differences, each with a reason that moves jars. */
import { type CountReason, settleCount } from '#lib/ledger/acts/settle-count.ts';
import { type Act, childId, isRefusal } from '#lib/ledger/entry.ts';
import { type HeldLot, type Lot, newLot } from '#lib/ledger/lot.ts';
import type { Movement } from '#lib/ledger/movement.ts';
import { loadActs } from '#lib/store/act-store.ts';
import type { Db, Tx } from '#lib/store/database/open-database.ts';
import { leftByRecipe, loadLots, piecesOf, type Written, writeAct } from '#lib/store/ledger-store.ts';
import { counted } from '#lib/units/format.ts';
import { addDays, yearAndDay } from '#lib/units/plain-date.ts';
import { actOf } from './act-of.ts';
import type { Told } from './batch-flow.ts';
import type { Context } from './context.ts';
import { lineSlug } from './read-pantry.ts';

/** A shelf, or a cold or dry room, as it is counted. */
export interface CountPlace {
  place: string;
  /** Lines that should stand there; how many is not said before they are counted. */
  lines: { key: string; line: string; jar: string }[];
}

/** Every place where jars or packs stand, shelves first. */
export async function countPlaces(ctx: Context): Promise<CountPlace[]> {
  const places = new Map<string, Map<string, CountPlace['lines'][number]>>();
  const lots = await countable(ctx, ctx.db);
  for (const lot of lots) {
    const lines = places.get(placeOf(ctx, lot)) ?? new Map();
    lines.set(keyOf(lot), { key: keyOf(lot), line: lot.label, jar: jarLabel(ctx, lot.item) });
    places.set(placeOf(ctx, lot), lines);
  }
  return [...places.entries()]
    .map(([place, lines]) => ({ place, lines: [...lines.values()].sort((a, b) => a.line.localeCompare(b.line)) }))
    .sort((a, b) => Number(b.place.includes('-S')) - Number(a.place.includes('-S')) || a.place.localeCompare(b.place));
}

const countable = async (ctx: Context, db: Db | Tx): Promise<HeldLot[]> =>
  (await loadLots(db, ctx.place.id, { kinds: ['jars', 'cold-jars', 'frozen', 'dried'] })).filter((l) => l.unit !== 'g');
const placeOf = (ctx: Context, lot: HeldLot): string =>
  lot.address ?? ctx.place.rooms.find((r) => r.id === lot.roomId)?.label ?? 'no place given';
const keyOf = (lot: HeldLot): string => `${lineSlug(lot.label)}|${lot.item ?? lot.unit}`;
const jarLabel = (ctx: Context, item: string | null): string =>
  ctx.place.jarKinds.find((k) => k.code === item)?.label ?? item ?? 'pack';

export interface CountInput {
  id: string;
  place: string;
  /** Counted, by line and jar; what was not counted is left out. */
  counts: { key: string; counted: number }[];
  /** Jars without a label, by size. */
  unlabelled: { item: string; count: number }[];
}

/** Writes the count down as it was called out; nothing moves yet. */
export const recordCount = (ctx: Context, input: CountInput): Promise<Written<Told & { countId: string }>> =>
  writeAct(ctx.db, ctx.place.id, input.id, ctx.enteredAt, async () => {
    if (input.counts.length + input.unlabelled.length === 0)
      return { refused: `nothing was counted at ${input.place}` };
    return {
      entry: { act: actOf(ctx, input.id, 'count', { ...input }), lots: [], movements: [], changes: [] },
      tell: { said: `${input.place} is counted.`, countId: input.id },
    };
  });

export interface CountView {
  id: string;
  place: string;
  rows: { key: string; line: string; jar: string; counted: number; expected: number; difference: number }[];
  unlabelled: {
    item: string;
    jar: string;
    count: number;
    /** Lots they may be of: same jar, this shelf first, then the newest. */
    candidates: { code: string; line: string; madeOn: string; here: boolean }[];
  }[];
  settled: boolean;
}

/** A count beside the book, once it was written down; null when there is none of that id. */
export async function readCount(ctx: Context, id: string): Promise<CountView | null> {
  return countOf(ctx, ctx.db, id);
}

async function countOf(ctx: Context, db: Db | Tx, id: string): Promise<CountView | null> {
  const acts = await loadActs(db, ctx.place.id, { kinds: ['count'] });
  const act = acts.find((a) => a.id === id && 'counts' in a.payload);
  if (!act) return null;
  const input = act.payload as unknown as CountInput;
  const lots = await countable(ctx, db);
  const here = lots.filter((l) => placeOf(ctx, l) === input.place);
  const names = await loadLots(db, ctx.place.id, { kinds: ['jars', 'cold-jars', 'frozen', 'dried'], emptied: true });
  return {
    id,
    place: input.place,
    rows: input.counts.map(({ key, counted: n }) => {
      const expected = here.filter((l) => keyOf(l) === key).reduce((sum, l) => sum + l.onHand, 0);
      const lot = names.find((l) => keyOf(l) === key);
      return {
        key,
        line: lot?.label ?? key,
        jar: jarLabel(ctx, lot?.item ?? null),
        counted: n,
        expected,
        difference: n - expected,
      };
    }),
    unlabelled: input.unlabelled.map(({ item, count }) => ({
      item,
      count,
      jar: jarLabel(ctx, item),
      candidates: candidatesFor(ctx, names, item, input.place),
    })),
    settled: acts.some((a) => a.payload.countId === id),
  };
}

const SHOWN = 8;
const candidatesFor = (ctx: Context, lots: HeldLot[], item: string, place: string) =>
  lots
    .filter((l) => l.item === item && l.kind === 'jars')
    .map((l) => ({ code: l.code, line: l.label, madeOn: l.madeOn as string, here: placeOf(ctx, l) === place }))
    .sort((a, b) => Number(b.here) - Number(a.here) || b.madeOn.localeCompare(a.madeOn))
    .slice(0, SHOWN);

export interface SettleInput {
  id: string;
  countId: string;
  reasons: { key: string; reason: CountReason }[];
  /** Lot each kind of unlabelled jar is taken for; null where nobody knows. */
  takenFor: { item: string; lot: string | null }[];
}

const NOBODY_KNOWS = 'unlabelled: nobody knows what is in it';

/** Posts the differences, each with its reason. A count is settled once. */
export const settle = (ctx: Context, input: SettleInput): Promise<Written<Told>> =>
  writeAct(ctx.db, ctx.place.id, input.id, ctx.enteredAt, async (tx) => {
    const view = await countOf(ctx, tx, input.countId);
    if (!view) return { refused: 'that count is not on record' };
    if (view.settled) return { refused: `the count of ${view.place} is settled already` };
    const act = actOf(ctx, input.id, 'count', { ...input });
    const movements: Movement[] = [];
    for (const row of view.rows.filter((r) => r.difference !== 0)) {
      const reason = input.reasons.find((r) => r.key === row.key)?.reason;
      if (!reason) return { refused: `${row.line}: why are there ${row.counted} and not ${row.expected}?` };
      const made = settleCount({ ...(await lotsOf(ctx, tx, view.place, row.key)), difference: row.difference, reason });
      if (isRefusal(made)) return made;
      movements.push(...made);
    }
    const lots: Lot[] = [];
    for (const [i, u] of view.unlabelled.entries()) {
      const lot = await unlabelledLot(ctx, tx, act, view.place, u, input.takenFor[i]?.lot ?? null);
      lots.push(lot);
      movements.push({ from: { sink: 'found' }, to: { lot: lot.id }, qty: u.count, grams: null, piece: null });
    }
    return {
      entry: { act, lots, movements, changes: [] },
      tell: { said: await settledWords(ctx, tx, view, input) },
    };
  });

async function lotsOf(ctx: Context, tx: Tx, place: string, key: string) {
  const lots = (await countable(ctx, tx)).filter((l) => placeOf(ctx, l) === place && keyOf(l) === key);
  const pieces = await piecesOf(
    tx,
    ctx.place.id,
    lots.map((l) => l.id),
  );
  const item = lots[0]?.kind === 'jars' || lots[0]?.kind === 'cold-jars' ? lots[0].item : null;
  const empties = item ? await loadLots(tx, ctx.place.id, { kinds: ['empties'], item, emptied: true }) : [];
  return { lots: lots.map((lot) => ({ lot, pieces: pieces.get(lot.id) ?? [] })), glass: empties[0]?.id ?? null };
}

/** Jars without a label are a lot of their own: for the household, never for sale, whatever they are taken for. */
async function unlabelledLot(
  ctx: Context,
  tx: Tx,
  act: Act,
  place: string,
  u: CountView['unlabelled'][number],
  takenFor: string | null,
): Promise<Lot> {
  const all = await loadLots(tx, ctx.place.id, { kinds: ['jars'], emptied: true });
  const like = all.find((l) => l.code === takenFor);
  const shelf = ctx.place.rooms.find((r) => r.kind === 'shelf');
  const code = `U-${yearAndDay(ctx.today)}-${u.item}`;
  const taken = all.filter((l) => l.code.startsWith(code)).length;
  return newLot({
    id: childId(act.id, `unlabelled-${u.item}`),
    code: `${code}-${taken + 1}`,
    kind: 'jars',
    label: like?.label ?? `Unlabelled ${u.jar}`,
    unit: 'jar',
    item: u.item,
    foodId: like?.foodId ?? null,
    recipeId: like?.recipeId ?? null,
    parentActId: act.id,
    madeOn: like?.madeOn ?? ctx.today,
    since: act.at,
    bestBefore: like?.bestBefore ?? null,
    roomId: shelf?.id ?? null,
    address: place.includes('-S') ? place : 'floor',
    process: 'unknown',
    seal: 'unverified',
    hold: like ? null : NOBODY_KNOWS,
    flags: like ? [`no label: taken for ${like.code} by jar, shelf and date`] : ['no label'],
  });
}

/** What changed, and what it says about a year's use. */
async function settledWords(ctx: Context, tx: Tx, view: CountView, input: SettleInput): Promise<string> {
  const year = await leftByRecipe(tx, ctx.place.id, {
    from: addDays(ctx.today, -365),
    to: ctx.today,
    sinks: ['eaten'],
  });
  const lots = await countable(ctx, tx);
  const parts = view.rows
    .filter((r) => r.difference !== 0)
    .map((r) => {
      const reason = input.reasons.find((x) => x.key === r.key)?.reason;
      const recipe = lots.find((l) => keyOf(l) === r.key)?.recipeId;
      const eaten = (year.pieces.get(recipe ?? '') ?? 0) + (reason === 'eaten' ? -r.difference : 0);
      return `${r.line} ${r.difference > 0 ? '+' : '−'}${Math.abs(r.difference)} (${reason})${reason === 'eaten' ? `, ${eaten} eaten in a year` : ''}`;
    });
  const unlabelled = view.unlabelled.map((u) => `${counted(u.count, `unlabelled ${u.jar}`)} taken in`);
  return `${view.place} is settled${parts.length + unlabelled.length > 0 ? `: ${[...parts, ...unlabelled].join('; ')}` : ': the book agrees'}.`;
}
