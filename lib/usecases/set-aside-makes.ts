/**
 * Where set-asides come from besides the pan: a pressing (juice, pomace) and fruit cut for the dryer (rings, peel and core). A
 * set-aside takes the worst grade of its fruit; ground-fall and cull never enter food.
 */
import { type Act, childId, type Entry, type Refusal } from '#lib/ledger/entry.ts';
import { type HeldLot, type Lot, newLot, worstGrade } from '#lib/ledger/lot.ts';
import { foodCode, freeReceiptNumber, receiptCode } from '#lib/ledger/lot-code.ts';
import { moveGrams } from '#lib/ledger/movement.ts';
import { setAsideMaterial, ZEST_SHARE } from '#lib/reference/set-aside-materials.ts';
import type { Tx } from '#lib/store/database/open-database.ts';
import { loadLots, type Written, writeAct } from '#lib/store/ledger-store.ts';
import { roomOfKind } from '#lib/store/place.ts';
import { kilograms } from '#lib/units/format.ts';
import { addDays } from '#lib/units/plain-date.ts';
import { splitWhole } from '#lib/units/split.ts';
import { actOf } from './act-of.ts';
import type { Context } from './context.ts';
import { freeSetAsideCode } from './set-aside-step.ts';

type Told = { said: string; codes: string[] };

/** Why this fruit may not go into food, or null. */
export const notForFood = (lots: readonly HeldLot[]): string | null => {
  const bad = lots.find((l) => l.groundFall || l.grade === 'cull');
  if (!bad) return null;
  const why = bad.groundFall ? 'was picked up from the ground' : 'is cull';
  return `${bad.code} ${why}: not for juice, peel or pomace, for patulin from rot is not driven off by heat. Hens or compost take it`;
};

export interface PressInput {
  id: string;
  draws: { lotId: string; grams: number }[];
  juiceG: number;
  /** Null: not weighed, all of the rest is taken for pomace but the usual loss. */
  pomaceG: number;
  keepPomace: boolean;
}

export const pressFruit = (ctx: Context, input: PressInput): Promise<Written<Told>> =>
  writeAct(ctx.db, ctx.place.id, input.id, ctx.enteredAt, async (tx) => {
    const drawn = await fruitOf(ctx, tx, input.draws);
    if ('refused' in drawn) return drawn;
    const inG = drawn.reduce((s, d) => s + d.grams, 0);
    const out = input.juiceG + input.pomaceG;
    if (out > inG) return { refused: `${kilograms(out)} came out of the press and ${kilograms(inG)} went in` };
    const act = actOf(ctx, input.id, 'set-aside', { ...input, step: 'press' });
    const pomace = await asideLot(
      ctx,
      tx,
      act,
      'apple-pomace',
      drawn.map((d) => d.lot),
    );
    const fruit = drawn.map((d) => d.lot);
    const other = fruit.find((l) => !isApple(l.foodId));
    if (input.keepPomace && other)
      return {
        refused: `pomace of ${other.label.toLowerCase()} is no material that is known here: it goes to the compost`,
      };
    const juice = await juiceLot(ctx, tx, act, fruit);
    const pomaceTo = input.keepPomace ? { lot: pomace.id } : { sink: 'compost' as const };
    const movements = shareOut(drawn, [
      [{ lot: juice.id }, input.juiceG],
      [pomaceTo, input.pomaceG],
      [{ sink: 'pan-loss' as const }, inG - out],
    ]);
    const lots = input.keepPomace && input.pomaceG > 0 ? [juice, pomace] : [juice];
    const kept =
      input.keepPomace && input.pomaceG > 0 ? ` and ${kilograms(input.pomaceG)} of pomace as ${pomace.code}` : '';
    return {
      entry: { act, lots, movements, changes: [] },
      tell: { said: `${kilograms(input.juiceG)} of juice as ${juice.code}${kept}.`, codes: lots.map((l) => l.code) },
    };
  });

export interface CutInput {
  id: string;
  lotId: string;
  /** As weighed, and what the slices weigh. */
  rawG: number;
  cutG: number;
  keepPeel: boolean;
}

export const cutForDrying = (ctx: Context, input: CutInput): Promise<Written<Told>> =>
  writeAct(ctx.db, ctx.place.id, input.id, ctx.enteredAt, async (tx) => {
    const drawn = await fruitOf(ctx, tx, [{ lotId: input.lotId, grams: input.rawG }]);
    if ('refused' in drawn) return drawn;
    if (input.cutG > input.rawG)
      return { refused: `${kilograms(input.cutG)} of rings from ${kilograms(input.rawG)} of fruit` };
    const act = actOf(ctx, input.id, 'set-aside', { ...input, step: 'cut' });
    const from = drawn.map((d) => d.lot);
    const pear = from[0]?.foodId === 'pear';
    const rings = await asideLot(ctx, tx, act, pear ? 'pear-slices' : 'apple-rings', from);
    const peel = await asideLot(ctx, tx, act, 'apple-peel-core', from);
    const rest = input.rawG - input.cutG;
    const kept = input.keepPeel && rest > 0 && !pear;
    const what = pear ? 'slices' : 'rings';
    return {
      entry: {
        act,
        lots: kept ? [rings, peel] : [rings],
        movements: shareOut(drawn, [
          [{ lot: rings.id }, input.cutG],
          [kept ? { lot: peel.id } : { sink: 'trim' as const }, rest],
        ]),
        changes: [],
      },
      tell: {
        said: `${kilograms(input.cutG)} of ${what} as ${rings.code}${kept ? `, ${kilograms(rest)} of peel and core as ${peel.code}` : ''}.`,
        codes: kept ? [rings.code, peel.code] : [rings.code],
      },
    };
  });

export interface ZestInput {
  id: string;
  lotId: string;
  /** What was zested, and the zest that came of it. */
  rawG: number;
  zestG: number;
}

/** Zest leaves the fruit, which stays whole in its lot; much zest has pith in it: kept and marked. */
export const zestFruit = (ctx: Context, input: ZestInput): Promise<Written<Told>> =>
  writeAct(ctx.db, ctx.place.id, input.id, ctx.enteredAt, async (tx) => {
    if (input.zestG > input.rawG) return { refused: `${input.zestG} g of zest from ${kilograms(input.rawG)} of fruit` };
    const drawn = await fruitOf(ctx, tx, [{ lotId: input.lotId, grams: input.rawG }]);
    if ('refused' in drawn) return drawn;
    const [first] = drawn as [Drawn[number]];
    if (!CITRUS.includes(first.lot.foodId ?? '')) return { refused: `${first.lot.label} has no zest` };
    const act = actOf(ctx, input.id, 'set-aside', { ...input, step: 'zest' });
    const share = input.zestG / input.rawG;
    const doubt = `${(100 * share).toFixed(0)} % of the fruit is much for zest: is there pith in it?`;
    const flags = share > ZEST_SHARE.doubtful ? [doubt] : [];
    const zest = { ...(await asideLot(ctx, tx, act, 'citrus-zest', [first.lot])), flags };
    return {
      entry: {
        act,
        lots: [zest],
        movements: [moveGrams({ lot: first.lot.id }, { lot: zest.id }, input.zestG)],
        changes: [],
      },
      tell: { said: [`${input.zestG} g of zest as ${zest.code}.`, ...flags].join(' '), codes: [zest.code] },
    };
  });

/** Fruit whose rind is grated: of the fruit table. */
export const CITRUS: readonly string[] = [
  'orange-seville',
  'orange-sweet',
  'lemon-whole',
  'grapefruit',
  'mandarin',
  'lime',
  'mandarin-clementine',
];

export interface HerbInput {
  id: string;
  name: string;
  grams: number;
}

/** Herbs cut in the garden for drying; no planting stands behind them. */
export const bringHerbs = (ctx: Context, input: HerbInput): Promise<Written<Told>> =>
  writeAct(ctx.db, ctx.place.id, input.id, ctx.enteredAt, async (tx) => {
    const act = actOf(ctx, input.id, 'set-aside', { ...input, step: 'herbs' });
    const made = await asideLot(ctx, tx, act, 'herb-leaf', []);
    const named = input.name.toLowerCase();
    const herb = { ...made, label: input.name, grade: null, details: { ...made.details, named } };
    return {
      entry: {
        act,
        lots: [herb],
        movements: [moveGrams({ sink: 'harvest' }, { lot: herb.id }, input.grams)],
        changes: [],
      },
      tell: { said: `${input.grams} g of ${named} as ${herb.code}.`, codes: [herb.code] },
    };
  });

type Drawn = { lot: HeldLot; grams: number }[];

async function fruitOf(ctx: Context, tx: Tx, draws: PressInput['draws']): Promise<Drawn | Refusal> {
  const wanted = draws.filter((d) => d.grams > 0);
  if (wanted.length === 0) return { refused: 'no fruit was weighed' };
  const held = await loadLots(tx, ctx.place.id, { ids: wanted.map((d) => d.lotId) });
  const drawn: Drawn = [];
  for (const { lotId, grams } of wanted) {
    const lot = held.find((l) => l.id === lotId);
    if (lot?.kind !== 'fruit') return { refused: 'one of the lots is used up' };
    if (grams > lot.onHand)
      return { refused: `${lot.code}: ${kilograms(grams)} asked for, ${kilograms(lot.onHand)} left` };
    if (lot.lockedUntil && lot.lockedUntil > ctx.today)
      return { refused: `${lot.code} is locked until ${lot.lockedUntil} after a spray` };
    drawn.push({ lot, grams });
  }
  const bad = notForFood(drawn.map((d) => d.lot));
  return bad ? { refused: bad } : drawn;
}

async function asideLot(ctx: Context, tx: Tx, act: Act, materialId: string, from: readonly HeldLot[]): Promise<Lot> {
  const material = setAsideMaterial(materialId);
  return newLot({
    id: childId(act.id, materialId),
    code: await freeSetAsideCode(ctx, tx, act.day, material.letters),
    kind: 'set-aside',
    label: material.name,
    unit: 'g',
    item: 'fresh-trim',
    foodId: from[0]?.foodId ?? null,
    grade: worstGrade(from.map((l) => l.grade ?? 'perfect')),
    parentActId: act.id,
    madeOn: act.day,
    since: act.at,
    roomId: roomOfKind(ctx.place, 'fridge')?.id ?? null,
    bestBefore: addDays(act.day, 1),
    details: { material: materialId, state: 'fresh', strength: 'untested', seedsOut: false, waxed: false },
  });
}

/** Apples, by the ids of the fruit table; only their pomace is a material that is known. */
export const isApple = (foodId: string | null): boolean =>
  foodId?.startsWith('apple-') === true || foodId === 'crabapple';

async function juiceLot(ctx: Context, tx: Tx, act: Act, from: readonly HeldLot[]): Promise<Lot> {
  const first = from[0] as HeldLot;
  const what = `J${foodCode(first.foodId ?? '')}`;
  const made = await loadLots(tx, ctx.place.id, { item: 'fresh-juice', madeFrom: act.day, emptied: true });
  const number = freeReceiptNumber(
    made.map((l) => l.code),
    act.day,
    what,
  );
  return newLot({
    id: childId(act.id, 'juice'),
    code: receiptCode(act.day, what, number),
    kind: 'supply',
    label: `Fresh juice, ${first.label.toLowerCase()}`,
    unit: 'g',
    item: 'fresh-juice',
    foodId: first.foodId,
    grade: worstGrade(from.map((l) => l.grade ?? 'perfect')),
    parentActId: act.id,
    madeOn: act.day,
    since: act.at,
    roomId: roomOfKind(ctx.place, 'fridge')?.id ?? null,
    bestBefore: addDays(act.day, 7),
    details: { state: 'raw' },
  });
}

/** What came out, each part drawn from every lot in proportion, each gram once: all that came of it has all its parents. */
function shareOut(
  drawn: Drawn,
  out: readonly (readonly [to: Entry['movements'][number]['to'], grams: number])[],
): Entry['movements'] {
  const left = drawn.map((d) => ({ id: d.lot.id, grams: d.grams }));
  return out.flatMap(([to, grams]) => {
    if (grams <= 0) return [];
    const shares = splitWhole(
      grams,
      left.map((l) => l.grams),
    );
    return left.flatMap((l, i) => {
      const g = shares[i] ?? 0;
      l.grams -= g;
      return g > 0 ? [moveGrams({ lot: l.id }, to, g)] : [];
    });
  });
}
