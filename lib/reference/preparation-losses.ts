/** What is lost between the scale and the jar. Estimates from practice; a household's own batches replace them. */
import type { Cited } from './source.ts';

export interface LossRow extends Cited {
  readonly step: string;
  readonly low: number;
  readonly typ: number;
  readonly high: number;
  readonly unit: 'per cent' | 'g';
}

const estimate = { source: 'ESTIMATE', status: 'estimate' } as const;

// biome-ignore format: one printed row to a line
export const PREPARATION_LOSSES = [
  { step: 'skimming foam', low: 0.5, typ: 1, high: 2, unit: 'per cent', ...estimate },
  { step: 'film left in pan, ladle and funnel, a batch of 5 L', low: 60, typ: 100, high: 150, unit: 'g', ...estimate },
  { step: 'the same, share of a batch of 2.5 kg', low: 2, typ: 3, high: 5, unit: 'per cent', ...estimate },
  { step: 'sampling and set tests', low: 0.3, typ: 0.5, high: 1, unit: 'per cent', ...estimate },
  { step: 'juice kept by the pulp in a jelly bag', low: 15, typ: 20, high: 25, unit: 'per cent', ...estimate },
  { step: 'skins and seeds when sieving apple for butter', low: 8, typ: 10, high: 15, unit: 'per cent', ...estimate },
] as const satisfies readonly LossRow[];
