/**
 * Atmospheric steam canner: the boiling-water time is kept, but never more than 45 minutes, the altitude included, for
 * the water in it runs out. Acid foods (pH 4.6 or below) by a tested recipe only.
 * Source: NCHFP fact sheet on steam canners; Univ. Missouri Extension.
 */
import type { Cited } from './source.ts';

export const STEAM_LIMIT = {
  maxMinutes: 45,
  maxPH: 4.6,
  source: 'NCHFP_STEAM',
  status: 'verified',
  also: ['STEAM_MO'],
} as const satisfies Cited & Record<string, unknown>;

/** How a steam canner is run, in order. */
export const STEAM_STEPS = [
  'Fill only with jars heated beforehand.',
  'Vent until the column of steam is full, 8 to 10 inches, at the local boiling point; the time starts then.',
  'Never open it before the time is up.',
  'Let the jars cool slowly in still air.',
] as const;

export type SteamVerdict = { ok: true } | { ok: false; reason: string };

/** Whether a process of this many minutes may be done in a steam canner (45 is allowed, 46 is not). */
export function steamAllows(minutes: number): SteamVerdict {
  if (minutes <= STEAM_LIMIT.maxMinutes) return { ok: true };
  return {
    ok: false,
    reason: `a steam canner runs at most ${STEAM_LIMIT.maxMinutes} minutes and this needs ${minutes}: use boiling water`,
  };
}
