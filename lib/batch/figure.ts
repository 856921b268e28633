/**
 * A number that can explain itself: unit, formula in words, what went into it, where formula or table stands, how it is
 * known, and a band where it is not exact. Every figure of a batch sheet is one, so that any number on screen opens.
 */
import type { Status } from '#lib/reference/source.ts';
import type { SourceId } from '#lib/reference/sources.ts';

export interface FigureInput {
  readonly name: string;
  readonly value: number | string;
  readonly unit: string;
}

export interface Figure {
  readonly value: number;
  readonly unit: string;
  readonly band: { readonly low: number; readonly high: number } | null;
  readonly formula: string;
  readonly inputs: readonly FigureInput[];
  readonly source: SourceId;
  readonly status: Status;
}

/** A figure under the name it bears on a sheet. */
export interface Labelled {
  readonly label: string;
  readonly figure: Figure;
}

type Known = Omit<Figure, 'band' | 'source' | 'status'> & Partial<Pick<Figure, 'band' | 'source' | 'status'>>;

/** Computed from cited figures unless it says otherwise. RangeError for a value that is not a finite number. */
export function figure(known: Known): Figure {
  if (!Number.isFinite(known.value)) throw new RangeError(`"${known.formula}" did not give a number`);
  return { band: null, source: 'COMPUTED', status: 'computed', ...known };
}

/** One line for the record: "8 °F above 98.6 °C …". */
export const input = (name: string, value: number | string, unit = ''): FigureInput => ({ name, value, unit });
