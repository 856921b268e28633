/**
 * Strength of a lot of powder or stock, tried before it is cooked with: the alcohol test (looked at and thrown away, never tasted) and the cup trial.
 * Each is an act; the result is kept with the lot and never edited.
 */
import type { Refusal } from '#lib/ledger/entry.ts';
import { type HeldLot, isReady } from '#lib/ledger/lot.ts';
import type { Clot } from '#lib/science/clot-test.ts';
import { lotOfCode, type Written, writeAct } from '#lib/store/ledger-store.ts';
import { actOf } from './act-of.ts';
import type { Context } from './context.ts';
import { type StrengthTest, testsOf } from './strength-of-lots.ts';

type Told = { said: string };

export interface ClotInput {
  id: string;
  code: string;
  result: Clot;
}
const CLOT_WORDS: Readonly<Record<Clot, string>> = {
  high: 'one lump',
  medium: 'several lumps',
  low: 'flakes or nothing',
};

export const testByAlcohol = (ctx: Context, input: ClotInput): Promise<Written<Told>> =>
  noteTest(ctx, input, { day: ctx.today, how: 'clot', result: input.result }, () => ({
    said: `Noted: ${CLOT_WORDS[input.result]}. Throw the sample away; it is not tasted.`,
  }));

export interface CupInput {
  id: string;
  code: string;
  powderG: number;
  sugarG: number;
  /** 0 runs, 1 thickens, 2 set. */
  set: 0 | 1 | 2;
}

/** Water, lemon juice, sugar and powder, no fruit: what sets is the powder's. */
export const tryByCup = (ctx: Context, input: CupInput): Promise<Written<Told>> => {
  const { powderG, sugarG, set } = input;
  return noteTest(ctx, input, { day: ctx.today, how: 'cup', powderG, sugarG, set }, (lot) =>
    lot.item !== 'apple-powder'
      ? { refused: 'the cup trial is for apple powder; a stock is tried by alcohol' }
      : powderG > lot.onHand
        ? { refused: `${powderG} g asked for, ${lot.onHand} g left of ${lot.code}` }
        : {
            said: `Noted: ${powderG} g with ${sugarG} g of sugar ${['ran', 'thickened', 'set'][set]}.`,
            takeG: powderG,
          },
  );
};

function noteTest(
  ctx: Context,
  input: ClotInput | CupInput,
  test: StrengthTest,
  tell: (lot: HeldLot) => (Told & { takeG?: number }) | Refusal,
): Promise<Written<Told>> {
  const act = actOf(ctx, input.id, 'set-aside', { ...input, step: test.how });
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, async (tx) => {
    const lot = await lotOfCode(tx, ctx.place.id, input.code);
    if (lot?.kind !== 'set-aside') return { refused: `there is no set-aside ${input.code}` };
    if (!isTestable(lot)) return { refused: `${lot.code} is no powder or stock that is ready: it is not tested yet` };
    const told = tell(lot);
    if ('refused' in told) return told;
    const { said, takeG = 0 } = told;
    return {
      entry: {
        act,
        lots: [],
        // What went into the cup is eaten or thrown; it is not in the jar any more.
        movements:
          takeG > 0 ? [{ from: { lot: lot.id }, to: { sink: 'eaten' }, qty: takeG, grams: takeG, piece: null }] : [],
        changes: [{ lotId: lot.id, details: { tests: [...testsOf(lot), test] } }],
      },
      tell: { said },
    };
  });
}

/** Powder that is dry, and stock. */
export const isTestable = (lot: HeldLot): boolean =>
  (lot.item === 'apple-powder' || lot.item === 'pectin-stock') && lot.onHand > 0 && isReady(lot);
