/** The programme as named sparse rows: columns x, rows lower <= a x <= upper, everything maximised. */

/** What a column stands for: its trade name, the ids it belongs to, its day, its canner loads. */
export interface ColumnRef {
  kind: ColumnKind;
  ids: readonly string[];
  day: number | null;
  loads: number;
  /** Number of the possible future it belongs to; 0 also for what all futures share. */
  future: number;
}

export type ColumnKind =
  | 'draw'
  | 'waste'
  | 'carry'
  | 'outlet'
  | 'fruit'
  | 'cook'
  | 'batches'
  | 'loads'
  | 'setUp'
  | 'pectin'
  | 'acid'
  | 'jars'
  | 'tail'
  | 'dry'
  | 'buy'
  | 'stock'
  | 'keep'
  | 'filled'
  | 'overflow'
  | 'worth'
  | 'rest'
  | 'kind'
  | 'missingKinds'
  | 'overtime'
  | 'shortage'
  | 'underfill'
  | 'lack'
  | 'less'
  | 'more';

export interface Column {
  name: string;
  ref: ColumnRef;
  lower: number;
  upper: number;
  whole: boolean;
  cost: number;
}

export interface Row {
  name: string;
  rule: string;
  ids: readonly string[];
  day: number | null;
  lower: number;
  upper: number;
  columns: readonly number[];
  factors: readonly number[];
}

export interface SparseModel {
  columns: readonly Column[];
  rows: readonly Row[];
  /** The objective by named groups; together they are the columns' costs. */
  groups: ReadonlyMap<string, ReadonlyMap<number, number>>;
  find(
    kind: ColumnKind,
    ids: readonly string[],
    day?: number | null,
    loads?: number,
    future?: number,
  ): number | undefined;
}
