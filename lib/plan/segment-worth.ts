import type { PlanProduct } from './instance.ts';

/** Worth of so many litres of a product, filling its segments from the dearest on. */
export function segmentWorth(p: PlanProduct, litres: number): number {
  let left = litres;
  return p.segments.reduce((sum, s) => {
    const part = Math.max(0, Math.min(left, s.litres));
    left -= part;
    return sum + part * s.value;
  }, 0);
}
