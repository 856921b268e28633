// biome-ignore-all lint/style/noNonNullAssertion: index kept within the table
/**
 * e^-x for 0 <= x <= 64 with multiplication only, so that every engine gets the same bits: a table at steps of 1/16, built by
 * repeated multiplication, times five terms of the remainder's series. Relative error below 1e-9; beyond 64 the value at 64.
 */
const EXP_TABLE: Float64Array = buildTable();

function buildTable(): Float64Array {
  const table = new Float64Array(1025);
  const step = 0.9394130628134758; // e^(-1/16)
  table[0] = 1;
  for (let i = 1; i < table.length; i++) table[i] = table[i - 1]! * step;
  return table;
}

/** e^-x, see above. */
export function expNegative(x: number): number {
  const at = x < 64 ? (x * 16) | 0 : 1024;
  const r = x < 64 ? x - at * 0.0625 : 0;
  return EXP_TABLE[at]! * (1 - r * (1 - r * (0.5 - r * (1 / 6 - r * (1 / 24 - r / 120)))));
}
