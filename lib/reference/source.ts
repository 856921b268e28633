/** How a figure is known, and where it stands. Every row of every table carries both. */
import type { SourceId } from './sources.ts';

/**
 * `verified`: read in a copy of the publication named. `memory`: from memory of it. `computed`: from cited figures.
 * `estimate`: judged by this project. `common-practice`: what people do, unpublished. `secondary`: read, but not on an
 * official page.
 */
export type Status = 'verified' | 'memory' | 'computed' | 'estimate' | 'common-practice' | 'secondary';

export interface Cited {
  readonly source: SourceId;
  readonly status: Status;
  /** Further publications that print the same figure. */
  readonly also?: readonly SourceId[];
  /** What differs, or which part of the row is weaker than its status. */
  readonly note?: string;
}
