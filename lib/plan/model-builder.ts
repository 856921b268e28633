/** Collects named columns, prices and rows into a sparse model. */
import type { Column, ColumnKind, ColumnRef, Row, SparseModel } from './sparse-model.ts';

export type Term = readonly [column: number, factor: number];

const nameOf = (r: ColumnRef): string =>
  `${r.kind}(${[...r.ids, ...(r.day === null ? [] : [String(r.day)]), ...(r.loads ? [`${r.loads} loads`] : [])].join(',')})${r.future ? `#${r.future}` : ''}`;

export class ModelBuilder {
  private readonly columns: Column[] = [];
  private readonly rows: Row[] = [];
  private readonly byName = new Map<string, number>();
  private readonly groups = new Map<string, Map<number, number>>();

  /** The column of that name, made on first use. */
  column(ref: ColumnRef, bounds: { lower?: number; upper?: number; whole?: boolean }): number {
    const name = nameOf(ref);
    const known = this.byName.get(name);
    if (known !== undefined) return known;
    const index = this.columns.length;
    this.columns.push({
      name,
      ref,
      lower: bounds.lower ?? 0,
      upper: bounds.upper ?? Infinity,
      whole: bounds.whole ?? false,
      cost: 0,
    });
    this.byName.set(name, index);
    return index;
  }

  find(ref: ColumnRef): number | undefined {
    return this.byName.get(nameOf(ref));
  }

  /** Adds money per unit of a column to a named group of the objective. */
  price(group: string, column: number, amount: number): void {
    if (amount === 0) return;
    const prices = this.groups.get(group) ?? new Map<number, number>();
    this.groups.set(group, prices);
    prices.set(column, (prices.get(column) ?? 0) + amount);
    (this.columns[column] as Column).cost += amount;
  }

  /** Adds a row; terms on one column are added up, empty rows without a demand are left out. */
  row(at: Pick<Row, 'rule' | 'ids' | 'day' | 'lower' | 'upper'> & { future: number }, terms: readonly Term[]): void {
    const sum = new Map<number, number>();
    for (const [column, factor] of terms) sum.set(column, (sum.get(column) ?? 0) + factor);
    const entries = [...sum].filter(([, f]) => f !== 0);
    if (entries.length === 0 && at.lower <= 0 && at.upper >= 0) return;
    const { future, ...rest } = at;
    const place = [...at.ids, ...(at.day === null ? [] : [String(at.day)])].join(',');
    this.rows.push({
      ...rest,
      name: `${at.rule}(${place})${future ? `#${future}` : ''}`,
      columns: entries.map(([c]) => c),
      factors: entries.map(([, f]) => f),
    });
  }

  finish(): SparseModel {
    return {
      columns: this.columns,
      rows: this.rows,
      groups: this.groups,
      find: (kind: ColumnKind, ids, day = null, loads = 0, future = 0) =>
        this.byName.get(nameOf({ kind, ids, day, loads, future })),
    };
  }
}
