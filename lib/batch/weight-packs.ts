/**
 * What needs no balance: jars by pounds per load (AIB 539 quantity lines, 7 quarts or 9 pints), frozen and dried packs by
 * weight. Pounds of 453.59 g; whole packs, the rest is named. The printed range of a bushel, where there is one, is the band.
 */

import type { JarSize } from '#lib/reference/jar-sizes.ts';
import { type Figure as PrintedFigure, rangeOf, YIELDS, type YieldRow } from '#lib/reference/yields.ts';
import { driedMass } from '#lib/science/drying-target.ts';
import { pounds } from '#lib/units/convert.ts';
import { type Figure, figure, input } from './figure.ts';

export type WeightPacks = { ok: true; packs: Figure; leftG: Figure } | { ok: false; reason: string };

const middle = (f: PrintedFigure): number => (rangeOf(f)[0] + rangeOf(f)[1]) / 2;

/** Jars from fruit as weighed. Refuses a crop or a size no line was printed for. */
export function jarsByWeight(crop: string, grams: number, size: JarSize): WeightPacks {
  const row: YieldRow | undefined = YIELDS.find((y) => y.crop === crop);
  if (!row) return { ok: false, reason: `no printed weight per jar for ${crop}` };
  const perLoad = size === 'quart' ? row.lbPer7Quarts : size === 'pint' ? row.lbPer9Pints : undefined;
  if (perLoad === undefined)
    return { ok: false, reason: `the weight per jar of ${crop} is printed for pints and quarts only` };
  const inLoad = size === 'quart' ? 7 : 9;
  const lbPerJar = middle(perLoad) / inLoad;
  const lb = pounds(grams);
  const jars = Math.floor(lb / lbPerJar + 1e-9);
  return {
    ok: true,
    packs: figure({
      value: jars,
      unit: 'jars',
      band: bandOf(row, lb, size, jars),
      formula: `pounds as weighed over pounds to the jar (${middle(perLoad)} lb for ${inLoad})`,
      inputs: [input('fruit', lb, 'lb'), input('to the jar', lbPerJar, 'lb')],
      source: row.source,
      status: row.status,
    }),
    leftG: figure({
      value: Math.max(0, grams - (jars * lbPerJar * grams) / lb),
      unit: 'g',
      formula: 'fruit the whole jars leave',
      inputs: [input('jars', jars)],
    }),
  };
}

function bandOf(row: YieldRow, lb: number, size: JarSize, jars: number): { low: number; high: number } {
  const spread = Math.max(1, Math.round(jars / 5));
  if (row.bushelLb === undefined || row.quartsPerBushel === undefined)
    return { low: Math.max(0, jars - spread), high: jars + spread };
  const perQuart = size === 'quart' ? 1 : 2;
  const [low, high] = rangeOf(row.quartsPerBushel);
  const bushels = lb / middle(row.bushelLb);
  return {
    low: Math.min(jars, Math.floor(bushels * low * perQuart)),
    high: Math.max(jars, Math.floor(bushels * high * perQuart)),
  };
}

/** Packs of one weight from so many grams. */
export function packsOf(grams: number, packG: number): Extract<WeightPacks, { ok: true }> {
  const packs = Math.floor(grams / packG + 1e-9);
  return {
    ok: true,
    packs: figure({
      value: packs,
      unit: 'packs',
      formula: 'prepared weight over one pack; write the weight on each',
      inputs: [input('weight', grams, 'g'), input('a pack', packG, 'g')],
    }),
    leftG: figure({
      value: grams - packs * packG,
      unit: 'g',
      formula: 'what the whole packs leave; a smaller pack',
      inputs: [input('packs', packs)],
    }),
  };
}

/** Dry weight from prepared weight and the two moistures (wet basis, 0-1): the weighing that ends a drying. */
export function driedWeight(grams: number, from: number, to: number): Figure {
  return figure({
    value: driedMass({ freshG: grams, w0: from, wt: to }),
    unit: 'g',
    formula: 'dry matter stays: weight × (1 - moisture now) / (1 - moisture wanted)',
    inputs: [input('prepared', grams, 'g'), input('moisture now', 100 * from, '%'), input('wanted', 100 * to, '%')],
    source: 'USDA',
    status: 'computed',
  });
}
