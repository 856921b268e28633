/** Dots of one bin stand on each other: `share` (0 to 1) of the line goes into bins a dot wide. */
export function dotStacks(shares: readonly number[], bins = 18): { at: number; level: number }[] {
  const heights = new Map<number, number>();
  return [...shares]
    .sort((a, b) => a - b)
    .map((share) => {
      const bin = Math.min(bins - 1, Math.max(0, Math.floor(share * bins)));
      const level = heights.get(bin) ?? 0;
      heights.set(bin, level + 1);
      return { at: (bin + 0.5) / bins, level };
    });
}
