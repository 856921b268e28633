/**
 * First guess for a loaded home dryer at 60 °C, until its own weighings are known. Hours are the ranges printed in owner's
 * manuals of household dehydrators, an oven manual, an extension recipe page (citing Missouri GH1563) and herb columns: read,
 * weak sources; peel, core and pomace are estimates. κ is computed so that the geometric middle of the hours reaches `wt`.
 */
import { dryBasis } from './gab-isotherm.ts';
import type { DRYING_ENERGY, PageRate } from './page-drying.ts';

export interface DryerStart {
  readonly id: string;
  readonly name: string;
  /** Moistures, share of the wet weight, fresh and target. */
  readonly w0: number;
  readonly wt: number;
  readonly hours: readonly [low: number, high: number];
  readonly n: number;
  readonly kind: keyof typeof DRYING_ENERGY;
  readonly status: 'secondary' | 'estimate';
}

// biome-ignore format: one product to a line
export const DRYER_STARTS: readonly DryerStart[] = [
  { id: 'apple-slices', name: 'apple slices, 3-6 mm', w0: 0.856, wt: 0.2, hours: [4, 12], n: 1.3, kind: 'fruit', status: 'secondary' },
  { id: 'apple-peel-core', name: 'apple peel and core pieces, 5 mm', w0: 0.82, wt: 0.08, hours: [4, 10], n: 1.2, kind: 'peel', status: 'estimate' },
  { id: 'press-pomace', name: 'press pomace, 10 mm crumbled', w0: 0.74, wt: 0.08, hours: [6, 12], n: 1.1, kind: 'peel', status: 'estimate' },
  { id: 'orange-rind', name: 'orange rind strips with pith', w0: 0.725, wt: 0.08, hours: [6, 14], n: 1.1, kind: 'peel', status: 'secondary' },
  { id: 'citrus-zest', name: 'thin citrus zest, 1.5-3 mm', w0: 0.74, wt: 0.08, hours: [1, 2], n: 1.1, kind: 'peel', status: 'secondary' },
  { id: 'herb-leaf', name: 'leafy herbs', w0: 0.85, wt: 0.08, hours: [1, 4], n: 1.1, kind: 'herb', status: 'secondary' },
  { id: 'leather', name: 'fruit leather, 3-6 mm puree', w0: 0.85, wt: 0.2, hours: [4, 10], n: 1.2, kind: 'fruit', status: 'secondary' },
  { id: 'apricot-halves', name: 'apricot halves', w0: 0.864, wt: 0.2, hours: [18, 24], n: 1.1, kind: 'fruit', status: 'secondary' },
  { id: 'apricot-slices', name: 'apricot quarters or 6 mm slices', w0: 0.864, wt: 0.2, hours: [8, 16], n: 1.2, kind: 'fruit', status: 'secondary' },
  { id: 'cherries', name: 'cherries, pitted', w0: 0.82, wt: 0.2, hours: [15, 23], n: 1.1, kind: 'fruit', status: 'secondary' },
  { id: 'grapes', name: 'grapes, whole', w0: 0.81, wt: 0.18, hours: [13, 21], n: 1.05, kind: 'fruit', status: 'secondary' },
  { id: 'pear-slices', name: 'pear slices, 6 mm', w0: 0.84, wt: 0.2, hours: [7, 13], n: 1.25, kind: 'fruit', status: 'secondary' },
  { id: 'plums', name: 'plum halves or quarters', w0: 0.872, wt: 0.2, hours: [8, 15], n: 1.2, kind: 'fruit', status: 'secondary' },
  { id: 'rhubarb', name: 'rhubarb, 6 mm', w0: 0.936, wt: 0.08, hours: [6, 9], n: 1.2, kind: 'fruit', status: 'secondary' },
  { id: 'figs', name: 'figs, halved', w0: 0.79, wt: 0.2, hours: [8, 15], n: 1.1, kind: 'fruit', status: 'secondary' },
  { id: 'strawberry-slices', name: 'strawberry slices, 12 mm', w0: 0.9095, wt: 0.15, hours: [7, 11], n: 1.2, kind: 'fruit', status: 'secondary' },
  { id: 'citrus-slices', name: 'citrus slices with rind, 3 mm', w0: 0.823, wt: 0.08, hours: [14, 18], n: 1.1, kind: 'fruit', status: 'secondary' },
];

export function dryerStartOf(id: string): DryerStart {
  const row = DRYER_STARTS.find((r) => r.id === id);
  if (!row) throw new RangeError(`"${id}" is not a product of the dryer table`);
  return row;
}

/** Rate at 60 °C with dry air (Xe 0). */
export function startRate({ w0, wt, hours, n }: DryerStart): PageRate {
  const ratio = dryBasis(wt) / dryBasis(w0);
  return { n, kappa: (-Math.log(ratio)) ** (1 / n) / Math.sqrt(hours[0] * hours[1]) };
}
