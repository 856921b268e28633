/**
 * Composition a name asks for: soluble solids, and fruit to sweetener by weight. 21 CFR 150.110 (butter), 150.140 (jelly),
 * 150.160 (jam), FDA answer on marmalade; European and British figures of Directive 2001/113/EC and its change of 2024.
 * A figure here says what a name requires of a product for sale; it says nothing about keeping.
 */
import type { Cited } from './source.ts';

export interface FruitShareRule extends Cited {
  readonly name: string;
  readonly place: 'US' | 'EU';
  /** Parts of fruit or juice to parts of sweetener, by weight; null where the rule counts grams of fruit. */
  readonly parts: { readonly fruit: number; readonly sweetener: number } | null;
  /** Grams of fruit per 1000 g finished; null where the rule counts parts. */
  readonly fruitGPer1000: number | null;
  /** Least soluble solids of the finished product, per cent; null where none is named. */
  readonly minSolublePct: number | null;
}

const us = { place: 'US', fruitGPer1000: null } as const;
const eu = { place: 'EU', parts: null } as const;
const fda = { source: 'FDA_JAM', status: 'verified' } as const;
const lessFruit = 'redcurrant, blackcurrant, rowan, sea buckthorn, rosehip and quince';

// biome-ignore format: one printed row to a line
export const FRUIT_SHARE_RULES = [
  { name: 'jam, Group I fruit', ...us, parts: { fruit: 47, sweetener: 55 }, minSolublePct: 65, ...fda, also: ['CFR150_160'] },
  { name: 'jam, Group II fruit', ...us, parts: { fruit: 45, sweetener: 55 }, minSolublePct: 65, ...fda, also: ['CFR150_160'] },
  { name: 'jam, both groups mixed', ...us, parts: { fruit: 45, sweetener: 55 }, minSolublePct: 65, source: 'CFR150_160', status: 'memory' },
  { name: 'jelly', ...us, parts: { fruit: 45, sweetener: 55 }, minSolublePct: 65, ...fda, also: ['CFR150_140'] },
  { name: 'fruit butter', ...us, parts: { fruit: 5, sweetener: 2 }, minSolublePct: 43, ...fda, also: ['CFR150_110'], note: 'two to five fruits, each at least a fifth of the mixture' },
  { name: 'marmalade, sweet orange', ...us, parts: { fruit: 30, sweetener: 70 }, minSolublePct: 65, ...fda, note: 'guidance; the 65 % from memory' },
  { name: 'marmalade, bitter orange, lemon or lime', ...us, parts: { fruit: 25, sweetener: 75 }, minSolublePct: 65, ...fda, note: 'guidance; the 65 % from memory' },
  { name: 'jam (2001)', ...eu, fruitGPer1000: 350, minSolublePct: 60, source: 'EU2001', status: 'verified', also: ['UKJAM'], note: `250 g for ${lessFruit}` },
  { name: 'extra jam (2001)', ...eu, fruitGPer1000: 450, minSolublePct: 60, source: 'EU2001', status: 'verified', also: ['UKJAM'], note: `350 g for ${lessFruit}` },
  { name: 'jam (2024)', ...eu, fruitGPer1000: 450, minSolublePct: 60, source: 'EU2024', status: 'verified', note: 'applies from 2026 (date from memory)' },
  { name: 'extra jam (2024)', ...eu, fruitGPer1000: 500, minSolublePct: 60, source: 'EU2024', status: 'verified', note: 'applies from 2026 (date from memory)' },
  { name: 'marmalade', ...eu, fruitGPer1000: 200, minSolublePct: 60, source: 'UKJAM', status: 'verified', note: 'citrus, of which 75 g endocarp' },
] as const satisfies readonly FruitShareRule[];

export interface LabelElement extends Cited {
  readonly id: string;
  readonly rule: string;
}

/** What a US label carries. Utah Department of Agriculture, food label review. */
export const LABEL_ELEMENTS = [
  { id: 'identity', rule: 'Common name on the principal panel', source: 'UT_LABEL', status: 'verified' },
  { id: 'net', rule: 'Net quantity in US and metric units', source: 'UT_LABEL', status: 'memory' },
  {
    id: 'ingredients',
    rule: 'Ingredients by common name, in descending order of weight, parts of an ingredient in parentheses',
    source: 'UT_LABEL',
    status: 'verified',
  },
  { id: 'maker', rule: 'Name and place of the maker', source: 'UT_LABEL', status: 'verified' },
  {
    id: 'allergens',
    rule: 'Major allergens: milk, egg, fish, crustacea, tree nuts by species, peanut, wheat, soy, sesame',
    source: 'UT_LABEL',
    status: 'verified',
    note: 'sesame since 2023, from memory',
  },
  { id: 'juice', rule: 'Per cent juice only on beverages', source: 'UT_LABEL', status: 'verified' },
  { id: 'nutrition', rule: 'Nutrition facts unless exempt as a small business', source: 'UT_LABEL', status: 'memory' },
] as const satisfies readonly LabelElement[];

/** 21 CFR 114.3: acid food has pH 4.6 or below by nature; acidified food is low-acid food brought to 4.6 or below. */
export const ACID_FOOD_LIMIT = { maxPH: 4.6, minWaterActivity: 0.85, source: 'CFR114', status: 'verified' } as const;
