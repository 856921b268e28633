/** Which shelf still has room. A shelf's share taken is the sum of jars over what it holds of their size (needs F20). */
import type { HeldLot } from './lot.ts';

export interface ShelfJar {
  pitchMm: number;
  heightMm: number;
}
export interface ShelfSize {
  widthMm: number;
  depthMm: number;
  clearMm: number;
}

/** Jars of one kind a shelf holds: across x deep x stacked, two high at most. Arithmetic. */
export const shelfHolds = (s: ShelfSize, j: ShelfJar): number =>
  Math.floor(s.widthMm / j.pitchMm) *
  Math.floor(s.depthMm / j.pitchMm) *
  Math.min(2, Math.floor(s.clearMm / j.heightMm));

export function shelfTaken(
  lots: readonly HeldLot[],
  size: ShelfSize,
  kinds: ReadonlyMap<string, ShelfJar>,
): Map<string, number> {
  const taken = new Map<string, number>();
  for (const lot of lots) {
    const kind = lot.item ? kinds.get(lot.item) : undefined;
    if (!lot.address || !kind) continue;
    taken.set(lot.address, (taken.get(lot.address) ?? 0) + lot.onHand / shelfHolds(size, kind));
  }
  return taken;
}

/** The first wanted shelf with room for so many; else the emptiest that has; else the floor. */
export function addressFor(
  n: number,
  jar: ShelfJar,
  wanted: readonly string[],
  all: readonly string[],
  taken: ReadonlyMap<string, number>,
  size: ShelfSize,
): string {
  const fits = (a: string) => (taken.get(a) ?? 0) + n / shelfHolds(size, jar) <= 1;
  const emptiest = [...all].sort((a, b) => (taken.get(a) ?? 0) - (taken.get(b) ?? 0)).find(fits);
  return wanted.find(fits) ?? emptiest ?? 'floor';
}
