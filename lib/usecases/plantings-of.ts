/** Trees or row a fruit lot was picked from. */
import type { HeldLot } from '#lib/ledger/lot.ts';
import type { Place } from '#lib/store/place.ts';

/** As recorded; else every planting of its crop in that row. */
export function plantingsOf(place: Place, l: HeldLot): string[] {
  const recorded = l.details.plantings;
  if (Array.isArray(recorded) && recorded.length > 0) return recorded as string[];
  const crop = place.crops.find((c) => c.id === l.cropId);
  return crop?.plantings.filter((p) => p.row === l.row).map((p) => p.code) ?? [];
}
