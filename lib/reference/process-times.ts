/**
 * How long a filled jar is processed. Looks a row up and gives it as printed; it never interpolates, never adds minutes
 * of its own and refuses whatever the table does not hold, naming the edge that was crossed.
 * Source: process-table (AIB 539 and its reprints). Altitudes in feet, minutes from a full boil, headspace in inches.
 */
import { altitudeBand, type BandSystem } from './altitude-bands.ts';
import { compareJarSizes, type JarSize, jarSizeOf, tableSizeFor } from './jar-sizes.ts';
import { PROCESS_PRODUCTS, type ProcessProduct, type ProcessProductRow } from './process-products.ts';
import { PROCESS_TABLE, type PrintedProcessRow } from './process-table.ts';
import type { Cited } from './source.ts';
import { steamAllows } from './steam-limit.ts';
import { needsSterileJars, steriliseMinutes } from './sterile-jars.ts';

export type { ProcessProduct } from './process-products.ts';

export interface ProcessRow extends Cited {
  readonly product: ProcessProduct;
  readonly pack: 'hot' | 'raw';
  readonly jar: JarSize;
  readonly band: BandSystem;
  readonly minutes: readonly number[];
  readonly headspaceIn: number;
  readonly acidRequired: boolean;
  readonly fruitIds: readonly string[] | null;
  readonly notFor?: readonly string[];
}

export interface ProcessQuery {
  readonly product: ProcessProduct;
  readonly pack: 'hot' | 'raw';
  readonly jar: JarSize;
  readonly altitudeFt: number;
  readonly method: 'boiling-water' | 'steam';
}

export type ProcessTime =
  | {
      ok: true;
      minutes: number;
      headspaceIn: number;
      sterileJars: boolean;
      /** Minutes to boil the empty jars; 0 when they need not be sterile. */
      steriliseMinutes: number;
      bandLabel: string;
      row: ProcessRow;
    }
  | { ok: false; reason: string; nextSizeDown?: JarSize };

/** The printed rows, one per product, pack and jar size. */
export const PROCESS_ROWS: readonly ProcessRow[] = PROCESS_TABLE.flatMap(expand);

function expand(printed: PrintedProcessRow): ProcessRow[] {
  const { packs, jars, fruitIds, ...row } = printed;
  const { name: _name, ...product }: ProcessProductRow = PROCESS_PRODUCTS[printed.product];
  const fruits = fruitIds ?? product.fruitIds;
  return packs.flatMap((pack) => jars.map((jar) => ({ ...product, ...row, pack, jar, fruitIds: fruits })));
}

/**
 * The process of one product, pack, jar and kitchen. A jar smaller than any printed takes the smallest row that is not
 * smaller (4 oz the half-pint row, 12 oz the pint row); a larger one is refused with the largest size that has a time.
 */
export function processTime(q: ProcessQuery): ProcessTime {
  const product: ProcessProductRow | undefined = PROCESS_PRODUCTS[q.product];
  if (!product) return { ok: false, reason: `there is no tested process for "${q.product}"` };
  const found = rowFor(q, product.name);
  if (!('row' in found)) return found;
  const { row } = found;
  const place = altitudeBand(row.band, q.altitudeFt);
  if (!place.ok) return { ok: false, reason: place.reason };
  const minutes = row.minutes[place.index];
  if (minutes === undefined) return { ok: false, reason: `no time is printed for ${place.band.label}` };
  if (q.method === 'steam') {
    const steam = steamAllows(minutes);
    if (!steam.ok) return { ok: false, reason: steam.reason };
  }
  const sterileJars = needsSterileJars(minutes);
  return {
    ok: true,
    minutes,
    headspaceIn: row.headspaceIn,
    sterileJars,
    steriliseMinutes: sterileJars ? steriliseMinutes(q.altitudeFt) : 0,
    bandLabel: place.band.label,
    row,
  };
}

function rowFor(q: ProcessQuery, name: string): { row: ProcessRow } | Extract<ProcessTime, { ok: false }> {
  const rows = PROCESS_ROWS.filter((r) => r.product === q.product && r.pack === q.pack).sort((a, b) =>
    compareJarSizes(a.jar, b.jar),
  );
  const largest = rows.at(-1);
  if (!largest) return { ok: false, reason: `no ${q.pack}-pack time was published for ${name}` };
  const size = tableSizeFor(q.jar);
  const row = rows.find((r) => compareJarSizes(r.jar, size) >= 0);
  if (row) return { row };
  return {
    ok: false,
    reason: `no ${jarSizeOf(q.jar).name} time was published for ${name}: the largest jar tested is the ${jarSizeOf(largest.jar).name}`,
    nextSizeDown: largest.jar,
  };
}
