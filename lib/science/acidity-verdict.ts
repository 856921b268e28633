/**
 * What the published pH ranges of the fruits allow, before any recipe is looked at: the strictest fruit of the batch decides.
 * A measured pH can only hold or stop a batch here, a predicted one is not asked for. Source: pH ranges and
 * low-acid rules of lib/reference. Which row and dose a batch then needs is
 * the gate's question.
 */
import { type Fruit, fruitOf } from '#lib/reference/fruits.ts';
import { ACID_FOOD_LIMIT } from '#lib/reference/label-rules.ts';
import { lowAcidRuleOf } from '#lib/reference/low-acid-rules.ts';

/** From mildest to strictest. */
export const ACIDITY_VERDICTS = ['high-acid', 'tested-dose-only', 'meter-required', 'not-for-boiling-water'] as const;
export type AcidityVerdict = (typeof ACIDITY_VERDICTS)[number];

/** A class C fruit above this share makes the whole batch need a meter. */
const MINOR_SHARE = 0.1;

/** Shares are of the prepared fruit. RangeError for an unknown fruit or no fruit at all. */
export function acidityVerdict(batch: {
  fruits: readonly { readonly fruitId: string; readonly share: number }[];
  measuredPH?: number;
}): AcidityVerdict {
  if (batch.fruits.length === 0) throw new RangeError('a batch needs a fruit');
  if (batch.measuredPH !== undefined && batch.measuredPH > ACID_FOOD_LIMIT.maxPH) return 'not-for-boiling-water';
  const ranks = batch.fruits.map(({ fruitId, share }) => ACIDITY_VERDICTS.indexOf(verdictOf(fruitOf(fruitId), share)));
  return ACIDITY_VERDICTS[Math.max(...ranks)] as AcidityVerdict;
}

function verdictOf(fruit: Fruit, share: number): AcidityVerdict {
  const rule = fruit.lowAcidRule === null ? null : lowAcidRuleOf(fruit.lowAcidRule).shelf;
  if (rule === 'forbidden' || rule === 'forbidden-except-tested-weighed-jam') return 'not-for-boiling-water';
  if (fruit.acidClass === 'C' && share > MINOR_SHARE) return 'meter-required';
  if (fruit.acidClass === 'A' && !fruit.acidProvisional && rule === null) return 'high-acid';
  return 'tested-dose-only';
}
