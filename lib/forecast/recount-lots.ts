/** Jars that were counted from memory: each season holds another number of them. */
// biome-ignore-all lint/style/noNonNullAssertion: positions were checked by checkScenario
import { key, mix32, uid, uniformOf } from './random.ts';
import type { Scenario } from './scenario.ts';

const RECOUNT = 0x2c1b3c6d;

/**
 * Moves the count of each such lot by -offBy to +offBy jars, every number equally often, never below none. Seasons that
 * are mirrored by `flip` take mirrored numbers. Nothing is drawn for a lot that was counted.
 */
export function recountLots(
  sc: Pick<Scenario, 'lots' | 'products' | 'weeks'>,
  st: { readonly buckets: Uint16Array; readonly total: Int32Array },
  o: { readonly seasonKey: number; readonly flip: number },
): void {
  for (const lot of sc.lots) {
    if (!lot.offBy) continue;
    const u = uniformOf(mix32(o.seasonKey ^ key(RECOUNT, uid(sc.products[lot.product]!.id), lot.bestByWeek)) ^ o.flip);
    const change = Math.max(-lot.jars, Math.floor(u * (2 * lot.offBy + 1)) - lot.offBy);
    st.buckets[lot.product * (sc.weeks + 1) + Math.min(sc.weeks, Math.max(0, lot.bestByWeek))]! += change;
    st.total[lot.product]! += change;
  }
}
