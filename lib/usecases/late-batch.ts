/**
 * A batch logged late, from memory: its jars stand in the book and in the forecast, marked, and are not sold until somebody
 * has counted the sealed ones and said how they were processed.
 */
import { storageClass } from '#lib/batch/gate.ts';
import { processVerdict } from '#lib/batch/verdicts.ts';
import { settleCount } from '#lib/ledger/acts/settle-count.ts';
import { childId, isRefusal } from '#lib/ledger/entry.ts';
import { type HeldLot, newLot } from '#lib/ledger/lot.ts';
import { batchCode, foodCode } from '#lib/ledger/lot-code.ts';
import { type JarSize, jarSizeOf } from '#lib/reference/jar-sizes.ts';
import type { Tx } from '#lib/store/database/open-database.ts';
import { loadLots, lotOfCode, piecesOf, type Written, writeAct } from '#lib/store/ledger-store.ts';
import { mainKitchen, roomOfKind } from '#lib/store/place.ts';
import { feet } from '#lib/units/convert.ts';
import { counted } from '#lib/units/format.ts';
import { addDays, daysBetween, longDate, type PlainDate } from '#lib/units/plain-date.ts';
import { actOf } from './act-of.ts';
import type { Told } from './batch-flow.ts';
import { usualFruit } from './choose-recipe.ts';
import type { Context } from './context.ts';
import { PROCESS_HOLD, withHold } from './ph-hold.ts';
import { suggestAddress } from './read-pantry.ts';
import { recipeHere } from './recipes-here.ts';
import { checkedDay, instantOn } from './record-harvest.ts';

/** A number given from memory may be off by a fifth, and by one jar at least. Estimate of this program, unmeasured. */
const OFF_SHARE = 0.2;
export const offByOf = (about: number): number => Math.max(1, Math.round(OFF_SHARE * about));

export const FROM_MEMORY = 'from memory';
export const isFromMemory = (lot: Pick<HeldLot, 'details'>): boolean => lot.details.fromMemory === true;

export interface LateBatch {
  id: string;
  recipeId: string;
  day: PlainDate;
  jar: string;
  about: number;
}

export async function logFromMemory(ctx: Context, input: LateBatch): Promise<Written<Told & { code: string }>> {
  const recipe = recipeHere(ctx.place, input.recipeId);
  const jar = ctx.place.jarKinds.find((k) => k.code === input.jar && k.canning);
  if (!recipe) return { refused: `"${input.recipeId}" is not a recipe of this place` };
  if (!jar) return { refused: `"${input.jar}" is no canning jar of this place` };
  const day = checkedDay(input.day, ctx.today);
  if (typeof day !== 'string') return day;
  if (day > ctx.today) return { refused: `${longDate(day)} is ${daysBetween(ctx.today, day)} day ahead` };
  const act = actOf(ctx, input.id, 'fill', { ...input }, { day, at: instantOn(day, ctx), note: FROM_MEMORY });
  const foodId = recipe.fruits[0]?.foodIds[0] ?? null;
  const jars = newLot({
    id: childId(act.id, 'jars'),
    code: '',
    kind: 'jars',
    label: recipe.title,
    unit: 'jar',
    item: jar.code,
    foodId,
    recipeId: recipe.id,
    roomId: roomOfKind(ctx.place, 'shelf')?.id ?? null,
    parentActId: act.id,
    madeOn: day,
    since: act.at,
    bestBefore: addDays(day, 365),
    process: 'unknown',
    seal: 'unverified',
    flags: [
      `${FROM_MEMORY}, about ${counted(input.about, 'jar')}: count the sealed ones and say how they were processed`,
    ],
    details: { recipe: recipe.title, fromMemory: true, offBy: offByOf(input.about) },
  });
  const { suggested } = await suggestAddress(ctx, { ...jars, onHand: input.about });
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, async (tx) => {
    const code = await freeLateCode(ctx, tx, day, foodCode(foodId ?? 'MIX'));
    return {
      entry: {
        act,
        lots: [{ ...jars, code, address: suggested }],
        movements: [{ from: { sink: 'found' }, to: { lot: jars.id }, qty: input.about, grams: null, piece: null }],
        changes: [],
      },
      tell: {
        code,
        said: `Logged ${FROM_MEMORY}: about ${counted(input.about, 'jar')} of ${recipe.title} as ${code}. Not for sale until the sealed jars are counted and the process is stated.`,
      },
    };
  });
}

/** "L-25248-PLM-A": a letter of its own row, so that it never stands in the way of a batch lit that day. */
async function freeLateCode(ctx: Context, tx: Tx, day: PlainDate, what: string): Promise<string> {
  const taken = new Set((await loadLots(tx, ctx.place.id, { madeFrom: day, emptied: true })).map((l) => l.code));
  const codeOf = (n: number) => `L-${batchCode(day, what, n)}`;
  let n = 0;
  while (taken.has(codeOf(n))) n++;
  return codeOf(n);
}

export interface LateStated {
  id: string;
  lot: string;
  sealed: number;
  /** At a full boil in the boiling-water canner; null where nobody knows. */
  minutes: number | null;
  /** Amounts, fruit and order were those of the recipe. */
  asWritten: boolean;
}

/** What was found out since: the count becomes certain, the verdicts those of any batch. Nothing unknown turns good. */
export async function stateLate(ctx: Context, input: LateStated): Promise<Written<Told>> {
  const act = actOf(ctx, input.id, 'count', { ...input });
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, async (tx) => {
    const lot = await lotOfCode(tx, ctx.place.id, input.lot);
    if (!lot || !isFromMemory(lot)) return { refused: `${input.lot} was not logged from memory` };
    const stands = standingOf(ctx, lot, input);
    const pieces = (await piecesOf(tx, ctx.place.id, [lot.id])).get(lot.id) ?? [];
    const difference = input.sealed - lot.onHand;
    const reason = difference > 0 ? ('found' as const) : ('missing' as const);
    const movements = settleCount({ difference, reason, lots: [{ lot, pieces }], glass: null });
    if (isRefusal(movements)) return movements;
    const minutes =
      input.minutes === null ? 'process not known' : `${input.minutes} min at a full boil, ${stands.process}`;
    const flag = `logged ${FROM_MEMORY}; stated on ${ctx.today}: ${input.sealed} sealed, ${minutes}`;
    return {
      entry: {
        act,
        lots: [],
        movements,
        changes: [
          {
            lotId: lot.id,
            seal: 'sealed',
            process: stands.process,
            household: stands.household,
            hold: stands.hold,
            flags: [...lot.flags.filter((f) => !f.startsWith(FROM_MEMORY)), flag],
            details: { offBy: 0, fromMemory: input.minutes === null },
          },
        ],
      },
      tell: { said: `${lot.code}: ${flag}.${stands.hold ? ` On hold: ${stands.hold}.` : ''}` },
    };
  });
}

/** The same gate and the same table minutes as for a batch that was logged at the stove. */
function standingOf(
  ctx: Context,
  lot: HeldLot,
  { minutes, asWritten }: LateStated,
): { process: 'as tested' | 'not as tested' | 'unknown'; household: boolean; hold: string | null } {
  const recipe = recipeHere(ctx.place, lot.recipeId ?? '');
  const kitchen = mainKitchen(ctx.place);
  const size = ctx.place.jarKinds.find((k) => k.code === lot.item)?.size as JarSize | null | undefined;
  if (minutes === null) return { process: 'unknown', household: true, hold: lot.hold };
  if (!recipe || !kitchen || !size)
    return { process: 'not as tested', household: true, hold: withHold(lot.hold, PROCESS_HOLD) };
  const stands = storageClass({
    recipe,
    fruit: usualFruit(recipe),
    jar: { size: jarSizeOf(size).size, madeForCanning: true },
    altitudeFt: feet(kitchen.altitudeM),
    method: 'boiling-water',
    asWritten,
    acidDoseGiven: asWritten,
    minutesKept: minutes,
  });
  const process = processVerdict({ required: stands.process?.minutes ?? null, kept: minutes, deviations: [] });
  const hold =
    process === 'as tested' && stands.shelf
      ? lot.hold
      : withHold(
          lot.hold,
          process === 'as tested' ? stands.reasons.join(' ') || 'not for the shelf as stated' : PROCESS_HOLD,
        );
  return { process, household: stands.householdOnly, hold };
}
