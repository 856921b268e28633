/** One act on one set-aside, on all of it or on a part: a part becomes a lot of its own first, the rest stays as it was. */
import { type Act, childId, type Entry, type Refusal } from '#lib/ledger/entry.ts';
import { type HeldLot, newLot } from '#lib/ledger/lot.ts';
import { setAsideCode } from '#lib/ledger/lot-code.ts';
import { moveGrams } from '#lib/ledger/movement.ts';
import type { Tx } from '#lib/store/database/open-database.ts';
import { loadLots, lotOfCode, type Written, writeAct } from '#lib/store/ledger-store.ts';
import { kilograms } from '#lib/units/format.ts';
import type { PlainDate } from '#lib/units/plain-date.ts';
import { actOf } from './act-of.ts';
import type { Context } from './context.ts';

export type Told = { said: string };
type Step = (
  lot: HeldLot,
  act: Act,
  tx: Tx,
) => Promise<{ entry: Entry; tell: Told } | Refusal> | { entry: Entry; tell: Told } | Refusal;

export interface OnLot {
  id: string;
  code: string;
  /** Only so many grams of it; all of it where nothing is said. */
  partG?: number | null;
}

export function step(ctx: Context, input: OnLot, kind: string, run: Step): Promise<Written<Told>> {
  const act = actOf(ctx, input.id, 'set-aside', { ...input, step: kind });
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, async (tx) => {
    const lot = await lotOfCode(tx, ctx.place.id, input.code);
    if (lot?.kind !== 'set-aside') return { refused: `there is no set-aside ${input.code}` };
    if (lot.onHand <= 0) return { refused: `nothing is left of ${input.code}` };
    const part = input.partG ?? null;
    if (part === null || part === lot.onHand) return run(lot, act, tx);
    if (part > lot.onHand)
      return { refused: `${kilograms(part)} of ${lot.code} asked for, ${kilograms(lot.onHand)} left` };
    return onPart(ctx, tx, { lot, act, part, run });
  });
}

async function onPart(
  ctx: Context,
  tx: Tx,
  { lot, act, part, run }: { lot: HeldLot; act: Act; part: number; run: Step },
): Promise<{ entry: Entry; tell: Told } | Refusal> {
  const { onHand: _, ...facts } = lot;
  const own = newLot({
    ...facts,
    id: childId(act.id, 'part'),
    code: await freeSetAsideCode(ctx, tx, act.day, lot.code.split('-')[2] ?? 'PRT'),
    parentActId: act.id,
  });
  const done = await run({ ...own, onHand: part }, act, tx);
  if ('refused' in done) return done;
  const { entry, tell } = done;
  return {
    entry: {
      ...entry,
      lots: [own, ...entry.lots],
      movements: [moveGrams({ lot: lot.id }, { lot: own.id }, part), ...entry.movements],
    },
    tell: { said: `${tell.said} ${kilograms(lot.onHand - part)} stays as ${lot.code}.` },
  };
}

/** An entry that changes one lot. */
export const changed = (
  act: Act,
  lot: HeldLot,
  change: Omit<Entry['changes'][number], 'lotId'>,
  movements: Entry['movements'] = [],
): Entry => ({
  act,
  lots: [],
  movements,
  changes: [{ lotId: lot.id, ...change }],
});

/** "S-25270-APC-1", the first number of the day that is free. */
export async function freeSetAsideCode(ctx: Context, tx: Tx, day: PlainDate, letters: string): Promise<string> {
  const made = await loadLots(tx, ctx.place.id, { kinds: ['set-aside'], madeFrom: day, emptied: true });
  const codes = new Set(made.map((l) => l.code));
  for (let n = 1; ; n += 1) {
    const code = setAsideCode(day, letters, n);
    if (!codes.has(code)) return code;
  }
}
