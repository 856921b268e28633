/**
 * Jars of one size that fit a canner at once. The loads of 7 quarts and 9 pints are the basis of every quantity line of
 * AIB 539; the others are unofficial (canner texts): a grower's own count wins. Null-free: a size not listed has no figure.
 */
import type { JarSize } from './jar-sizes.ts';
import type { Cited } from './source.ts';

export type CannerKind =
  | 'boiling-water 21 qt'
  | 'boiling-water 15 qt'
  | 'boiling-water 33 qt'
  | 'large pressure, two layers';

export interface CannerLoadRow extends Cited {
  readonly canner: CannerKind;
  readonly jar: JarSize;
  readonly jars: number;
}

const unofficial = { source: 'CANNERSIZE', status: 'secondary' } as const;

export const CANNER_LOADS = [
  { canner: 'boiling-water 21 qt', jar: 'quart', jars: 7, source: 'AIB539', status: 'verified', also: ['CANNERSIZE'] },
  {
    canner: 'boiling-water 21 qt',
    jar: 'pint',
    jars: 9,
    source: 'AIB539',
    status: 'verified',
    note: '8 in some texts',
  },
  { canner: 'boiling-water 21 qt', jar: 'half-pint', jars: 12, ...unofficial },
  { canner: 'boiling-water 15 qt', jar: 'quart', jars: 4, ...unofficial },
  { canner: 'boiling-water 15 qt', jar: 'pint', jars: 7, ...unofficial },
  { canner: 'boiling-water 15 qt', jar: 'half-pint', jars: 8, ...unofficial },
  { canner: 'boiling-water 33 qt', jar: 'quart', jars: 9, ...unofficial },
  { canner: 'large pressure, two layers', jar: 'pint', jars: 18, ...unofficial },
  { canner: 'large pressure, two layers', jar: 'quart', jars: 7, ...unofficial },
] as const satisfies readonly CannerLoadRow[];

/** Jar mouths, inches inside. MSU sheet 01600497. */
export const JAR_MOUTHS = { regularIn: 2.375, wideIn: 3, source: 'MSU_JARS', status: 'verified' } as const;

/** Jars a canner takes, or the reason there is no figure. */
export function cannerLoad(
  canner: CannerKind,
  jar: JarSize,
): { ok: true; jars: number } | { ok: false; reason: string } {
  const row = CANNER_LOADS.find((r) => r.canner === canner && r.jar === jar);
  return row
    ? { ok: true, jars: row.jars }
    : { ok: false, reason: `no load is listed for ${jar} jars in a ${canner} canner` };
}
