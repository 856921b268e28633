/**
 * What the household takes in one simulated week, first expired first out.
 *
 * Two passes: the first asks every product whether anything is wanted at all, in a loop that touches two arrays; only the few
 * that are go through the counting and the jars. Chances are held in 2^-32ths, as the random numbers come: scaling by a power
 * of two changes no digit.
 */
// biome-ignore-all lint/style/noNonNullAssertion: positions were checked by checkScenario, lengths follow from the scenario
import { expNegative } from './exp-table.ts';
import type { KernelTables } from './kernel-tables.ts';
import { NEVER } from './out.ts';
import { RING_WEEKS } from './scenario.ts';
import type { SeasonState } from './season-state.ts';

const TWO_32 = 2 ** 32;
const RING_MASK = RING_WEEKS - 1;
const MOST_USED = 120;
const RECIPROCAL = Float64Array.from({ length: 256 }, (_, i) => 1 / (i + 1));

/** Mean use of product `p` in `week`: the chance that nothing is wanted and the start of the count recursion. */
export function setMeanUse(t: KernelTables, st: SeasonState, at: { product: number; week: number }): void {
  const p = at.product;
  const mean = st.rate[p]! * t.profile[p * t.weeks + at.week]!;
  st.noneWanted[p] = expNegative(mean * t.zeroRate[p]!) * TWO_32;
  st.countStart[p] = mean * t.invPhi[p]!;
}

export function householdUse(t: KernelTables, st: SeasonState, week: number): void {
  for (let i = 0; i < t.seasonal.length; i++) setMeanUse(t, st, { product: t.seasonal[i]!, week });
  const asking = whoAsks(st, week);
  for (let i = 0; i < asking; i++) {
    const product = st.asking[i]!;
    takeJars(t, st, { product, wanted: howMany(t, st, product, st.askedAt[i]!), week });
  }
}

/** Fills `st.asking` with the products of which something is wanted, `st.askedAt` with their random numbers. */
function whoAsks(st: SeasonState, week: number): number {
  const { useKey, noneWanted, asking, askedAt, flip } = st;
  const address = Math.imul(week + 1, 0x9e3779b1);
  let count = 0;
  for (let p = 0; p < useKey.length; p++) {
    // mix32, written out.
    let h = useKey[p]! ^ address;
    h ^= h >>> 16;
    h = Math.imul(h, 0x21f0aaad);
    h ^= h >>> 15;
    h = Math.imul(h, 0x735a2d97);
    const u = ((h ^ (h >>> 15) ^ flip) >>> 0) + 0.5;
    if (u <= noneWanted[p]!) continue;
    asking[count] = p;
    askedAt[count] = u;
    count++;
  }
  return count;
}

/** Negative binomial (Poisson where q = 0) by inversion. */
function howMany(t: KernelTables, st: SeasonState, p: number, u: number): number {
  const start = st.countStart[p]!;
  const q = t.q[p]!;
  let chance = st.noneWanted[p]!;
  let below = chance;
  let wanted = 0;
  while (u > below && wanted < MOST_USED) {
    chance = chance * (start + wanted * q) * RECIPROCAL[wanted]!;
    wanted++;
    below += chance;
  }
  return wanted;
}

function takeJars(t: KernelTables, st: SeasonState, ask: { product: number; wanted: number; week: number }): void {
  const { product: p, wanted, week } = ask;
  const have = st.total[p]!;
  if (wanted > have) {
    st.unmet[p]! += wanted - have;
    if (st.runOut[p] === NEVER) st.runOut[p] = week;
    if (have === 0) return;
  }
  let take = Math.min(wanted, have);
  st.total[p] = have - take;
  st.used[p]! += take;
  st.ring[t.container[p]! * RING_WEEKS + ((week + t.returnLag[p]!) & RING_MASK)]! += take * t.returnProb[p]!;
  const open = t.openStore[p]!;
  if (open >= 0) {
    const litres = take * t.openUnit[p]!;
    st.openNow[open]! += litres;
    st.openRing[open * RING_WEEKS + ((week + t.openWeeks[p]!) & RING_MASK)]! += litres;
  }
  const { buckets } = st;
  let b = p * t.buckets + st.head[p]!;
  for (;;) {
    const there = buckets[b]!;
    if (there > take) {
      buckets[b] = there - take;
      break;
    }
    buckets[b] = 0;
    take -= there;
    if (take === 0) break;
    b++;
  }
  st.head[p] = b - p * t.buckets;
}
