/** A shuffled order that is the same for the same seed (mulberry32, public domain). */
export function seededOrder(seed: number): <T>(list: readonly T[]) => T[] {
  let a = (seed * 0x9e3779b1 + 1) >>> 0;
  const next = () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = Math.imul(a ^ (a >>> 15), a | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return (list) =>
    list
      .map((x) => ({ x, at: next() }))
      .sort((p, q) => p.at - q.at)
      .map(({ x }) => x);
}
