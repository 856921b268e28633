/** A jar leaves the pantry: eaten, given, sold or spoiled. The oldest of its line goes first; never more than there are. */

import { againstSaleOfLot } from '#lib/labels/may-be-sold.ts';
import { ruleCardOf } from '#lib/labels/rule-card.ts';
import { type Taking, takePieces } from '#lib/ledger/acts/take-pieces.ts';
import type { Refusal } from '#lib/ledger/entry.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import { pieceCode } from '#lib/ledger/pieces.ts';
import type { Db, Tx } from '#lib/store/database/open-database.ts';
import { loadLots, piecesOf, type Written, writeAct } from '#lib/store/ledger-store.ts';
import { counted } from '#lib/units/format.ts';
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
  const { slug, count, to, who } = input;
  const act = actOf(
    ctx,
    input.id,
    'take',
    { slug, count, to, who, lot: input.lot ?? null, price: input.price ?? null },
    {
      at: input.at ?? ctx.now.toISOString(),
      person: input.person,
      note: who,
    },
  );
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, async (tx) => {
    const ofLine = await lotsOfLine(tx, ctx, input.slug);
    const lots = input.lot ? ofLine.filter((l) => l.code === input.lot) : ofLine;
    if (ofLine.length > 0 && lots.length === 0) return { refused: `0 left of ${input.lot}; ${count} asked for` };
    if (lots.length === 0) return noSuchLine(tx, ctx, input);
    const line = (lots[0] as HeldLot).label;
    const free = lots.filter((l) => staysFor(ctx, l, input.to) === null);
    const there = free.reduce((n, l) => n + l.onHand, 0);
    if (input.count > there) return { refused: tooFew(ctx, { line, there, lots, input }) };
    const here = await piecesOf(
      tx,
      ctx.place.id,
      free.map((l) => l.id),
    );
    const pieces = free
      .flatMap((lot) => (here.get(lot.id) ?? []).map((piece) => ({ lot, piece })))
      .slice(0, input.count);
    const glass = input.to === 'eaten' ? await emptiesFor(tx, ctx, pieces[0]?.lot) : null;
    const entry = takePieces({
      act,
      to: input.to,
      pieces,
      returns: glass ? { lotId: glass.id, count: pieces.length } : null,
    });
    const jars = pieces.map(({ lot, piece }) => pieceCode(lot.code, piece));
    const left = lots.reduce((n, l) => n + l.onHand, 0) - pieces.length;
    const said = `${VERBS[input.to]}: ${jars.join(', ')}${input.who ? ` (${input.who})` : ''}. ${counted(left, 'left', 'left')} of ${line}.`;
    return { entry, tell: { jars, line, left, said } };
  });
}

/** Why a lot may not leave this way, or null. */
const staysFor = (ctx: Context, lot: HeldLot, to: TakeInput['to']): string | null =>
  leaves(lot) ??
  (to === 'sold' ? (againstSaleOfLot(lot, ruleCardOf(ctx.place.settings.ruleCard).juice)[0] ?? null) : null);

const lotsOfLine = async (tx: Tx, ctx: Context, slug: string): Promise<HeldLot[]> =>
  (await loadLots(tx, ctx.place.id, { kinds: ['jars', 'frozen', 'dried', 'cold-jars'] })).filter(
    (l) => lineSlug(l.label) === slug && l.unit !== 'g',
  );

function tooFew(
  ctx: Context,
  { line, there, lots, input }: { line: string; there: number; lots: HeldLot[]; input: TakeInput },
): string {
  const held = lots.map((l) => staysFor(ctx, l, input.to)).find((why) => why !== null);
  return `${there} left of ${line}${held ? ` that may leave (the others: ${held})` : ''}; ${input.count} asked for`;
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
