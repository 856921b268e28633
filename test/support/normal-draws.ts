import { key, mix32 } from '#lib/forecast/random.ts';

/** Standard normal draws (Box-Muller) that are the same for a seed on every run. */
export function normalDraws(seed: number): () => number {
  let n = 0;
  const uniform = () => (mix32(key(seed, n++)) + 0.5) / 2 ** 32;
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}
