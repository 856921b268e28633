/**
 * Splits a whole number into whole parts in proportion to weights, by largest remainder, so that the parts
 * always add up to the whole (grams and jars are conserved). Equal remainders go to the earlier part.
 */
export function splitWhole(total: number, weights: readonly number[]): number[] {
  if (!Number.isInteger(total)) throw new RangeError(`only a whole number can be split into whole parts, got ${total}`);
  const sum = weights.reduce((a, b) => a + b, 0);
  if (!(sum > 0) || weights.some((w) => w < 0)) throw new RangeError('weights must be 0 or more and not all 0');
  const exact = weights.map((w) => (total * w) / sum);
  const parts = exact.map(Math.floor);
  let left = total - parts.reduce((a, b) => a + b, 0);
  const order = exact.map((x, i) => ({ i, rest: x - Math.floor(x) })).sort((a, b) => b.rest - a.rest || a.i - b.i);
  for (const { i } of order) {
    if (left-- <= 0) break;
    parts[i] = (parts[i] as number) + 1;
  }
  return parts;
}
