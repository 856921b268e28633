/** A jar leaves the pantry: eaten, given, sold or spoiled. The oldest of its line goes first; never more than there are. */

import { againstSaleOfLot } from '#lib/labels/may-be-sold.ts';
import { ruleCardOf } from '#lib/labels/rule-card.ts';
import { type Taking, takePieces } from '#lib/ledger/acts/take-pieces.ts';
import type { Act, Entry, Refusal } from '#lib/ledger/entry.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import type { Movement } from '#lib/ledger/movement.ts';
import { pieceCode, pieceStates, piecesHere } from '#lib/ledger/pieces.ts';
import type { Db, Tx } from '#lib/store/database/open-database.ts';
import { loadLots, movementsOf, type Written, writeAct } from '#lib/store/ledger-store.ts';
import { counted } from '#lib/units/format.ts';
import { dayInZone } from '#lib/units/plain-date.ts';
import { actOf } from './act-of.ts';
import type { Context } from './context.ts';
import { leaves, lineSlug } from './read-pantry.ts';

export interface TakeInput {
  id: string;
  slug: string;
  count: number;
  to: Taking['to'];
  /** To whom it was given, or where sold. */
  who: string | null;
  /** Only jars of this lot, by its code. */
  lot?: string | null;
  /** What was paid for all of them, in the smallest coin. */
  price?: number | null;
  person: string | null;
  at: string | null;
}
export interface TakeDone {
  jars: string[];
  line: string;
  left: number;
  said: string;
}

const VERBS: Record<Taking['to'], string> = { eaten: 'Taken', given: 'Given', sold: 'Sold', spoiled: 'Thrown away' };

export async function takeJars(ctx: Context, input: TakeInput): Promise<Written<TakeDone>> {
  const act = takeActOf(ctx, input);
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, (tx) => takeEntry(ctx, tx, act, input));
}

/** The act as it is recorded: on the day it happened, never after today. */
export function takeActOf(ctx: Context, { id, slug, count, to, who, lot, price, person, at }: TakeInput): Act {
  const payload = { slug, count, to, who, lot: lot ?? null, price: price ?? null };
  const happened = at === null ? null : dayInZone(new Date(at), ctx.place.timeZone);
  const day = happened !== null && happened < ctx.today ? happened : ctx.today;
  return actOf(ctx, id, 'take', payload, { day, at: at ?? ctx.now.toISOString(), person, note: who });
}

/** What the act writes, or why it does not fit. `found` jars were on the shelf beyond what the book knew. */
export async function takeEntry(
  ctx: Context,
  tx: Tx,
  act: Act,
  input: TakeInput,
  found = 0,
): Promise<{ entry: Entry; tell: TakeDone } | Refusal> {
  const { slug, count } = input;
  const ofLine = await lotsOfLine(tx, ctx, slug, found > 0);
  const lots = input.lot ? ofLine.filter((l) => l.code === input.lot) : ofLine;
  if (ofLine.length > 0 && lots.length === 0) return { refused: `0 left of ${input.lot}; ${count} asked for` };
  if (lots.length === 0) return noSuchLine(tx, ctx, input);
  const line = (lots[0] as HeldLot).label;
  const free = lots.filter((l) => staysFor(ctx, l, input.to) === null);
  const there = free.reduce((n, l) => n + l.onHand, 0);
  if (count > there + found) return { refused: tooFew(ctx, { line, there, lots, input }) };
  const into = found > 0 ? free.at(-1) : undefined;
  const moved = await movementsOf(
    tx,
    ctx.place.id,
    free.map((l) => l.id),
  );
  const pieces = free
    .flatMap((lot) => numbersOf(lot.id, moved, lot === into ? found : 0).map((piece) => ({ lot, piece })))
    .slice(0, count);
  const glass = input.to === 'eaten' ? await emptiesFor(tx, ctx, pieces[0]?.lot) : null;
  const entry = takePieces({
    act,
    to: input.to,
    pieces,
    returns: glass ? { lotId: glass.id, count: pieces.length } : null,
  });
  const jars = pieces.map(({ lot, piece }) => pieceCode(lot.code, piece));
  const left = lots.reduce((n, l) => n + l.onHand, 0) + found - pieces.length;
  const said = `${VERBS[input.to]}: ${jars.join(', ')}${input.who ? ` (${input.who})` : ''}. ${counted(left, 'left', 'left')} of ${line}.`;
  const movements = into ? [foundIn(into, found), ...entry.movements] : entry.movements;
  return { entry: { ...entry, movements }, tell: { jars, line, left, said } };
}

/** Numbers of the jars that stand there, with those that are found now numbered on. */
function numbersOf(lotId: string, moved: readonly Movement[], found: number): number[] {
  const states = pieceStates(lotId, moved);
  const highest = Math.max(0, ...states.keys());
  return [...piecesHere(states), ...Array.from({ length: found }, (_, i) => highest + 1 + i)];
}

const foundIn = (lot: HeldLot, qty: number): Movement => ({
  from: { sink: 'found' },
  to: { lot: lot.id },
  qty,
  grams: typeof lot.details.netG === 'number' ? lot.details.netG * qty : null,
  piece: null,
});

/** Jars of a line, or of one of its lots, that may leave that way; null where there never was one. */
export async function mayLeave(
  ctx: Context,
  db: Db | Tx,
  { slug, to, lot }: Pick<TakeInput, 'slug' | 'to' | 'lot'>,
): Promise<{ line: string; count: number; stays: string | null } | null> {
  const all = (await lotsOfLine(db, ctx, slug, true)).filter((l) => !lot || l.code === lot);
  const newest = all.at(-1);
  if (!newest) return null;
  const count = all.reduce((n, l) => n + (staysFor(ctx, l, to) === null ? l.onHand : 0), 0);
  return { line: newest.label, count, stays: staysFor(ctx, newest, to) };
}

/** Why a lot may not leave this way, or null. */
const staysFor = (ctx: Context, lot: HeldLot, to: TakeInput['to']): string | null =>
  leaves(lot) ??
  (to === 'sold' ? (againstSaleOfLot(lot, ruleCardOf(ctx.place.settings.ruleCard).juice)[0] ?? null) : null);

const lotsOfLine = async (tx: Db | Tx, ctx: Context, slug: string, emptied = false): Promise<HeldLot[]> =>
  (await loadLots(tx, ctx.place.id, { kinds: ['jars', 'frozen', 'dried', 'cold-jars'], emptied })).filter(
    (l) => lineSlug(l.label) === slug && l.unit !== 'g',
  );

function tooFew(
  ctx: Context,
  { line, there, lots, input }: { line: string; there: number; lots: HeldLot[]; input: TakeInput },
): string {
  const held = lots.map((l) => staysFor(ctx, l, input.to)).find((why) => why !== null);
  return `${there} left of ${line}${held ? ` that may leave (the others: ${held})` : ''}; ${input.count} asked for`;
}

/** Every line with something on hand, by name. */
export async function linesOnHand(ctx: Context): Promise<{ slug: string; line: string }[]> {
  const held = await loadLots(ctx.db, ctx.place.id, { kinds: ['jars', 'frozen', 'dried', 'cold-jars'] });
  const lines = new Map(held.filter((l) => l.unit !== 'g').map((l) => [lineSlug(l.label), l.label]));
  return [...lines].map(([slug, line]) => ({ slug, line })).sort((a, b) => a.line.localeCompare(b.line));
}

/** Lines on hand whose name shares a word with the one asked for. */
export async function nearLines(ctx: Context, slug: string, db: Db | Tx = ctx.db): Promise<string[]> {
  const held = await loadLots(db, ctx.place.id, { kinds: ['jars', 'frozen', 'dried', 'cold-jars'] });
  const onHand = [...new Set(held.filter((l) => l.unit !== 'g').map((l) => l.label))];
  const words = slug.split('-').filter((w) => w.length > 3);
  return onHand.filter((label) => words.some((w) => lineSlug(label).includes(w)));
}

/** A line that is used up is named with its figure; near lines are offered where the one asked for never was. */
async function noSuchLine(tx: Tx, ctx: Context, { slug, count }: TakeInput): Promise<Refusal> {
  const all = await loadLots(tx, ctx.place.id, { kinds: ['jars', 'frozen', 'dried', 'cold-jars'], emptied: true });
  const usedUp = all.find((l) => l.unit !== 'g' && lineSlug(l.label) === slug);
  if (usedUp) return { refused: `0 left of ${usedUp.label}; ${count} asked for` };
  const near = await nearLines(ctx, slug, tx);
  return {
    refused: `there is no "${slug.replaceAll('-', ' ')}" on hand${near.length ? `; there is ${near.join(', ')}` : ''}`,
  };
}

/** The eaten jar's glass comes back to the empties of its kind, where they are kept as a lot. */
async function emptiesFor(tx: Tx, ctx: Context, lot: HeldLot | undefined): Promise<HeldLot | null> {
  if (lot?.kind !== 'jars' || !lot.item) return null;
  return (await loadLots(tx, ctx.place.id, { kinds: ['empties'], item: lot.item, emptied: true }))[0] ?? null;
}
