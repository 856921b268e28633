/** The pans of a lot: how many, and for each what goes in, where it stops, how long that takes and what it fills. */
import type { FinishRule } from '#lib/reference/recipes/recipe.ts';
import { BOIL_TIME_SPREAD, boilMinutes } from '#lib/science/evaporation.ts';
import { splitWhole } from '#lib/units/split.ts';
import type { BatchQuestion, Pan } from './batch-question.ts';
import { type BatchSplit, batchSplit } from './batch-split.ts';
import type { DrawnJuice } from './drawn-juice.ts';
import { type Figure, figure, input } from './figure.ts';
import { type JarFill, jarFill } from './jar-fill.ts';
import { type MeasuredDose, measuredDoses } from './measured-doses.ts';
import { type PanBalance, panBalance } from './pan-balance.ts';
import type { PreparedLot } from './prepared-fruit.ts';

export interface PanSheet {
  /** Prepared grams of each fruit lot in this pan, in the order given. */
  readonly fruitG: readonly number[];
  readonly baseG: number;
  readonly doses: readonly MeasuredDose[];
  readonly balance: PanBalance;
  readonly boilMin: Figure | null;
  readonly fill: JarFill;
}

export type PanFinish = Extract<FinishRule, { by: 'solids' | 'boil time' | 'mixing' }>;
export const isPanFinish = (finish: FinishRule): finish is PanFinish =>
  ['solids', 'boil time', 'mixing'].includes(finish.by);

export interface PanSheets {
  readonly split: BatchSplit;
  readonly pans: readonly PanSheet[];
}

export function panSheets(
  q: BatchQuestion,
  finish: PanFinish,
  prepared: readonly PreparedLot[],
  juice: DrawnJuice | null,
): PanSheets {
  const portions = juice
    ? [{ name: 'juice', grams: Math.round(juice.juiceG.value), brix: juice.brix.value }]
    : prepared.map((p) => ({ name: p.lot.foodId, grams: Math.round(p.preparedG.value), brix: p.brix.value }));
  const baseG = portions.reduce((sum, p) => sum + p.grams, 0);
  const whole = panBalance({
    fruit: portions,
    doses: measuredDoses(q.recipe, baseG),
    finish,
    targetBrix: q.settings.targetBrix,
    inversionGain: q.settings.inversionGain,
  });
  const split = batchSplit({
    ceiling: q.recipe.ceiling,
    baseG,
    // Fruit in syrup before the boil: about 1.1 g/ml, an estimate that only decides whether the pan holds it.
    chargeMl: whole.chargeG.value / 1.1,
    pan: q.pan,
    asked: q.asked?.batches,
  });
  const equal = Array.from({ length: split.batches }, () => 1);
  // Each lot's odd grams begin one pan further on, so that no pan gets them all.
  const shares = portions.map((p) => splitWhole(p.grams, equal));
  const pans = equal.map((_, i) =>
    panSheet(
      q,
      finish,
      portions.map((p, j) => ({ ...p, grams: shares[j]?.[(i + j) % split.batches] ?? 0 })),
    ),
  );
  return { split, pans };
}

function panSheet(
  q: BatchQuestion,
  finish: PanFinish,
  fruit: readonly { name: string; grams: number; brix: number }[],
): PanSheet {
  const baseG = fruit.reduce((sum, f) => sum + f.grams, 0);
  const doses = measuredDoses(q.recipe, baseG, q.asked?.amounts);
  const { targetBrix, inversionGain, lossG } = q.settings;
  const balance = panBalance({ fruit, doses, finish, targetBrix, inversionGain });
  return {
    fruitG: fruit.map((f) => f.grams),
    baseG,
    doses,
    balance,
    boilMin:
      finish.by === 'boil time'
        ? hardBoil(finish.minutes)
        : finish.by === 'solids'
          ? boilTime(balance.evaporateG, q.pan)
          : null,
    fill: jarFill(balance.finalG, Math.min(85, balance.brix.value), lossG, q.jar),
  };
}

const hardBoil = (minutes: number): Figure =>
  figure({
    value: minutes,
    unit: 'min',
    formula: 'hard boil after the sugar, as the recipe says',
    inputs: [],
    source: 'MEMORY',
    status: 'memory',
  });

function boilTime(evaporateG: Figure, pan: Pan | null): Figure | null {
  if (!pan || pan.evapGPerMin === null) return null;
  const value = boilMinutes({ evaporateG: evaporateG.value, panGPerMin: pan.evapGPerMin });
  return figure({
    value,
    unit: 'min',
    band: { low: value * (1 - BOIL_TIME_SPREAD), high: value * (1 + BOIL_TIME_SPREAD) },
    formula: 'water to boil off over what this pan loses a minute; heating up comes on top',
    inputs: [input('boil off', evaporateG.value, 'g'), input('pan', pan.evapGPerMin, 'g/min')],
    status: 'estimate',
  });
}
