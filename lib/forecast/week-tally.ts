/** The end of a simulated week: what is past its best-by goes, and jars and room are noted. */
// biome-ignore-all lint/style/noNonNullAssertion: positions were checked by checkScenario, lengths follow from the scenario
import type { KernelTables } from './kernel-tables.ts';
import { NEVER } from './out.ts';
import type { SeasonState } from './season-state.ts';
import type { SeasonTile } from './season-tile.ts';

const WHOLE = 1e-9;

/** Products are gone through store by store, so that the room of each store is one running sum. `row`: the season's place in the tile. */
export function weekTally(t: KernelTables, st: SeasonState, at: { tile: SeasonTile; row: number; week: number }): void {
  const { tile, week } = at;
  const { buckets, total, empty, openNow } = st;
  const { byStore, storeFrom, perColumn, invColumn, perUnit } = t;
  const weekRow = at.row * t.weeks + week;
  const stockAt = weekRow * total.length;
  for (let i = 0; i < openNow.length; i++) {
    let room = openNow[i]!;
    for (let k = storeFrom[i]!; k < storeFrom[i + 1]!; k++) {
      const p = byStore[k]!;
      const bucket = p * t.buckets + week;
      const old = buckets[bucket]!;
      let jars = total[p]!;
      if (old > 0) {
        buckets[bucket] = 0;
        jars -= old;
        total[p] = jars;
        st.expired[p]! += old;
      }
      tile.stock[stockAt + p] = jars;
      if (jars > 0) room += Math.floor((jars + perColumn[p]! - 1) * invColumn[p]! + WHOLE) * perUnit[p]!;
      else if (empty[p] === NEVER) empty[p] = week;
    }
    tile.store[weekRow * openNow.length + i] = room;
  }
  for (let i = 0; i < st.lids.length; i++) tile.lids[weekRow * st.lids.length + i] = st.lids[i]!;
  for (let i = 0; i < st.empties.length; i++) tile.empties[weekRow * st.empties.length + i] = st.empties[i]!;
  tile.sugar[weekRow] = st.sugarKg;
}
