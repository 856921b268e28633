/**
 * One pan from charge to finish: everything goes in, water boils off until the soluble solids are the target share. Pan
 * weight = soluble solids / target is the surest end-point: no thermometer, barometer or altitude bears on it.
 * Grams and per cent by weight. Source of the balance: conservation of soluble solids (checked against Practical Action
 * KnO 100247: 16.4 kg printed, 16.35 computed).
 */

import type { FinishRule } from '#lib/reference/recipes/recipe.ts';
import { massBalance } from '#lib/science/mass-balance.ts';
import { type Figure, figure, input } from './figure.ts';
import type { MeasuredDose } from './measured-doses.ts';

export interface PanCharge {
  /** Fruit or juice in this pan with its soluble solids. */
  readonly fruit: readonly { readonly name: string; readonly grams: number; readonly brix: number }[];
  readonly doses: readonly MeasuredDose[];
  readonly finish: Extract<FinishRule, { by: 'solids' | 'boil time' | 'mixing' }>;
  readonly targetBrix?: number | undefined;
  /** Mass gained by sugar taking up water, as a share of the soluble solids (0 leaves inversion out). */
  readonly inversionGain: number;
}

export interface PanBalance {
  readonly chargeG: Figure;
  readonly solidsG: Figure;
  readonly finalG: Figure;
  readonly evaporateG: Figure;
  readonly brix: Figure;
}

export function panBalance(q: PanCharge): PanBalance {
  const before = q.doses.filter((d) => !d.afterFinish);
  const afterG = q.doses.filter((d) => d.afterFinish).reduce((sum, d) => sum + d.grams.value, 0);
  const inputs = [
    ...q.fruit.map((f) => ({ name: f.name, grams: f.grams, solublePct: f.brix })),
    ...before.map((d) => ({ name: d.name, grams: d.grams.value, solublePct: d.solublePct })),
  ];
  const listed = inputs.map((i) => input(`${i.name} (${i.solublePct} % soluble)`, i.grams, 'g'));
  const chargeG = inputs.reduce((sum, i) => sum + i.grams, 0);
  const solidsG = inputs.reduce((sum, i) => sum + (i.grams * i.solublePct) / 100, 0) * (1 + q.inversionGain);
  const charge = figure({
    value: chargeG,
    unit: 'g',
    formula: 'everything in the pan before the boil',
    inputs: listed,
  });
  const solids = figure({ value: solidsG, unit: 'g', formula: 'weight times soluble share, added up', inputs: listed });
  if (q.finish.by === 'solids') {
    const targetBrix = q.targetBrix ?? q.finish.brix;
    const balance = massBalance({ inputs, targetBrix, invertedShareGain: q.inversionGain });
    const finalG = balance.panTargetG + afterG;
    return {
      chargeG: charge,
      solidsG: solids,
      finalG: figure({
        value: finalG,
        unit: 'g',
        formula:
          afterG > 0
            ? 'soluble solids over the target share, and what goes in after'
            : 'soluble solids over the target share',
        inputs: [
          input('soluble solids', solidsG, 'g'),
          input('target', targetBrix, '%'),
          input('after the finish', afterG, 'g'),
        ],
      }),
      evaporateG: figure({
        value: Math.max(0, balance.evaporateG),
        unit: 'g',
        formula: 'charge less pan target',
        inputs: [input('charge', chargeG, 'g'), input('pan target', balance.panTargetG, 'g')],
      }),
      brix: figure({
        value: targetBrix,
        unit: '°Bx',
        formula: 'target of the recipe',
        inputs: [],
        source: 'FDA_JAM',
        status: 'verified',
      }),
    };
  }
  const share = q.finish.by === 'boil time' ? q.finish.boilOffShare : 0;
  const finalG = chargeG * (1 - share) + afterG;
  return {
    chargeG: charge,
    solidsG: solids,
    finalG: figure({
      value: finalG,
      unit: 'g',
      formula: 'charge less the share a short boil takes',
      inputs: [input('charge', chargeG, 'g'), input('boil-off', 100 * share, '%')],
      status: 'estimate',
    }),
    evaporateG: figure({
      value: chargeG * share,
      unit: 'g',
      formula: 'share a short boil takes',
      inputs: [input('share', 100 * share, '%')],
      source: 'MEMORY',
      status: 'memory',
    }),
    brix: figure({
      value: (100 * solidsG) / Math.max(1, chargeG * (1 - share)),
      unit: '°Bx',
      formula: 'soluble solids over what is left',
      inputs: [input('soluble solids', solidsG, 'g')],
    }),
  };
}
