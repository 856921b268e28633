/**
 * How acidity, solids and boiling weaken a pectin gel; each factor 0 to 1.
 * Acidity: square root of Olsen's strength series at 60 % (in Lowe, Experimental Cookery; read; the root is assumed), moved
 * with the solids by Tarr's 3.46 at 65 % (from memory). Solids: estimate. Boiling: 0.041 a minute with acid before the sugar
 * fitted to Lowe's table, 0.02 a minute after it an estimate. All are first guesses: ±40 %, the field set test decides.
 */
export type PectinKind = 'HM' | 'LM';

const PH_POINTS = [
  [0, 0],
  [0.14, 0.56],
  [0.39, 0.76],
  [0.87, 1],
  [1.3, 1],
] as const;

/** Highest pH at which a high-sugar gel of these solids (per cent) forms. */
export const highestGellingPh = (solidsPct: number): number => 3.27 + 0.038 * (solidsPct - 60);

export function acidityFactor(jam: { pH: number; solidsPct: number }): number {
  const d = highestGellingPh(jam.solidsPct) - jam.pH;
  if (d <= 0) return 0;
  for (const [i, [to, high]] of PH_POINTS.entries()) {
    const [from, low] = PH_POINTS[Math.max(0, i - 1)] as readonly [number, number];
    if (d <= to) return to === from ? high : low + ((high - low) * (d - from)) / (to - from);
  }
  return 1;
}

/** HM: nothing at 50 %, everything from 65 %. LM: everything from 20 to 60 %. */
export function solidsFactor(solidsPct: number, kind: PectinKind): number {
  if (kind === 'LM') return solidsPct >= 20 && solidsPct <= 60 ? 1 : 0;
  return Math.min(1, Math.max(0, (solidsPct - 50) / 15));
}

/** Minutes boiled with acid before the sugar went in, and after. */
export const cookFactor = (boil: { beforeSugarMin: number; afterSugarMin: number }): number =>
  Math.exp(-0.041 * boil.beforeSugarMin - 0.02 * boil.afterSugarMin);
