/**
 * How many pans: the smallest number of equal batches whose crushed fruit or juice is at most 6 cups each (a warning above,
 * a stop above 8), and whose charge fits the pan. 6 to 8 cups is printed for jelly (AIB 539); for jam it is carried over,
 * a limit of quality and of hands, not of keeping.
 */
import type { CeilingRule } from '#lib/reference/recipes/recipe.ts';
import { type Figure, figure, input } from './figure.ts';

export interface SplitQuestion {
  readonly ceiling: CeilingRule;
  /** Crushed fruit or juice of the whole lot, grams. */
  readonly baseG: number;
  /** Everything that goes into the pan for the whole lot, millilitres; null when unknown. */
  readonly chargeMl: number | null;
  readonly pan: { readonly litres: number; readonly maxFill: number } | null;
  /** A number the cook asked for; the limits still warn. */
  readonly asked?: number | undefined;
}

export interface BatchSplit {
  readonly batches: number;
  readonly cupsEach: Figure | null;
  readonly unsplitCups: number | null;
  readonly reason: string;
  readonly warnings: readonly string[];
}

export function batchSplit({ ceiling, baseG, chargeMl, pan, asked }: SplitQuestion): BatchSplit {
  const cups = ceiling.by === 'cups' ? baseG / ceiling.gPerCup : null;
  const byCups = cups !== null && ceiling.by === 'cups' ? atLeastOne(cups / ceiling.warn) : 1;
  const panMl = pan ? pan.litres * pan.maxFill * 1000 : null;
  const limitedByPan = ceiling.by !== 'nothing' && panMl !== null && chargeMl !== null;
  const byPan = limitedByPan ? atLeastOne(chargeMl / panMl) : 1;
  const batches = asked && asked >= 1 ? Math.floor(asked) : Math.max(byCups, byPan);
  const each = cups === null ? null : cups / batches;
  const warnings: string[] = [];
  if (each !== null && ceiling.by === 'cups') {
    if (each > ceiling.stop)
      warnings.push(`${each.toFixed(1)} cups in one pan is over the stop of ${ceiling.stop}: make ${byCups} batches.`);
    else if (each > ceiling.warn)
      warnings.push(
        `${each.toFixed(1)} cups in one pan is over ${ceiling.warn}: a long boil dulls the colour and softens the set.`,
      );
  }
  if (limitedByPan && chargeMl / batches > panMl)
    warnings.push('The pan would be fuller than its mark: it can boil over.');
  return {
    batches,
    unsplitCups: cups,
    cupsEach: each === null || ceiling.by !== 'cups' ? null : cupsFigure(each, baseG / batches, ceiling),
    reason: reasonOf(batches, byCups, byPan, asked),
    warnings,
  };
}

const atLeastOne = (x: number): number => Math.max(1, Math.ceil(x - 1e-9));

const cupsFigure = (value: number, grams: number, ceiling: Extract<CeilingRule, { by: 'cups' }>): Figure =>
  figure({
    value,
    unit: 'cups',
    formula: `${ceiling.of} in grams over grams to the cup; at most ${ceiling.warn}, never over ${ceiling.stop}`,
    inputs: [input(ceiling.of, grams, 'g'), input('to the cup', ceiling.gPerCup, 'g')],
    source: 'AIB_JELLY',
    status: ceiling.of === 'juice' ? 'verified' : 'estimate',
  });

function reasonOf(batches: number, byCups: number, byPan: number, asked: number | undefined): string {
  if (asked) return 'as asked';
  if (batches === 1) return 'one pan holds it';
  return byPan > byCups ? 'the pan is the limit' : 'the batch ceiling is the limit';
}
