/**
 * Home-canning jar sizes, smallest first. Volumes are the nominal US sizes in millilitres. There is no official standard
 * of outside dimensions: pitch (band diameter plus room for fingers, square) and height are unofficial starting values
 * that a grower replaces by measuring their own jars.
 */
import type { Cited } from './source.ts';

export type JarSize = 'quarter-pint' | 'half-pint' | 'twelve-ounce' | 'pint' | 'quart' | 'half-gallon';

export interface JarSizeRow extends Cited {
  readonly size: JarSize;
  readonly name: string;
  readonly fillMl: number;
  readonly pitchMm: number;
  readonly heightMm: number;
}

const from = { source: 'JARDIM', status: 'secondary' } as const;

export const JAR_SIZES = [
  { size: 'quarter-pint', name: '4 oz', fillMl: 118, pitchMm: 73, heightMm: 60, ...from },
  { size: 'half-pint', name: 'half-pint', fillMl: 237, pitchMm: 75, heightMm: 97, ...from },
  { size: 'twelve-ounce', name: '12 oz', fillMl: 355, pitchMm: 75, heightMm: 133, ...from },
  { size: 'pint', name: 'pint', fillMl: 473, pitchMm: 83, heightMm: 130, ...from },
  { size: 'quart', name: 'quart', fillMl: 946, pitchMm: 96, heightMm: 178, ...from },
  { size: 'half-gallon', name: 'half-gallon', fillMl: 1893, pitchMm: 112, heightMm: 235, ...from },
] as const satisfies readonly JarSizeRow[];

const place = (size: JarSize): number => JAR_SIZES.findIndex((row) => row.size === size);

/** The row of a size. RangeError when the size is none of the six. */
export function jarSizeOf(size: string): JarSizeRow {
  const row = JAR_SIZES.find((r) => r.size === size);
  if (!row) throw new RangeError(`"${size}" is not a jar size`);
  return row;
}

/** Below 0 when `a` is the smaller jar, 0 when equal, above 0 when larger. */
export const compareJarSizes = (a: JarSize, b: JarSize): number => place(a) - place(b);

/** The next smaller jar, or null below the smallest. */
export const nextSizeDown = (size: JarSize): JarSize | null => JAR_SIZES[place(size) - 1]?.size ?? null;

/**
 * The size a time is looked up under: a 4 oz jar takes the half-pint row and a 12 oz jar the pint row (note to the jam
 * rows of AIB 539, read in MSU_JAM); every other size takes its own.
 */
export function tableSizeFor(size: JarSize): JarSize {
  if (size === 'quarter-pint') return 'half-pint';
  if (size === 'twelve-ounce') return 'pint';
  return size;
}
