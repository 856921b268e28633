// biome-ignore-all lint/style/noNonNullAssertion: positions were checked by checkScenario
import { expNegative } from './exp-table.ts';
import type { HeldEvent, KernelTables } from './kernel-tables.ts';
import { NEVER } from './out.ts';
import { mix32 } from './random.ts';
import { EVENT_RETURN_WEEKS, RING_WEEKS } from './scenario.ts';
import type { SeasonState } from './season-state.ts';

const MOST_SOLD = 200;
const INV_32 = 2 ** -32;

/** A gift or market day: jars leave first expired first, and part of the glass comes back weeks later. */
export function holdEvent(t: KernelTables, st: SeasonState, held: { event: HeldEvent; week: number }): void {
  const { event: e, week } = held;
  const p = e.product;
  const wanted = e.fixed ? Math.round(e.mean) : marketCount(st, e, week);
  const take = Math.min(wanted, st.total[p]!);
  if (wanted > take) {
    st.unmet[p]! += wanted - take;
    if (st.runOut[p] === NEVER) st.runOut[p] = week;
  }
  st.total[p]! -= take;
  st.given[p]! += take;
  st.ring[t.container[p]! * RING_WEEKS + ((week + EVENT_RETURN_WEEKS) & (RING_WEEKS - 1))]! += take * e.returnProb;
  let left = take;
  for (let b = p * t.buckets + st.head[p]!; left > 0; b++) {
    const from = Math.min(left, st.buckets[b]!);
    st.buckets[b]! -= from;
    left -= from;
    st.head[p] = b - p * t.buckets;
  }
}

/** Poisson by inversion, with the same table of e^-x as the household's use. */
function marketCount(st: SeasonState, e: HeldEvent, week: number): number {
  const address = mix32(mix32(st.kitchenKey ^ e.uid) ^ Math.imul(week + 91, 0x165667b1)) ^ st.flip;
  const u = ((address >>> 0) + 0.5) * INV_32;
  let pk = expNegative(e.mean);
  let below = pk;
  let count = 0;
  while (u > below && count < MOST_SOLD) {
    pk = pk * e.mean * (1 / (count + 1));
    count++;
    below += pk;
  }
  return count;
}
