/**
 * What is trimmed off fruit as bought, per cent of its weight. USDA SR26, refuse descriptions, 39 rows: what was trimmed in
 * that laboratory's preparation. Stones of peach and plum are free-stone commercial fruit. Peel depends on the tool:
 * `REFUSE_CV` is its spread, an estimate. Where a fruit's own `wastePct` differs, the fruit's figure is used.
 */
import type { Cited } from './source.ts';

export interface RefuseRow extends Cited {
  readonly item: string;
  readonly foodIds: readonly string[];
  readonly pct: number;
}

/** Coefficient of variation of a refuse figure (0.2 = 20 %). */
export const REFUSE_CV = { value: 0.2, source: 'ESTIMATE', status: 'estimate' } as const satisfies Cited & {
  value: number;
};

// biome-ignore format: one printed row to a line
export const REFUSE = [
  { item: 'apple, core+stem', foodIds: ['apple-dessert', 'apple-cooking', 'apple-cider-sweet'], pct: 10, source: 'USDA', status: 'verified' },
  { item: 'apple, core+stem+peel (peel 13)', foodIds: ['apple-dessert', 'apple-cooking'], pct: 23, source: 'USDA', status: 'verified' },
  { item: 'crabapple core+stem', foodIds: ['crabapple'], pct: 8, source: 'USDA', status: 'verified' },
  { item: 'pear stem+core+seeds', foodIds: ['pear'], pct: 10, source: 'USDA', status: 'verified' },
  { item: 'Asian pear core+stem', foodIds: ['pear-asian'], pct: 9, source: 'USDA', status: 'verified' },
  { item: 'quince core+seeds+parings', foodIds: ['quince'], pct: 39, source: 'USDA', status: 'verified' },
  { item: 'apricot stone', foodIds: ['apricot'], pct: 7, source: 'USDA', status: 'verified' },
  { item: 'peach stone', foodIds: ['peach-yellow', 'peach-white'], pct: 4, source: 'USDA', status: 'verified' },
  { item: 'nectarine stone', foodIds: ['nectarine'], pct: 9, source: 'USDA', status: 'verified' },
  { item: 'plum stone', foodIds: ['plum-european', 'plum-japanese', 'greengage'], pct: 6, source: 'USDA', status: 'verified' },
  { item: 'sweet cherry stone+stem', foodIds: ['cherry-sweet'], pct: 8, source: 'USDA', status: 'verified' },
  { item: 'sour cherry stone+stem', foodIds: ['cherry-sour'], pct: 10, source: 'USDA', status: 'verified' },
  { item: 'grape American: seeds 6, skin 34, stems 2', foodIds: ['grape-slipskin'], pct: 42, source: 'USDA', status: 'verified' },
  { item: 'grape European stems', foodIds: ['grape-vinifera'], pct: 4, source: 'USDA', status: 'verified' },
  { item: 'grape muscadine seeds', foodIds: ['grape-muscadine'], pct: 4, source: 'USDA', status: 'verified' },
  { item: 'strawberry caps+stems', foodIds: ['strawberry'], pct: 6, source: 'USDA', status: 'verified' },
  { item: 'raspberry caps+stems+spoiled', foodIds: ['raspberry-red', 'raspberry-black'], pct: 4, source: 'USDA', status: 'verified' },
  { item: 'blackberry caps+spoiled', foodIds: ['blackberry', 'loganberry'], pct: 4, source: 'USDA', status: 'verified' },
  { item: 'blueberry stems+green+spoiled', foodIds: ['blueberry'], pct: 5, source: 'USDA', status: 'verified' },
  { item: 'currant stems', foodIds: ['currant-red', 'currant-black'], pct: 2, source: 'USDA', status: 'verified' },
  { item: 'cranberry stems+spoiled', foodIds: ['cranberry'], pct: 2, source: 'USDA', status: 'verified' },
  { item: 'fig stems', foodIds: ['fig'], pct: 1, source: 'USDA', status: 'verified' },
  { item: 'persimmon kaki calyx 2 + skin 14', foodIds: ['persimmon-japanese'], pct: 16, source: 'USDA', status: 'verified' },
  { item: 'persimmon native calyx 2 + seeds 16', foodIds: ['persimmon-american'], pct: 18, source: 'USDA', status: 'verified' },
  { item: 'rhubarb ends 19 + leaves 6', foodIds: ['rhubarb'], pct: 25, source: 'USDA', status: 'verified' },
  { item: 'orange peel+seeds, all', foodIds: ['orange-sweet'], pct: 27, source: 'USDA', status: 'verified' },
  { item: 'orange Valencia', foodIds: ['orange-sweet'], pct: 25, source: 'USDA', status: 'verified' },
  { item: 'orange navel peel+navel', foodIds: ['orange-sweet'], pct: 32, source: 'USDA', status: 'verified' },
  { item: 'tangerine peel+seeds', foodIds: ['mandarin'], pct: 26, source: 'USDA', status: 'verified' },
  { item: 'clementine peel+seeds', foodIds: ['mandarin-clementine'], pct: 23, source: 'USDA', status: 'verified' },
  { item: 'grapefruit peel+seeds+core+membrane', foodIds: ['grapefruit'], pct: 50, source: 'USDA', status: 'verified' },
  { item: 'pummelo', foodIds: ['pummelo'], pct: 44, source: 'USDA', status: 'verified' },
  { item: 'lemon peel 45 + seeds 2', foodIds: ['lemon-whole'], pct: 47, source: 'USDA', status: 'verified' },
  { item: 'lime peel+seeds', foodIds: ['lime'], pct: 16, source: 'USDA', status: 'verified' },
  { item: 'kumquat seeds', foodIds: ['kumquat'], pct: 7, source: 'USDA', status: 'verified' },
  { item: 'kiwifruit skin', foodIds: ['kiwifruit'], pct: 24, source: 'USDA', status: 'verified' },
  { item: 'feijoa skin', foodIds: ['feijoa'], pct: 43, source: 'USDA', status: 'verified' },
  { item: 'pomegranate skin+membrane', foodIds: ['pomegranate'], pct: 44, source: 'USDA', status: 'verified' },
  { item: 'loquat seeds+skin', foodIds: ['loquat'], pct: 35, source: 'USDA', status: 'verified' },
] as const satisfies readonly RefuseRow[];

/** The rows of a food, as printed; empty when the data base has none. */
export const refuseOf = (foodId: string): readonly RefuseRow[] =>
  REFUSE.filter((row: RefuseRow) => row.foodIds.includes(foodId));
