/**
 * Dried things weighed into packs for the pantry: one lot (rings, a herb), or several blended by weight (tea). The packs keep
 * what is in them, the worst grade and the earliest date of their parents.
 */
import { type Act, childId, type Entry, type Refusal } from '#lib/ledger/entry.ts';
import { type HeldLot, type Lot, newLot, worstGrade } from '#lib/ledger/lot.ts';
import { packCode } from '#lib/ledger/lot-code.ts';
import { type Movement, moveGrams } from '#lib/ledger/movement.ts';
import { setAsideMaterial } from '#lib/reference/set-aside-materials.ts';
import type { Tx } from '#lib/store/database/open-database.ts';
import { loadLots, lotOfCode, type Written, writeAct } from '#lib/store/ledger-store.ts';
import { roomOfKind } from '#lib/store/place.ts';
import { counted } from '#lib/units/format.ts';
import type { PlainDate } from '#lib/units/plain-date.ts';
import { splitWhole } from '#lib/units/split.ts';
import { actOf } from './act-of.ts';
import type { Context } from './context.ts';

export interface PackInput {
  id: string;
  /** What stands on the label; of one lot its own name where this is blank. */
  name: string | null;
  /** By weight; only their ratio counts. */
  parts: { code: string; parts: number }[];
  packs: number;
  gramsEach: number;
}
type Told = { said: string; code: string };

export const packDried = (ctx: Context, input: PackInput): Promise<Written<Told>> => {
  const act = actOf(ctx, input.id, 'set-aside', { ...input, step: 'pack' });
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, async (tx) => {
    const wanted = input.parts.filter((p) => p.parts > 0);
    if (wanted.length === 0) return { refused: 'no part has a weight: what goes in?' };
    if (new Set(wanted.map((p) => p.code)).size < wanted.length) return { refused: 'a lot stands in it twice' };
    const shares = splitWhole(
      input.packs * input.gramsEach,
      wanted.map((p) => p.parts),
    );
    const drawn: { lot: HeldLot; grams: number }[] = [];
    for (const [i, { code }] of wanted.entries()) {
      const found = fitToPack(code, await lotOfCode(tx, ctx.place.id, code), shares[i] ?? 0);
      if ('refused' in found) return found;
      drawn.push({ lot: found, grams: shares[i] ?? 0 });
    }
    const label = input.name ?? (drawn.length === 1 ? (drawn[0]?.lot.label ?? '') : '');
    if (label === '') return { refused: 'a blend needs a name for its label' };
    const packs = await packLot(ctx, tx, { act, label, drawn, input });
    const said = `${counted(input.packs, 'pack')} of ${input.gramsEach} g: ${label}, ${packs.code}.`;
    return { entry: packingEntry(act, packs, drawn, input), tell: { said, code: packs.code } };
  });
};

function fitToPack(code: string, lot: HeldLot | null, grams: number): HeldLot | Refusal {
  if (lot?.kind !== 'set-aside') return { refused: `there is no set-aside ${code}` };
  if (lot.details.state !== 'dry') return { refused: `${code} is ${lot.details.state}, not dry` };
  if (lot.hold) return { refused: `${code} is on hold: ${lot.hold}` };
  if (lot.groundFall || lot.grade === 'cull' || lot.details.waxed === true)
    return { refused: `${code} is not kept for food` };
  if (grams > lot.onHand) return { refused: `${code}: ${grams} g asked for, ${lot.onHand} g left` };
  return lot;
}

interface Packing {
  act: Act;
  label: string;
  drawn: { lot: HeldLot; grams: number }[];
  input: PackInput;
}

async function packLot(ctx: Context, tx: Tx, { act, label, drawn, input }: Packing): Promise<Lot> {
  const [first] = drawn as [Packing['drawn'][number]];
  const letters = drawn.length > 1 ? 'BLD' : lettersOf(first.lot);
  const dates = drawn.flatMap((d) => d.lot.bestBefore ?? []).sort();
  return newLot({
    id: childId(act.id, 'packs'),
    code: await freePackCode(ctx, tx, act.day, letters),
    kind: 'dried',
    label,
    unit: 'pack',
    item: 'pack',
    foodId: drawn.length === 1 ? first.lot.foodId : null,
    grade: worstGrade(drawn.map((d) => d.lot.grade ?? 'perfect')),
    parentActId: act.id,
    madeOn: act.day,
    since: act.at,
    roomId: roomOfKind(ctx.place, 'dry')?.id ?? null,
    bestBefore: (dates[0] as PlainDate | undefined) ?? null,
    flags: [...new Set(drawn.flatMap((d) => d.lot.flags))],
    details: {
      netG: input.gramsEach,
      contents: drawn.map((d) => ({ name: d.lot.label.toLowerCase(), grams: d.grams })),
    },
  });
}

/** "D-25291-RNG-1", the first number of the day that is free. */
export async function freePackCode(ctx: Context, tx: Tx, day: PlainDate, letters: string): Promise<string> {
  const made = await loadLots(tx, ctx.place.id, { kinds: ['dried', 'cold-jars'], madeFrom: day, emptied: true });
  const taken = new Set(made.map((l) => l.code));
  let n = 1;
  while (taken.has(packCode(day, letters, n))) n++;
  return packCode(day, letters, n);
}

const lettersOf = (lot: HeldLot): string =>
  typeof lot.details.material === 'string' ? setAsideMaterial(lot.details.material).letters : 'PCK';

/** From a lot held by weight into packs of it. */
export const intoPacks = (lotId: string, packsId: string, packs: number, grams: number): Movement => ({
  from: { lot: lotId },
  to: { lot: packsId },
  qty: packs,
  grams,
  piece: null,
});

/** A blend is stirred in a bowl of its own, so that each pack holds of every part. */
function packingEntry(act: Act, packs: Lot, drawn: Packing['drawn'], input: PackInput): Entry {
  const grams = input.packs * input.gramsEach;
  const filled = (lotId: string) => intoPacks(lotId, packs.id, input.packs, grams);
  const [first] = drawn as [Packing['drawn'][number]];
  if (drawn.length === 1) return { act, lots: [packs], movements: [filled(first.lot.id)], changes: [] };
  const bowl = newLot({
    id: childId(act.id, 'bowl'),
    code: `${packs.code}/bowl`,
    kind: 'set-aside',
    label: packs.label,
    unit: 'g',
    item: 'blend',
    grade: packs.grade,
    parentActId: act.id,
    madeOn: act.day,
    since: act.at,
    details: { state: 'dry', strength: 'untested' },
  });
  return {
    act,
    lots: [bowl, packs],
    movements: [...drawn.map((d) => moveGrams({ lot: d.lot.id }, { lot: bowl.id }, d.grams)), filled(bowl.id)],
    changes: [],
  };
}
