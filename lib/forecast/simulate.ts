/**
 * The pantry through the season, one season at a time.
 *
 * Order within a week (results depend on it): empties back; fruit in; fresh eating; planned batches; standing intentions;
 * fruit losses; household draw, first expired first out; gifts and market; past best-by removed; tally.
 *
 * This is the one function that wants to be long: what the inner loops touch must be local variables, neither captured by a
 * closure nor behind a call. Random numbers are addressed by (seed, season, name, week), never drawn in sequence, so a thread
 * may take any range of seasons. Only + - * and Math.imul decide what happens in a week.
 */
// biome-ignore-all lint/style/noNonNullAssertion: positions were checked by checkScenario, lengths follow from the scenario
import { EXP_TABLE, expNegative } from './exp-table.ts';
import { followIntentions } from './follow-intentions.ts';
import { type KernelTables, kernelTables } from './kernel-tables.ts';
import { makeBatch } from './make-batch.ts';
import { NEVER, type Out } from './out.ts';
import { key, mix32 } from './random.ts';
import { EVENT_RETURN_WEEKS, RING_WEEKS, type Scenario } from './scenario.ts';
import type { Draws } from './season-draws.ts';
import { type SeasonState, seasonState } from './season-state.ts';

export interface Simulation {
  readonly scenario: Scenario;
  readonly draws: Draws;
  readonly out: Out;
}

/** Seasons whose results are gathered before they are written out, so that whole cache lines are written. */
const TILE = 32;
const RING_MASK = RING_WEEKS - 1;
const INV_32 = 2 ** -32;
const MOST_USED = 120;
const MOST_SOLD = 200;
const KITCHEN = 0x51ed270b;
/** Under this the fruit of a crop is not worth counting; it goes to the losses. */
const LAST_FRUIT_KG = 0.05;
const WHOLE = 1e-9;
const RECIPROCAL = Float64Array.from({ length: 256 }, (_, i) => 1 / (i + 1));

/** Simulates seasons `from` to `to - 1` into `run.out`. Throws RangeError for a scenario beyond the counters' limits. */
export function simulate(run: Simulation, from = 0, to = run.draws.n): void {
  const { scenario: sc, draws, out } = run;
  const t = kernelTables(sc);
  const st = seasonState(sc);
  const n = out.n;
  const W = t.weeks;
  const P = sc.products.length;
  const S = sc.stores.length;
  const C = sc.containers.length;
  const L = sc.lids.length;
  const K = sc.crops.length;
  const B = t.buckets;
  const { usePerWeek, profile, zeroRate, invPhi, q, returnProb, returnLag, openStore, openUnit, openWeeks } = t;
  const { store, container, perColumn, perUnit, counted } = t;
  const { buckets, total, head, used, unmet, expired, runOut, empty, empties, carry, ring, openNow, openRing, fruit } =
    st;
  const invColumn = Float64Array.from(perColumn, (k) => 1 / k);
  const unitColumns = perColumn.every((k) => k === 1);
  const rate = new Float64Array(P);
  const useKey = new Int32Array(P);
  const harvest = new Float64Array(K * W);
  const keepShare = Float64Array.from(sc.crops, (c) => c.keepPerWeek);
  const freshKg = Float64Array.from(sc.crops, (c) => c.freshKgPerWeek);
  // Without fruit only products that need none can be made.
  const fruitless = sc.intentions.some((i) => t.crop[i.product]! < 0);
  const tile = newTile(sc);
  const storeNow = new Float64Array(S);

  for (let tileFrom = from; tileFrom < to; tileFrom += TILE) {
    const tileTo = Math.min(to, tileFrom + TILE);
    for (let s = tileFrom; s < tileTo; s++) {
      const row = s - tileFrom;
      const seasonKey = key(draws.seed, draws.antithetic ? s >> 1 : s, 7) | 0;
      const flip = draws.antithetic && (s & 1) === 1 ? -1 : 0;
      startSeason(sc, t, st);
      st.flip = flip;
      st.kitchenKey = mix32(seasonKey ^ KITCHEN) | 0;
      for (let p = 0; p < P; p++) {
        rate[p] = usePerWeek[p]! * draws.mult[p * n + s]!;
        useKey[p] = mix32(seasonKey ^ t.productUid[p]!) | 0;
      }
      for (let c = 0; c < K; c++) {
        const bank = draws.banks[c]!;
        const scale = draws.cropScale?.[c] ?? 1;
        const at = draws.cropIdx[c * n + s]! * W;
        for (let w = 0; w < W; w++) harvest[c * W + w] = bank[at + w]! * scale;
      }

      for (let w = 0; w < W; w++) {
        const slot = w & RING_MASK;
        for (let c = 0; c < C; c++) {
          const back = carry[c]! + ring[c * RING_WEEKS + slot]!;
          ring[c * RING_WEEKS + slot] = 0;
          const whole = Math.floor(back + WHOLE);
          carry[c] = back - whole;
          if (counted[c]!) empties[c]! += whole;
        }
        for (let i = 0; i < S; i++) {
          const left = openNow[i]! - openRing[i * RING_WEEKS + slot]!;
          openNow[i] = left > WHOLE ? left : 0;
          openRing[i * RING_WEEKS + slot] = 0;
        }

        let anyFruit = false;
        for (let c = 0; c < K; c++) {
          const kg = fruit[c]! + harvest[c * W + w]!;
          if (kg > 0) {
            anyFruit = true;
            const eaten = Math.min(kg, freshKg[c]!);
            st.fresh[c]! += eaten;
            fruit[c] = kg - eaten;
          }
        }

        const fallsThrough = (mix32(st.kitchenKey ^ Math.imul(w + 1, 0xc2b2ae35)) ^ flip) >>> 0;
        st.hoursLeft = fallsThrough * INV_32 < t.missWeekProb ? 0 : t.hours[w]!;
        const planned = t.plannedOf[w]!;
        for (let i = 0; i < planned.length; i++) {
          const b = planned[i]!;
          const x = (mix32(mix32(st.kitchenKey ^ b.uid) ^ Math.imul(w + 17, 0x27d4eb2f)) ^ flip) >>> 0;
          if (x * INV_32 < b.prob)
            for (let k = 0; k < b.batches; k++)
              if (makeBatch(t, st, { product: b.product, week: w, planned: true })) break;
        }
        if ((anyFruit || fruitless) && st.hoursLeft > 0) followIntentions(sc, t, { st, week: w });

        if (anyFruit) {
          for (let c = 0; c < K; c++) {
            const kg = fruit[c]!;
            if (kg <= 0) continue;
            const kept = kg * keepShare[c]!;
            fruit[c] = kept < LAST_FRUIT_KG ? 0 : kept;
            st.lost[c]! += kg - fruit[c]!;
          }
        }

        const weekAddress = Math.imul(w + 1, 0x9e3779b1);
        for (let p = 0; p < P; p++) {
          const mean = rate[p]! * profile[p * W + w]!;
          // mix32, written out.
          let h = useKey[p]! ^ weekAddress;
          h ^= h >>> 16;
          h = Math.imul(h, 0x21f0aaad);
          h ^= h >>> 15;
          h = Math.imul(h, 0x735a2d97);
          h = h ^ (h >>> 15) ^ flip;
          const u = ((h >>> 0) + 0.5) * INV_32;
          // p0 >= e^-mean >= 1 - mean: most weeks end here, before any exponential.
          if (u <= 1 - mean) continue;
          const x = mean * zeroRate[p]!;
          const at = x < 64 ? (x * 16) | 0 : 1024;
          const r = x < 64 ? x - at * 0.0625 : 0;
          let pk = EXP_TABLE[at]! * (1 - r * (1 - r * (0.5 - r * (1 / 6 - r * (1 / 24 - r / 120)))));
          let below = pk;
          const l = mean * invPhi[p]!;
          const qp = q[p]!;
          let wanted = 0;
          while (u > below && wanted < MOST_USED) {
            pk = pk * (l + wanted * qp) * RECIPROCAL[wanted]!;
            wanted++;
            below += pk;
          }
          if (wanted === 0) continue;
          const have = total[p]!;
          let take = Math.min(wanted, have);
          if (wanted > have) {
            unmet[p]! += wanted - have;
            if (runOut[p] === NEVER) runOut[p] = w;
          }
          if (take === 0) continue;
          total[p] = have - take;
          used[p]! += take;
          ring[container[p]! * RING_WEEKS + ((w + returnLag[p]!) & RING_MASK)]! += take * returnProb[p]!;
          const open = openStore[p]!;
          if (open >= 0) {
            openNow[open]! += take * openUnit[p]!;
            openRing[open * RING_WEEKS + ((w + openWeeks[p]!) & RING_MASK)]! += take * openUnit[p]!;
          }
          let b = p * B + head[p]!;
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
          head[p] = b - p * B;
        }

        const events = t.eventsOf[w]!;
        for (let i = 0; i < events.length; i++) holdEvent(t, st, { ...events[i]!, week: w });

        for (let i = 0; i < S; i++) storeNow[i] = openNow[i]!;
        const stockAt = (row * W + w) * P;
        for (let p = 0; p < P; p++) {
          const old = buckets[p * B + w]!;
          let jars = total[p]!;
          if (old > 0) {
            buckets[p * B + w] = 0;
            jars -= old;
            total[p] = jars;
            expired[p]! += old;
          }
          tile.stock[stockAt + p] = jars;
          if (jars === 0) {
            if (empty[p] === NEVER) empty[p] = w;
            continue;
          }
          const columns = unitColumns ? jars : ((jars + perColumn[p]! - 1) * invColumn[p]! + WHOLE) | 0;
          storeNow[store[p]!]! += columns * perUnit[p]!;
        }
        const weekRow = row * W + w;
        for (let i = 0; i < S; i++) tile.store[weekRow * S + i] = storeNow[i]!;
        for (let i = 0; i < L; i++) tile.lids[weekRow * L + i] = st.lids[i]!;
        for (let i = 0; i < C; i++) tile.empties[weekRow * C + i] = empties[i]!;
        tile.sugar[weekRow] = st.sugarKg;
      }
      endSeason(st, out, s);
    }
    const range = { from: tileFrom, to: tileTo };
    flush(tile.stock, out.stock, { rows: W * P, n, ...range });
    flush(tile.store, out.store, { rows: W * S, n, ...range });
    flush(tile.lids, out.lids, { rows: W * L, n, ...range });
    flush(tile.empties, out.empties, { rows: W * C, n, ...range });
    flush(tile.sugar, out.sugar, { rows: W, n, ...range });
  }
}

/** Results of up to TILE seasons, [season][week][kind]. */
const newTile = (sc: Scenario) => ({
  stock: new Uint16Array(TILE * sc.weeks * sc.products.length),
  store: new Float32Array(TILE * sc.weeks * sc.stores.length),
  lids: new Uint16Array(TILE * sc.weeks * sc.lids.length),
  empties: new Int16Array(TILE * sc.weeks * sc.containers.length),
  sugar: new Float32Array(TILE * sc.weeks),
});

type Cells = Uint16Array | Int16Array | Float32Array;

/** From [season][row] to [row][season]. */
function flush<T extends Cells>(tile: T, out: T, o: { rows: number; n: number; from: number; to: number }): void {
  const seasons = o.to - o.from;
  for (let r = 0; r < o.rows; r++) {
    const to = r * o.n + o.from;
    for (let i = 0, at = r; i < seasons; i++, at += o.rows) out[to + i] = tile[at]!;
  }
}

function startSeason(sc: Scenario, t: KernelTables, st: SeasonState): void {
  st.buckets.set(t.startBuckets);
  st.total.set(t.startTotal);
  for (const a of [
    st.head,
    st.used,
    st.given,
    st.unmet,
    st.expired,
    st.made,
    st.carry,
    st.ring,
    st.openNow,
    st.openRing,
  ])
    a.fill(0);
  for (const a of [st.lids, st.lost, st.fresh]) a.fill(0);
  for (const a of [st.runOut, st.empty, st.firstMade]) a.fill(NEVER);
  for (let c = 0; c < sc.containers.length; c++) st.empties[c] = t.counted[c]! ? sc.containers[c]!.empties : 0;
  for (let c = 0; c < sc.crops.length; c++) st.fruit[c] = sc.crops[c]!.onHandKg;
  st.hoursUsed = 0;
  st.sugarKg = 0;
}

function endSeason(st: SeasonState, out: Out, s: number): void {
  for (let p = 0; p < out.products; p++) {
    const at = p * out.n + s;
    out.runOut[at] = st.runOut[p]!;
    out.empty[at] = st.empty[p]!;
    out.firstMade[at] = st.firstMade[p]!;
    out.used[at] = st.used[p]!;
    out.given[at] = st.given[p]!;
    out.unmet[at] = st.unmet[p]!;
    out.expired[at] = st.expired[p]!;
    out.made[at] = st.made[p]!;
  }
  for (let c = 0; c < st.fruit.length; c++) {
    out.lostKg[c * out.n + s] = st.lost[c]!;
    out.freshKg[c * out.n + s] = st.fresh[c]!;
    out.leftKg[c * out.n + s] = st.fruit[c]!;
  }
  out.hours[s] = st.hoursUsed;
}

interface HeldEvent {
  readonly product: number;
  readonly mean: number;
  readonly fixed: boolean;
  readonly uid: number;
  readonly returnProb: number;
  readonly week: number;
}

/** A gift or market day: jars leave first expired first, and part of the glass comes back weeks later. */
function holdEvent(t: KernelTables, st: SeasonState, e: HeldEvent): void {
  const p = e.product;
  const wanted = e.fixed ? Math.round(e.mean) : marketCount(st, e);
  const take = Math.min(wanted, st.total[p]!);
  if (wanted > take) {
    st.unmet[p]! += wanted - take;
    if (st.runOut[p] === NEVER) st.runOut[p] = e.week;
  }
  st.total[p]! -= take;
  st.given[p]! += take;
  st.ring[t.container[p]! * RING_WEEKS + ((e.week + EVENT_RETURN_WEEKS) & RING_MASK)]! += take * e.returnProb;
  let left = take;
  for (let b = p * t.buckets + st.head[p]!; left > 0; b++) {
    const from = Math.min(left, st.buckets[b]!);
    st.buckets[b]! -= from;
    left -= from;
    st.head[p] = b - p * t.buckets;
  }
}

/** Poisson by inversion, with the same table of e^-x as the household draw. */
function marketCount(st: SeasonState, e: HeldEvent): number {
  const address = mix32(mix32(st.kitchenKey ^ e.uid) ^ Math.imul(e.week + 91, 0x165667b1)) ^ st.flip;
  const u = ((address >>> 0) + 0.5) * INV_32;
  let pk = expNegative(e.mean);
  let below = pk;
  let count = 0;
  while (u > below && count < MOST_SOLD) {
    pk = pk * e.mean * RECIPROCAL[count]!;
    count++;
    below += pk;
  }
  return count;
}
