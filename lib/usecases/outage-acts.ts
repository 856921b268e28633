/** A cold box has stopped, and what becomes of the things in it: kept, to the fridge, thawed to be cooked, moved, thrown away. */
import { takePieces } from '#lib/ledger/acts/take-pieces.ts';
import { type Act, childId, type Entry, isRefusal, type Refusal } from '#lib/ledger/entry.ts';
import { type HeldLot, newLot } from '#lib/ledger/lot.ts';
import type { Movement } from '#lib/ledger/movement.ts';
import { moveGrams } from '#lib/ledger/movement.ts';
import { fruitOf } from '#lib/reference/fruits.ts';
import { holdTime } from '#lib/reference/hold-times.ts';
import { THAWED_STOCK_DAYS } from '#lib/reference/outage-times.ts';
import type { Tx } from '#lib/store/database/open-database.ts';
import { lotOfCode, piecesOf, type Written, writeAct } from '#lib/store/ledger-store.ts';
import { roomOfKind } from '#lib/store/place.ts';
import { bothMasses, counted } from '#lib/units/format.ts';
import { addDays, instantInZone, type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import { actOf } from './act-of.ts';
import type { Told } from './batch-flow.ts';
import type { Context } from './context.ts';
import {
  type ColdLot,
  coldRooms,
  contentsAway,
  contentsOfRoom,
  gramsOf,
  loadOutages,
  type Outage,
  undecided,
} from './outage-contents.ts';
import { lineSlug } from './read-pantry.ts';

export interface OutageInput {
  id: string;
  /** Code of the freezer or fridge. */
  room: string;
  failedDay: PlainDate;
  /** "02:10"; null where nobody knows. */
  failedTime: string | null;
  /** Today. */
  foundTime: string;
}

const MINUTE_MS = 60_000;

/** The failure with its two times; what is in the box by the list is written down with it. */
export const startOutage = (ctx: Context, input: OutageInput): Promise<Written<Told & { outage: string }>> =>
  writeAct(ctx.db, ctx.place.id, input.id, ctx.enteredAt, async (tx) => {
    const room = coldRooms(ctx).find((r) => r.code === input.room);
    if (!room) return { refused: `there is no freezer or fridge "${input.room}" here` };
    const foundAt = instantInZone(ctx.today, input.foundTime, ctx.place.timeZone);
    const failedAt = input.failedTime ? instantInZone(input.failedDay, input.failedTime, ctx.place.timeZone) : null;
    if (foundAt.getTime() > ctx.now.getTime() + MINUTE_MS)
      return { refused: `found at ${input.foundTime} has not come yet` };
    if (failedAt && failedAt > foundAt)
      return { refused: `it cannot fail at ${input.failedTime}, after it was found at ${input.foundTime}` };
    const loadG = gramsOf(await contentsOfRoom(ctx, tx, room.id));
    return {
      entry: nothingMoved(
        actOf(ctx, input.id, 'outage', {
          room: room.code,
          failedAt: failedAt?.toISOString() ?? null,
          foundAt: foundAt.toISOString(),
          loadG,
        }),
      ),
      tell: { said: `${room.label}: ${bothMasses(loadG)} in it by the list.`, outage: input.id },
    };
  });

export interface RescueInput {
  id: string;
  outage: string;
  /** Lines by their names in addresses, the first to go first. */
  lines: readonly string[];
  did: 'kept' | 'fridge' | 'thawed' | 'moved' | 'thrown' | 'back';
  /** Grams, in whole packs; null: all that is left. */
  kg: number | null;
  /** With whom it stands now. */
  to: string | null;
}

interface Share {
  cold: ColdLot;
  /** Numbers of the packs that go; none where the lot is held by mass. */
  pieces: number[];
  grams: number;
  whole: boolean;
}

export const rescue = (ctx: Context, input: RescueInput): Promise<Written<Told>> =>
  writeAct(ctx.db, ctx.place.id, input.id, ctx.enteredAt, async (tx) => {
    const outage = (await loadOutages(ctx, tx)).find((o) => o.id === input.outage);
    if (!outage) return { refused: 'there is no such failure on record' };
    if (input.did === 'moved' && !input.to) return { refused: 'say where it was moved to' };
    const { did } = input;
    if (did === 'back') return takeBack(ctx, tx, outage, input);
    const left = await undecided(ctx, tx, outage);
    const wanted = input.lines.flatMap((slug) => left.filter((c) => lineSlug(c.lot.label) === slug));
    if (wanted.length === 0) return { refused: `nothing of that is left in the ${outage.room.label.toLowerCase()}` };
    if (input.kg !== null && input.kg > gramsOf(wanted))
      return { refused: `${bothMasses(input.kg)} asked for, ${bothMasses(gramsOf(wanted))} left` };
    const shares = await sharesOf(ctx, tx, wanted, input.kg);
    const grams = shares.reduce((g, s) => g + s.grams, 0);
    if (grams === 0) return { refused: `${bothMasses(input.kg ?? 0)} is less than half of one pack` };
    const act = actOf(
      ctx,
      input.id,
      'rescue',
      {
        outage: outage.id,
        did: input.did,
        lines: [...new Set(shares.map((s) => s.cold.lot.label))],
        packs: shares.reduce((n, s) => n + s.pieces.length, 0),
        grams,
        to: input.to,
      },
      { note: input.to },
    );
    const made = await entryOf(ctx, tx, act, shares, { ...input, did });
    if (isRefusal(made)) return made;
    return { entry: made.entry, tell: { said: `${bothMasses(grams)} ${made.said}.` } };
  });

/** Where a lot stands that another freezer took in. */
export const withWhom = (to: string): string => `with ${to}`;

/** What stood with somebody comes home to the box it left. */
async function takeBack(
  ctx: Context,
  tx: Tx,
  outage: Outage,
  input: RescueInput,
): Promise<{ entry: Entry; tell: Told } | Refusal> {
  const away = await contentsAway(ctx, tx, withWhom(input.to ?? ''));
  if (away.length === 0) return { refused: `nothing stands with ${input.to ?? 'anybody'}` };
  const grams = gramsOf(away);
  const act = actOf(
    ctx,
    input.id,
    'rescue',
    {
      outage: outage.id,
      did: 'back',
      lines: [...new Set(away.map((c) => c.lot.label))],
      packs: 0,
      grams,
      to: input.to,
    },
    { note: input.to },
  );
  const changes = away.map(({ lot }) => ({
    lotId: lot.id,
    roomId: outage.room.id,
    address: null,
    details: { keptIn: outage.id },
  }));
  const said = `${bothMasses(grams)} back in the ${outage.room.label.toLowerCase()}.`;
  return { entry: { ...nothingMoved(act), changes }, tell: { said } };
}

/** Whole packs, lot by lot, as near to the grams asked for as packs come. */
async function sharesOf(ctx: Context, tx: Tx, lots: readonly ColdLot[], wantedG: number | null): Promise<Share[]> {
  const pieces = await piecesOf(
    tx,
    ctx.place.id,
    lots.filter((c) => c.lot.unit !== 'g').map((c) => c.lot.id),
  );
  let open = wantedG ?? Number.POSITIVE_INFINITY;
  return lots.flatMap((cold): Share[] => {
    const { lot, eachG } = cold;
    const n = Math.min(lot.onHand, Math.floor(open / Math.max(1, eachG) + 0.5));
    if (n <= 0) return [];
    const grams = Math.round(n * eachG);
    open -= grams;
    const numbers = lot.unit === 'g' ? [] : (pieces.get(lot.id) ?? []).slice(0, n);
    return [{ cold, pieces: numbers, grams, whole: n === lot.onHand }];
  });
}

async function entryOf(
  ctx: Context,
  tx: Tx,
  act: Act,
  shares: readonly Share[],
  input: Omit<RescueInput, 'did'> & { did: Exclude<RescueInput['did'], 'back'> },
): Promise<{ entry: Entry; said: string } | Refusal> {
  switch (input.did) {
    case 'thrown':
      return { entry: { ...nothingMoved(act), movements: shares.flatMap((s) => thrown(act, s)) }, said: 'thrown away' };
    case 'thawed':
      return thawed(ctx, tx, act, shares);
    case 'moved': {
      const parts = await apart(ctx, tx, act, shares, { roomId: null, address: withWhom(input.to ?? '') });
      return { entry: parts, said: `moved: it stands with ${input.to}` };
    }
    case 'fridge':
      return intoFridge(ctx, tx, act, shares);
    case 'kept': {
      const parts = await apart(ctx, tx, act, shares, {});
      const details = { keptIn: input.outage };
      const lots = parts.lots.map((l) => ({
        ...l,
        flags: [...l.flags, keptFlag(ctx, l, act.day)],
        details: { ...l.details, ...details },
      }));
      const changes = shares
        .filter((s) => s.whole)
        .map(({ cold: { lot } }) => ({ lotId: lot.id, flags: [...lot.flags, keptFlag(ctx, lot, act.day)], details }));
      return { entry: { ...parts, lots, changes }, said: 'stays where it is' };
    }
  }
}

/** Only fruit is frozen again once it has thawed; whatever else stays had not thawed. */
function keptFlag(ctx: Context, lot: Pick<HeldLot, 'label' | 'recipeId' | 'item' | 'roomId'>, day: PlainDate): string {
  const cold = ctx.place.rooms.find((r) => r.id === lot.roomId)?.kind === 'fridge';
  const what = cold
    ? 'stayed cold through a failure'
    : isFreezerJam(lot) || lot.item === 'pectin-stock'
      ? 'stayed frozen through a failure'
      : 'thawed in part and frozen again';
  return `${what} ${shortDate(day)} ${day.slice(0, 4)}`;
}

const thrown = (act: Act, s: Share): Movement[] =>
  s.cold.lot.unit === 'g'
    ? [moveGrams({ lot: s.cold.lot.id }, { sink: 'spoiled' }, s.grams)]
    : takePieces({ act, to: 'spoiled', pieces: s.pieces.map((piece) => ({ lot: s.cold.lot, piece })), returns: null })
        .movements;

/** Whole lots change their place; of the others a part becomes a lot of its own, its packs keeping their numbers. */
async function apart(
  ctx: Context,
  tx: Tx,
  act: Act,
  shares: readonly Share[],
  place: { roomId?: string | null; address?: string | null; bestBefore?: PlainDate },
): Promise<Entry> {
  const parts: Entry = nothingMoved(act);
  for (const s of shares) {
    const { lot } = s.cold;
    const bestBefore = earlier(lot.bestBefore, place.bestBefore);
    if (s.whole) {
      parts.changes.push({ lotId: lot.id, ...place, bestBefore });
      continue;
    }
    const { onHand: _, ...facts } = lot;
    const part = newLot({
      ...facts,
      ...place,
      bestBefore,
      id: childId(act.id, lot.code),
      code: await freeCode(ctx, tx, `${lot.code}/part`),
      parentActId: act.id,
    });
    parts.lots.push(part);
    parts.movements.push(...into(s, part.id));
  }
  return parts;
}

const earlier = (a: PlainDate | null, b: PlainDate | undefined): PlainDate | null => (b && (!a || b < a) ? b : a);

const into = (s: Share, lotId: string): Movement[] =>
  s.cold.lot.unit === 'g'
    ? [moveGrams({ lot: s.cold.lot.id }, { lot: lotId }, s.grams)]
    : s.pieces.map((piece) => ({
        from: { lot: s.cold.lot.id },
        to: { lot: lotId },
        qty: 1,
        grams: Math.round(s.cold.eachG),
        piece,
      }));

async function freeCode(ctx: Context, tx: Tx, wanted: string): Promise<string> {
  for (let n = 1; ; n++) {
    const code = n === 1 ? wanted : `${wanted}-${n}`;
    if (!(await lotOfCode(tx, ctx.place.id, code))) return code;
  }
}

async function intoFridge(
  ctx: Context,
  tx: Tx,
  act: Act,
  shares: readonly Share[],
): Promise<{ entry: Entry; said: string } | Refusal> {
  const fridge = roomOfKind(ctx.place, 'fridge');
  if (!fridge) return { refused: 'there is no fridge on record: enter it under Place first' };
  const days = fridgeDays(shares.map((s) => s.cold.lot));
  if (isRefusal(days)) return days;
  const until = addDays(act.day, days);
  const entry = await apart(ctx, tx, act, shares, { roomId: fridge.id, bestBefore: until });
  return { entry, said: `to the ${fridge.label.toLowerCase()}, to be used by ${shortDate(until)}` };
}

/** Days in the fridge of what thawed: freezer jam by its table, pectin stock by the rule of this house; fruit has none. */
export function fridgeDays(lots: readonly HeldLot[]): number | Refusal {
  const jam = holdTime('freezer jam', 'fridge');
  const days = lots.map((l) =>
    l.item === 'pectin-stock' ? THAWED_STOCK_DAYS : isFreezerJam(l) && jam.ok ? jam.row.days : null,
  );
  const none = lots.find((_, i) => days[i] === null);
  if (none)
    return { refused: `no time in the fridge is printed for ${none.label}: freeze it again, cook it or throw it away` };
  return Math.min(...(days as number[]));
}

export const isFreezerJam = (lot: Pick<HeldLot, 'label' | 'recipeId'>): boolean =>
  /freezer-jam$/.test(lot.recipeId ?? '') || /freezer jam/i.test(lot.label);

/** Packs opened to be cooked: one lot of soft fruit, whose clock starts now; it stands on Today and in the plan like any other. */
async function thawed(
  ctx: Context,
  tx: Tx,
  act: Act,
  shares: readonly Share[],
): Promise<{ entry: Entry; said: string } | Refusal> {
  const first = (shares[0] as Share).cold.lot;
  const foodId = first.foodId;
  if (!foodId || shares.some((s) => s.cold.lot.foodId !== foodId))
    return { refused: 'thaw one kind of fruit at a time, so that its batch can name it' };
  const crop = ctx.place.crops.find((c) => c.id === first.cropId) ?? ctx.place.crops.find((c) => c.foodId === foodId);
  const name = crop?.label ?? fruitOf(foodId).name;
  const lot = newLot({
    id: childId(act.id, 'thawed'),
    code: await freeCode(ctx, tx, `${first.code}/thawed`),
    kind: 'fruit',
    label: `${name}, thawed`,
    unit: 'g',
    cropId: crop?.id ?? null,
    foodId,
    grade: 'soft',
    roomId: roomOfKind(ctx.place, 'fridge')?.id ?? null,
    parentActId: act.id,
    madeOn: act.day,
    since: act.at,
    details: { prepared: true },
  });
  return {
    entry: { ...nothingMoved(act), lots: [lot], movements: shares.flatMap((s) => into(s, lot.id)) },
    said: `of ${name.toLowerCase()} thawed, ${counted(
      shares.reduce((n, s) => n + s.pieces.length, 0),
      'pack',
    )}: cook it within the day`,
  };
}

const nothingMoved = (act: Act): Entry => ({ act, lots: [], movements: [], changes: [] });
