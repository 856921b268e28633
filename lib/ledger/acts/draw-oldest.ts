/** Oldest first: how much to take from which lot to make up a quantity, or how much is missing. */
import { overdrawn } from '../book.ts';
import type { Refusal } from '../entry.ts';
import type { HeldLot } from '../lot.ts';

export function drawOldest(
  lots: readonly HeldLot[],
  qty: number,
  what: string,
): { lotId: string; count: number }[] | Refusal {
  const inOrder = [...lots]
    .filter((l) => l.onHand > 0)
    .sort((a, b) => (a.madeOn === b.madeOn ? (a.code < b.code ? -1 : 1) : a.madeOn < b.madeOn ? -1 : 1));
  const draws: { lotId: string; count: number }[] = [];
  let left = qty;
  for (const lot of inOrder) {
    if (left <= 0) break;
    const count = Math.min(lot.onHand, left);
    draws.push({ lotId: lot.id, count });
    left -= count;
  }
  if (left <= 0) return draws;
  const first = inOrder[0];
  const have = qty - left;
  return first ? overdrawn({ ...first, label: what }, have, qty) : { refused: `no ${what} left; ${qty} asked for` };
}
