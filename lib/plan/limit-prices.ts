/**
 * What one unit more of each limit would be worth, from the relaxation's duals (those of a programme with its batches
 * fixed mislead). A first answer to be rounded in words; solve again for the limit a person asks about.
 */
import type { Row, SparseModel } from './sparse-model.ts';

export interface LimitPrice {
  rule: string;
  ids: readonly string[];
  day: number | null;
  /** Money per hour, load, m2, litre, kg or piece more. For lots it may be negative: more of it would have to be wasted. */
  price: number;
}

const PRICED: readonly string[] = [
  'kitchen',
  'burner',
  'vessel',
  'canner',
  'dryer',
  'freeze',
  'store',
  'outlet',
  'lot',
  'stock',
];

export function limitPrices(model: SparseModel, duals: ArrayLike<number>): LimitPrice[] {
  const isLimit = (r: Row) => PRICED.includes(r.rule) && (r.rule !== 'stock' || r.day === 0);
  return model.rows
    .map((r, i) => ({ row: r, price: duals[i] ?? 0 }))
    .filter((x) => isLimit(x.row) && Math.abs(x.price) > 1e-7)
    .map(({ row, price }) => ({ rule: row.rule, ids: row.ids, day: row.rule === 'stock' ? null : row.day, price }));
}
