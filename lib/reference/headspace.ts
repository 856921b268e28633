/**
 * Headspace in inches. Canning: by the product's own row (process-products), summed up here for the label of the step.
 * Freezing: NCHFP, headspace for freezing; by width of mouth, for food expands.
 */
import type { Cited } from './source.ts';

export interface CanningHeadspaceRow extends Cited {
  readonly what: string;
  readonly inches: number;
}

export const CANNING_HEADSPACE = [
  {
    what: 'jam, jelly, marmalade, conserve, fruit butter, juice, puree',
    inches: 0.25,
    source: 'AIB539',
    status: 'verified',
  },
  { what: 'fruit, apple sauce, tomatoes, syrup, cranberry sauce', inches: 0.5, source: 'AIB539', status: 'verified' },
  { what: 'whole grapes, pie fillings', inches: 1, source: 'AIB539', status: 'verified', also: ['UNL_GRAPE'] },
  { what: 'freezer jam', inches: 0.5, source: 'HGB_BERRYFREEZER', status: 'verified', also: ['MSU_FREEZERJAM'] },
] as const satisfies readonly CanningHeadspaceRow[];

export type FreezerPack = 'liquid' | 'juice' | 'dry' | 'unsealed jar';

export interface FreezerHeadspaceRow extends Cited {
  readonly pack: FreezerPack;
  readonly mouth: 'wide' | 'narrow';
  readonly pintIn: number;
  readonly quartIn: number;
}

// biome-ignore format: one printed row to a line
export const FREEZER_HEADSPACE = [
  { pack: 'liquid', mouth: 'wide', pintIn: 0.5, quartIn: 1, source: 'HEAD', status: 'verified' },
  { pack: 'liquid', mouth: 'narrow', pintIn: 0.75, quartIn: 1.5, source: 'HEAD', status: 'verified' },
  { pack: 'juice', mouth: 'wide', pintIn: 0.5, quartIn: 1, source: 'HEAD', status: 'verified' },
  { pack: 'juice', mouth: 'narrow', pintIn: 1.5, quartIn: 1.5, source: 'HEAD', status: 'verified' },
  { pack: 'dry', mouth: 'wide', pintIn: 0.5, quartIn: 0.5, source: 'HEAD', status: 'verified' },
  { pack: 'dry', mouth: 'narrow', pintIn: 0.5, quartIn: 0.5, source: 'HEAD', status: 'verified' },
  { pack: 'unsealed jar', mouth: 'wide', pintIn: 1.5, quartIn: 1.5, source: 'MSU_REPROCESS', status: 'verified' },
  { pack: 'unsealed jar', mouth: 'narrow', pintIn: 1.5, quartIn: 1.5, source: 'MSU_REPROCESS', status: 'verified' },
] as const satisfies readonly FreezerHeadspaceRow[];

/** Headspace in inches of one frozen pack. Juice and cider: this program plans the narrow-mouth figure, 1-1/2 in. */
export function freezerHeadspace(pack: FreezerPack, mouth: 'wide' | 'narrow', jar: 'pint' | 'quart'): number {
  const row = FREEZER_HEADSPACE.find((r) => r.pack === pack && r.mouth === mouth);
  if (!row) throw new RangeError(`no freezer headspace is printed for ${pack}, ${mouth} mouth`);
  return jar === 'pint' ? row.pintIn : row.quartIn;
}
