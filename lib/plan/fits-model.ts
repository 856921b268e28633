/** Whether column values keep every bound and row: a start that does not would be refused in silence. */
import type { SparseModel } from './sparse-model.ts';

export function fitsModel(model: SparseModel, values: Float64Array, tolerance = 1e-6): boolean {
  const within = (x: number, lower: number, upper: number) =>
    x >= lower - tolerance * Math.max(1, Math.abs(x)) && x <= upper + tolerance * Math.max(1, Math.abs(x));
  return (
    model.columns.every((c, j) => within(values[j] ?? 0, c.lower, c.upper)) &&
    model.rows.every((r) =>
      within(
        r.columns.reduce((n, c, i) => n + (values[c] ?? 0) * (r.factors[i] ?? 0), 0),
        r.lower,
        r.upper,
      ),
    )
  );
}
