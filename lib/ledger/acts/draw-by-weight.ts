/**
 * Food drawn by weight, oldest first: gram for gram from what is held in grams, by whole packs and one that is opened from what
 * is held in packs. What is left of an opened pack stands as a lot of its own in grams, in the same room, and is drawn before
 * the next whole pack.
 */
import type { Act, Refusal } from '../entry.ts';
import { childId } from '../entry.ts';
import { byWeightG, type HeldLot, type Lot, packG } from '../lot.ts';
import { type Movement, movePieces } from '../movement.ts';
import type { Draw } from './start-batch.ts';

export interface DrawnByWeight {
  draws: Draw[];
  /** Packs opened, with what is left in them. */
  opened: HeldLot[];
  /** Packs that became opened ones; they come before the draws. */
  movements: Movement[];
}

/** `lots` are run down in place, so that the next pan of the same act sees what is left. `taken` are the codes there are. */
export function drawByWeight(
  lots: readonly HeldLot[],
  grams: number,
  what: string,
  { act, taken }: { act: Pick<Act, 'id'>; taken: ReadonlySet<string> },
): DrawnByWeight | Refusal {
  const drawn: DrawnByWeight = { draws: [], opened: [], movements: [] };
  const have = lots.reduce((g, l) => g + (byWeightG(l) ?? 0), 0);
  if (have < grams) return { refused: `${what}: ${grams} g asked for, ${have} g left` };
  let left = grams;
  for (const lot of [...lots].sort(openedFirst)) {
    if (left <= 0) break;
    const each = packG(lot) ?? 1;
    const whole = Math.min(lot.onHand, Math.floor(left / each));
    if (whole > 0) {
      drawn.draws.push({ lotId: lot.id, qty: whole, grams: whole * each });
      lot.onHand -= whole;
      left -= whole * each;
    }
    if (left > 0 && lot.onHand > 0) {
      const { opened, movement } = openPack(lot, each, act, taken);
      drawn.draws.push({ lotId: opened.id, qty: left, grams: left });
      drawn.movements.push(movement);
      drawn.opened.push({ ...opened, onHand: each - left });
      left = 0;
    }
  }
  return drawn;
}

const openedFirst = (a: HeldLot, b: HeldLot): number =>
  a.madeOn.localeCompare(b.madeOn) || Number(a.unit !== 'g') - Number(b.unit !== 'g') || a.code.localeCompare(b.code);

function openPack(
  lot: HeldLot,
  each: number,
  act: Pick<Act, 'id'>,
  taken: ReadonlySet<string>,
): { opened: Lot; movement: Movement } {
  let n = 1;
  while (taken.has(`${lot.code}/opened-${n}`)) n++;
  const { onHand, ...facts } = lot;
  const opened: Lot = {
    ...facts,
    id: childId(act.id, `opened-${lot.id}`),
    code: `${lot.code}/opened-${n}`,
    label: `${lot.label}, opened pack`,
    unit: 'g',
    parentActId: act.id,
  };
  lot.onHand = onHand - 1;
  return { opened, movement: { ...movePieces({ lot: lot.id }, { lot: opened.id }, 1), grams: each } };
}
