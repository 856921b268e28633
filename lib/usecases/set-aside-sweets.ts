/**
 * Ways out that end in the pantry: rind and zest candied in syrup or rubbed into sugar, and peel, core or pomace left to turn to
 * vinegar. Doses are common practice; no process is behind any of them, and the acid of such a vinegar is not known.
 */
import { drawOldest } from '#lib/ledger/acts/draw-oldest.ts';
import { type Act, childId, type Entry, isRefusal, type Refusal } from '#lib/ledger/entry.ts';
import { type HeldLot, type Lot, newLot } from '#lib/ledger/lot.ts';
import { type Movement, moveGrams } from '#lib/ledger/movement.ts';
import { setAsideMaterial } from '#lib/reference/set-aside-materials.ts';
import type { Tx } from '#lib/store/database/open-database.ts';
import { loadLots, type Written } from '#lib/store/ledger-store.ts';
import { roomOfKind } from '#lib/store/place.ts';
import { counted, kilograms } from '#lib/units/format.ts';
import { addDays } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { freePackCode, intoPacks } from './pack-dried.ts';
import { changed, type OnLot, step, type Told } from './set-aside-step.ts';

export interface SweetInput extends OnLot {
  way: 'candy' | 'peel-sugar';
  sugarG: number;
  waterG: number | null;
  waxed: boolean;
  packs: number;
  gramsEach: number;
}

const SWEETS = {
  candy: { label: 'Candied citrus peel', letters: 'CND', state: 'candied' },
  'peel-sugar': { label: 'Peel sugar', letters: 'PSG', state: 'in sugar' },
} as const;
/** As other peel: 6 of the 6 to 12 months; estimate. */
const PEEL_DAYS = 183;
export const TABLE_ONLY = 'acid not known: for the table, never for canning or pickling';

export const sweetenPeel = (ctx: Context, input: SweetInput): Promise<Written<Told>> =>
  step(ctx, input, input.way, async (lot, act, tx) => {
    const bad = unfit(lot);
    if (bad) return bad;
    if (typeof lot.details.material !== 'string' || !setAsideMaterial(lot.details.material).rind)
      return { refused: `${lot.code} is no citrus rind or zest` };
    if (input.waxed) return { refused: 'waxed or treated rind is not kept for food: compost it' };
    const water = input.way === 'candy' ? (input.waterG ?? 0) : 0;
    const inG = lot.onHand + input.sugarG + water;
    const outG = input.packs * input.gramsEach;
    if (outG > inG) return { refused: `${outG} g packed of ${inG} g that went in: ${outG - inG} g too much` };
    const sugar = await sugarFor(ctx, tx, lot, input.sugarG);
    if (isRefusal(sugar)) return sugar;
    const { label, letters, state } = SWEETS[input.way];
    const packs = await endProduct(ctx, tx, act, lot, {
      kind: 'dried',
      label,
      letters,
      netG: input.gramsEach,
      bestBefore: addDays(act.day, PEEL_DAYS),
      contents: [
        { name: 'sugar', grams: input.sugarG },
        { name: lot.label.toLowerCase(), grams: lot.onHand },
      ],
    });
    const entry: Entry = {
      ...changed(act, lot, { details: { state } }, [
        ...sugar,
        ...(water > 0 ? [moveGrams({ sink: 'tap' as const }, { lot: lot.id }, water)] : []),
        intoPacks(lot.id, packs.id, input.packs, outG),
        ...restOf(lot, inG - outG, water),
      ]),
      lots: [packs],
    };
    return {
      entry,
      tell: { said: `${counted(input.packs, 'pack')} of ${input.gramsEach} g: ${label}, ${packs.code}.` },
    };
  });

/** What is not in the packs: water as vapour, syrup that stayed in the pan. */
function restOf(lot: HeldLot, restG: number, waterG: number): Movement[] {
  const vapourG = Math.min(restG, waterG + Math.round(lot.onHand * setAsideMaterial(String(lot.details.material)).w0));
  const from = { lot: lot.id };
  return [
    ...(vapourG > 0 ? [moveGrams(from, { sink: 'vapour' as const }, vapourG)] : []),
    ...(restG > vapourG ? [moveGrams(from, { sink: 'pan-loss' as const }, restG - vapourG)] : []),
  ];
}

export interface VinegarInput extends OnLot {
  waterG: number;
  sugarG: number | null;
}

export const startVinegar = (ctx: Context, input: VinegarInput): Promise<Written<Told>> =>
  step(ctx, input, 'vinegar', async (lot, act, tx) => {
    const bad = unfit(lot);
    if (bad) return bad;
    const sugar = input.sugarG ? await sugarFor(ctx, tx, lot, input.sugarG) : [];
    if (isRefusal(sugar)) return sugar;
    const water = moveGrams({ sink: 'tap' }, { lot: lot.id }, input.waterG);
    const details = {
      state: 'working',
      vinegar: { peelG: lot.onHand, waterG: input.waterG, sugarG: input.sugarG ?? 0 },
    };
    const entry = changed(
      act,
      lot,
      { label: `Scrap vinegar of ${lot.label.toLowerCase()}`, item: 'scrap-vinegar', bestBefore: null, details },
      [water, ...sugar],
    );
    return {
      entry,
      tell: { said: `${lot.code} stands under water and a cloth. Stir it daily, strain it when it is sour.` },
    };
  });

export interface StrainInput extends OnLot {
  packs: number;
  gramsEach: number;
}

export const strainVinegar = (ctx: Context, input: StrainInput): Promise<Written<Told>> =>
  step(ctx, input, 'strain', async (lot, act, tx) => {
    if (lot.details.state !== 'working') return { refused: `${lot.code} is ${lot.details.state}, no vinegar at work` };
    const outG = input.packs * input.gramsEach;
    if (outG > lot.onHand)
      return { refused: `${outG} g strained from ${kilograms(lot.onHand)}: ${outG - lot.onHand} g too much` };
    const put = lot.details.vinegar as { peelG: number; waterG: number; sugarG: number };
    const bottles = await endProduct(ctx, tx, act, lot, {
      kind: 'cold-jars',
      label: lot.label,
      letters: 'VIN',
      netG: input.gramsEach,
      bestBefore: null,
      flags: [TABLE_ONLY],
      contents: [
        { name: 'water', grams: put.waterG },
        { name: 'apple peel and core', grams: put.peelG },
        { name: 'sugar', grams: put.sugarG },
      ],
    });
    const pulp = lot.onHand - outG;
    const entry: Entry = {
      act,
      lots: [bottles],
      movements: [
        intoPacks(lot.id, bottles.id, input.packs, outG),
        ...(pulp > 0 ? [moveGrams({ lot: lot.id }, { sink: 'compost' as const }, pulp)] : []),
      ],
      changes: [],
    };
    const said = `${counted(input.packs, 'bottle')} of ${input.gramsEach} g: ${lot.label}, ${bottles.code}. For the table only.`;
    return { entry, tell: { said } };
  });

function unfit(lot: HeldLot): Refusal | null {
  if (lot.groundFall || lot.grade === 'cull') return { refused: `${lot.code} is not kept for food: hens or compost` };
  return lot.details.state === 'fresh' ? null : { refused: `${lot.code} is ${lot.details.state}, not fresh` };
}

/** Sugar of the house, the oldest first, into the lot. */
async function sugarFor(ctx: Context, tx: Tx, lot: HeldLot, grams: number): Promise<Movement[] | Refusal> {
  const draws = drawOldest(await loadLots(tx, ctx.place.id, { kinds: ['supply'], item: 'sugar' }), grams, 'sugar');
  return isRefusal(draws) ? draws : draws.map((d) => moveGrams({ lot: d.lotId }, { lot: lot.id }, d.count));
}

async function endProduct(
  ctx: Context,
  tx: Tx,
  act: Act,
  from: HeldLot,
  made: Pick<Lot, 'kind' | 'label' | 'bestBefore'> & {
    letters: string;
    netG: number;
    flags?: string[];
    contents: { name: string; grams: number }[];
  },
): Promise<Lot> {
  const { letters, netG, contents, flags = [], ...facts } = made;
  return newLot({
    ...facts,
    id: childId(act.id, 'packs'),
    code: await freePackCode(ctx, tx, act.day, letters),
    unit: 'pack',
    item: 'pack',
    foodId: from.foodId,
    grade: from.grade,
    parentActId: act.id,
    madeOn: act.day,
    since: act.at,
    roomId: roomOfKind(ctx.place, made.kind === 'dried' ? 'dry' : 'fridge')?.id ?? null,
    flags: [...from.flags, ...flags],
    details: { netG, contents },
  });
}
