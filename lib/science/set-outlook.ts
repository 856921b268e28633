/**
 * What set to expect: shares of soft, good and stiff when supply and need are only known with a spread. Both are taken as
 * log-normal; below the need the set is soft, above 1.8 times it stiff (an estimate). It never unlocks a shelf.
 */
import { normalCdf } from './normal-cdf.ts';
import type { PectinNeed } from './pectin-need.ts';
import type { PectinSupply } from './pectin-supply.ts';

const STIFF_FROM = 1.8;

export interface SetOutlook {
  readonly soft: number;
  readonly good: number;
  readonly stiff: number;
  /** The largest of the three. */
  readonly outlook: 'soft' | 'good' | 'stiff';
  /** Supply over need with the band that holds it in four cases of five; null where nothing sets. */
  readonly ratio: { readonly typ: number; readonly low: number; readonly high: number } | null;
  readonly reason: string | null;
}

export function setOutlook(supply: PectinSupply, need: PectinNeed): SetOutlook {
  if (!need.sets) return { soft: 1, good: 0, stiff: 0, outlook: 'soft', ratio: null, reason: need.reason };
  if (!(supply.eq150G > 0)) {
    return { soft: 1, good: 0, stiff: 0, outlook: 'soft', ratio: null, reason: 'no pectin in the batch' };
  }
  const typ = need.eq150G > 0 ? supply.eq150G / need.eq150G : Number.MAX_VALUE;
  const sd = Math.sqrt(Math.log(1 + supply.relSd ** 2) + Math.log(1 + need.relSd ** 2));
  const below = (edge: number): number => normalCdf((Math.log(edge) - Math.log(typ)) / sd);
  const soft = below(1);
  const stiff = 1 - below(STIFF_FROM);
  const good = 1 - soft - stiff;
  const outlook = soft >= good && soft >= stiff ? 'soft' : good >= stiff ? 'good' : 'stiff';
  const band = Math.exp(1.2816 * sd);
  return { soft, good, stiff, outlook, ratio: { typ, low: typ / band, high: typ * band }, reason: null };
}
