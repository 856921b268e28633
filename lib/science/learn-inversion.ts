/**
 * The inversion factor one batch shows: how much of its sugar must have split for this °Bx to boil this far above water,
 * over what the rate equation gives for its pH and minutes. Two readings at the finish (refractometer and thermometer), the
 * day's boiling water, a measured pH and the minutes at the boil are needed. The rate is taken as the mean of start and end.
 * Splitting 30 % of the sugar raises the boil by 0.74 K at 65 °Bx, so 0.1 K and 0.3 °Bx leave ±5 % of the sugar (estimate).
 */
import { celsius } from '#lib/units/quantity.ts';
import type { Composition } from './composition.ts';
import { inversionRate, invert } from './inversion.ts';
import type { Observed } from './learn-factor.ts';
import { brent } from './root.ts';
import { saturationPressure } from './saturation.ts';
import { boilingPoint } from './solution-boiling-point.ts';

export interface FinishSeen {
  readonly brix: number;
  readonly stopC: number;
  readonly waterC: number;
  readonly pH: number;
  readonly boiledMin: number;
  /** °Bx when the boil began. */
  readonly startBrix: number;
  /** Share of the soluble solids that came in as sugar; the fruit's own sugars count as split. */
  readonly addedShare: number;
}

const SHARE_SD = 0.05;
const CLEAR = { low: 0.03, high: 0.97 };

/** The factor with its error; null where the readings leave the share at an edge or the boil too short to tell. */
export function inversionSeen(b: FinishSeen): Observed | null {
  const share = splitShare(b);
  if (share === null || share < CLEAR.low || share > CLEAR.high || !(b.boiledMin > 0)) return null;
  const rateAt = (brix: number, split: number, t: number): number =>
    inversionRate({ composition: pan(brix, b.addedShare, split), t: celsius(t), pH: b.pH });
  const exposure = (b.boiledMin * (rateAt(b.startBrix, 0, b.waterC) + rateAt(b.brix, share, b.stopC))) / 2;
  const turnover = -Math.log(1 - share);
  return { value: turnover / exposure, relSd: SHARE_SD / ((1 - share) * turnover) };
}

/** Share of the added sugar that had split, 0-1; null when no share explains the readings. */
export function splitShare(b: Pick<FinishSeen, 'brix' | 'stopC' | 'waterC' | 'addedShare'>): number | null {
  const p = saturationPressure(celsius(b.waterC));
  const miss = (share: number): number => boilingPoint(pan(b.brix, b.addedShare, share), p) - b.stopC;
  if (miss(0) > 0 || miss(1) < 0) return null;
  return brent(miss, { low: 0, high: 1, within: 1e-6 });
}

/** 100 g of liquid at this °Bx; the water taken up in splitting is inside the °Bx that was read. */
function pan(brix: number, addedShare: number, split: number): Composition {
  const own = (brix * (1 - addedShare)) / 2;
  const raw = invert({ water: 100, sucrose: brix * addedShare, glucose: own, fructose: own }, split);
  const scale = brix / (raw.sucrose + raw.glucose + raw.fructose);
  return {
    water: 100 - brix,
    sucrose: raw.sucrose * scale,
    glucose: raw.glucose * scale,
    fructose: raw.fructose * scale,
  };
}
