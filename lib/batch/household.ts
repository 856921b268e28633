/**
 * Weights by cup and spoon, and back, for what is added to a pan. Factors and their spread are those of the household table
 * (USDA SR26 where it says so); what it does not print is not guessed. A powder by the spoon is to be weighed: two tablespoons
 * of home powder are near 15 g, not 60.
 */
import { gramsOfMeasure, printedMeasure } from '#lib/reference/household-measures.ts';
import { type DoseItem, doseItem } from '#lib/reference/recipes/dose-items.ts';
import { SOURCES, type SourceId } from '#lib/reference/sources.ts';
import type { Measure } from '#lib/units/measure.ts';
import { type Figure, input, type Labelled } from './figure.ts';

type Spoon = 'cup' | 'tbsp' | 'tsp';
interface ByVolume {
  readonly item: string;
  readonly measures: readonly Spoon[];
  /** Lightest and heaviest spoon over the printed one. */
  readonly spread?: readonly [low: number, high: number];
  readonly weigh?: true;
}

const BY_VOLUME: Readonly<Partial<Record<DoseItem, ByVolume>>> = {
  sugar: { item: 'granulated sugar', measures: ['cup', 'tsp'] },
  'brown-sugar': { item: 'brown sugar, packed', measures: ['cup'] },
  'lemon-juice-bottled': { item: 'lemon juice, bottled', measures: ['cup', 'tbsp'] },
  'vinegar-5-pct': { item: 'cider vinegar', measures: ['cup'] },
  'apple-juice': { item: 'apple juice', measures: ['cup'] },
  cider: { item: 'apple juice', measures: ['cup'] },
  salt: { item: 'salt', measures: ['tsp'] },
  // 4.5 to 5 g a teaspoon.
  'citric-acid': { item: 'citric acid powder, level', measures: ['tbsp', 'tsp'], spread: [0.9, 1], weigh: true },
  // The same box is printed as 3 and as 6 tablespoons: 8 to 16 g.
  'pectin-powder': {
    item: 'pectin powder (dextrose-standardised household type)',
    measures: ['tbsp'],
    spread: [8 / 9, 16 / 9],
    weigh: true,
  },
  'apple-powder': {
    item: 'dried apple peel/core powder, fine',
    measures: ['tbsp'],
    spread: [0.7, 1.3],
    weigh: true,
  },
  'citrus-powder': { item: 'dried citrus peel powder, fine', measures: ['tbsp'], spread: [0.7, 1.3], weigh: true },
};

export interface Weighed {
  readonly grams: number;
  readonly band: { readonly low: number; readonly high: number } | null;
  /** Said where a spoon is no measure for it. */
  readonly weighIt: string | null;
}

/** Grams of a typed measure of an item, or why there are none. */
export function weightOf(item: DoseItem, m: Measure): Weighed | { refused: string } {
  if (m.unit === 'g' || m.unit === 'kg')
    return { grams: m.amount * (m.unit === 'kg' ? 1000 : 1), band: null, weighIt: null };
  const { unit } = m;
  const known = BY_VOLUME[item];
  if (!known?.measures.includes(unit))
    return { refused: `no weight is printed for one ${unit} of ${doseItem(item).name}: weigh it` };
  const grams = m.amount * gramsOfMeasure(known.item, unit);
  const [low, high] = known.spread ?? [1, 1];
  const near = `${Math.round(grams)} g (${Math.round(grams * low)} to ${Math.round(grams * high)})`;
  return {
    grams,
    band: known.spread ? { low: grams * low, high: grams * high } : null,
    weighIt: known.weigh ? `${m.amount} ${unit} of ${doseItem(item).name} is near ${near}: weigh it` : null,
  };
}

const STEP: Readonly<Record<Spoon, number>> = { cup: 4, tbsp: 2, tsp: 4 };
const LEAST: Readonly<Record<Spoon, number>> = { cup: 0.25, tbsp: 0.5, tsp: 0.25 };
const FRACTIONS: Readonly<Record<string, string>> = { '0.25': '¼', '0.5': '½', '0.75': '¾' };

export interface ByHand {
  /** "about 6 cups", to the quarter. */
  readonly text: string;
  readonly measure: Spoon;
  readonly gramsEach: number;
  readonly source: SourceId;
}

/** An amount by cup or spoon; null where nothing is printed, where it is too little to measure, or where it must be weighed. */
export function householdOf(item: DoseItem, grams: number): ByHand | null {
  const known = BY_VOLUME[item];
  if (!known || known.weigh) return null;
  for (const measure of known.measures) {
    const { grams: gramsEach, source } = printedMeasure(known.item, measure);
    const n = Math.round((grams / gramsEach) * STEP[measure]) / STEP[measure];
    if (n < LEAST[measure]) continue;
    const whole = Math.floor(n);
    const text = `${whole === 0 ? '' : whole}${FRACTIONS[String(n - whole)] ?? ''}`;
    return { text: `about ${text} ${measure === 'cup' && n > 1 ? 'cups' : measure}`, measure, gramsEach, source };
  }
  return null;
}

/** What is added to a pan: its grams, and by cup or spoon where a weight is printed for one. */
export function labelledDose(dose: { name: string; item: DoseItem; grams: Figure }): Labelled {
  const byHand = householdOf(dose.item, dose.grams.value);
  if (!byHand) return { label: dose.name, figure: dose.grams };
  const { text, gramsEach, measure, source } = byHand;
  const each = input(`one ${measure}, where it is measured`, `${gramsEach} g, ${SOURCES[source].title}`);
  return { label: `${dose.name}, ${text}`, figure: { ...dose.grams, inputs: [...dose.grams.inputs, each] } };
}
