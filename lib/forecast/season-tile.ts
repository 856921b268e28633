// biome-ignore-all lint/style/noNonNullAssertion: lengths follow from the scenario
import type { Out } from './out.ts';
import type { Scenario } from './scenario.ts';

/** Seasons whose results are gathered before they are written out, so that whole cache lines are written. */
export const TILE = 64;

/** Weekly results of up to TILE seasons, [season][week][kind]; fields as in `Out`. */
export interface SeasonTile {
  readonly stock: Uint16Array;
  readonly store: Float32Array;
  readonly lids: Uint16Array;
  readonly empties: Int16Array;
  readonly sugar: Float32Array;
}

export const newTile = (sc: Scenario): SeasonTile => ({
  stock: new Uint16Array(TILE * sc.weeks * sc.products.length),
  store: new Float32Array(TILE * sc.weeks * sc.stores.length),
  lids: new Uint16Array(TILE * sc.weeks * sc.lids.length),
  empties: new Int16Array(TILE * sc.weeks * sc.containers.length),
  sugar: new Float32Array(TILE * sc.weeks),
});

/** Writes seasons `from` to `to - 1` of the tile to their places in `out`. */
export function flushTile(tile: SeasonTile, out: Out, seasons: { from: number; to: number }): void {
  flushJars(tile.stock, out.stock, out.n, seasons);
  for (const kind of ['store', 'lids', 'empties', 'sugar'] as const) flush(tile[kind], out[kind], out.n, seasons);
}

/** From [season][row] to [row][season]. */
function flushJars(tile: Uint16Array, out: Uint16Array, n: number, { from, to }: { from: number; to: number }): void {
  const rows = tile.length / TILE;
  const seasons = to - from;
  for (let r = 0; r < rows; r++) {
    const start = r * n + from;
    for (let i = 0, at = r; i < seasons; i++, at += rows) out[start + i] = tile[at]!;
  }
}

type Cells = Uint16Array | Int16Array | Float32Array;

function flush(tile: Cells, out: Cells, n: number, { from, to }: { from: number; to: number }): void {
  const rows = tile.length / TILE;
  const seasons = to - from;
  for (let r = 0; r < rows; r++) {
    const start = r * n + from;
    for (let i = 0, at = r; i < seasons; i++, at += rows) out[start + i] = tile[at]!;
  }
}
