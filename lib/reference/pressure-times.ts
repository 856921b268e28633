/**
 * Pressure canning of acid fruit: minutes by row, gauge pressure by altitude. Vent 10 minutes of steam first (from memory,
 * sure). Pressures: AIB 539 as reprinted in MSU_RHUBARB and EDIS_PLUM. Upper limits inclusive, feet, psi.
 */
import { compareJarSizes, type JarSize, jarSizeOf, tableSizeFor } from './jar-sizes.ts';
import { PRESSURE_TABLE, type PrintedPressureRow } from './pressure-table.ts';
import { PROCESS_PRODUCTS, type ProcessProduct } from './process-products.ts';
import type { Cited } from './source.ts';

export type Gauge = 'dial' | 'weighted';

export interface PressureStep extends Cited {
  readonly upToFt: number | null;
  readonly psi: number;
}

const read = { source: 'MSU_RHUBARB', status: 'verified', also: ['EDIS_PLUM'] } as const;

export const ACID_FRUIT_PRESSURE = {
  dial: [
    { upToFt: 2000, psi: 6, ...read },
    { upToFt: 4000, psi: 7, ...read },
    { upToFt: 6000, psi: 8, ...read },
    { upToFt: 8000, psi: 9, ...read },
  ],
  weighted: [
    { upToFt: 1000, psi: 5, ...read },
    { upToFt: null, psi: 10, ...read },
  ],
} as const satisfies Record<Gauge, readonly PressureStep[]>;

export type PressureTime =
  | { ok: true; minutes: number; psi: number; row: PrintedPressureRow }
  | { ok: false; reason: string; nextSizeDown?: JarSize };

/** Minutes and pressure for acid fruit. Refuses products, packs, jars and altitudes the table does not print. */
export function pressureTime(q: {
  product: ProcessProduct;
  pack: 'hot' | 'raw';
  jar: JarSize;
  altitudeFt: number;
  gauge: Gauge;
}): PressureTime {
  const { name } = PROCESS_PRODUCTS[q.product];
  const rows = PRESSURE_TABLE.filter(
    (r: PrintedPressureRow) => r.products.includes(q.product) && r.packs.includes(q.pack),
  );
  if (rows.length === 0) return { ok: false, reason: `no ${q.pack}-pack pressure time was published for ${name}` };
  const size = tableSizeFor(q.jar);
  const sizes = rows
    .flatMap((r) => r.jars.map((jar) => ({ jar, row: r })))
    .sort((a, b) => compareJarSizes(a.jar, b.jar));
  const fit = sizes.find(({ jar }) => compareJarSizes(jar, size) >= 0);
  const largest = sizes.at(-1)?.jar ?? 'pint';
  if (!fit) {
    const reason = `no ${jarSizeOf(q.jar).name} pressure time was published for ${name}: the largest jar tested is the ${jarSizeOf(largest).name}`;
    return { ok: false, reason, nextSizeDown: largest };
  }
  const psi = gaugePressure(q.gauge, q.altitudeFt);
  return psi.ok ? { ok: true, minutes: fit.row.minutes, psi: psi.psi, row: fit.row } : psi;
}

/** Gauge pressure in psi for acid fruit at an altitude in feet. The dial table ends at 8,000 ft. */
export function gaugePressure(
  gauge: Gauge,
  altitudeFt: number,
): { ok: true; psi: number } | { ok: false; reason: string } {
  if (!(altitudeFt >= 0)) return { ok: false, reason: `${altitudeFt} ft is below 0 ft, where the table begins` };
  const steps: readonly PressureStep[] = ACID_FRUIT_PRESSURE[gauge];
  const step = Number.isFinite(altitudeFt) ? steps.find((s) => s.upToFt === null || altitudeFt <= s.upToFt) : undefined;
  if (step) return { ok: true, psi: step.psi };
  return {
    ok: false,
    reason: `${altitudeFt} ft is above ${steps.at(-1)?.upToFt ?? 0} ft, where the ${gauge}-gauge table ends`,
  };
}
