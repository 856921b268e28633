/**
 * Grams of household measures (US cup 236.6 mL, tablespoon 14.8 mL, teaspoon 4.9 mL), 64 rows. USDA SR26, file WEIGHT; `usda`
 * is the food's number there. Rows without a number say where they come from. A scale beats every row.
 */
import type { Cited } from './source.ts';

export interface HouseholdMeasure extends Cited {
  readonly item: string;
  readonly measure: 'cup' | 'tbsp' | 'tsp' | 'package' | 'lemon' | 'lime';
  readonly grams: number;
  readonly usda?: string;
}

// biome-ignore format: one printed row to a line
export const HOUSEHOLD_MEASURES = [
  { item: 'granulated sugar', measure: 'cup', grams: 200, usda: '19335', source: 'USDA', status: 'verified' },
  { item: 'granulated sugar', measure: 'tsp', grams: 4.2, usda: '19335', source: 'USDA', status: 'verified' },
  { item: 'brown sugar, packed', measure: 'cup', grams: 220, usda: '19334', source: 'USDA', status: 'verified' },
  { item: 'honey', measure: 'cup', grams: 339, usda: '19296', source: 'USDA', status: 'verified' },
  { item: 'honey', measure: 'tbsp', grams: 21, usda: '19296', source: 'USDA', status: 'verified' },
  { item: 'maple syrup', measure: 'cup', grams: 315, usda: '19353', source: 'USDA', status: 'verified' },
  { item: 'corn/glucose syrup, dark', measure: 'cup', grams: 328, usda: '19349', source: 'USDA', status: 'verified' },
  { item: 'lemon juice, bottled', measure: 'tbsp', grams: 15, usda: '09153', source: 'USDA', status: 'verified' },
  { item: 'lemon juice, bottled', measure: 'cup', grams: 244, usda: '09153', source: 'USDA', status: 'verified' },
  { item: 'lemon, juice of one', measure: 'lemon', grams: 48, usda: '09152', source: 'USDA', status: 'verified' },
  { item: 'lime, juice of one', measure: 'lime', grams: 44, usda: '09160', source: 'USDA', status: 'verified' },
  { item: 'cider vinegar', measure: 'cup', grams: 239, usda: '02048', source: 'USDA', status: 'verified' },
  { item: 'apple juice', measure: 'cup', grams: 248, usda: '09400', source: 'USDA', status: 'verified' },
  { item: 'apple sauce, unsweetened', measure: 'cup', grams: 244, usda: '09019', source: 'USDA', status: 'verified' },
  { item: 'apples, sliced with skin', measure: 'cup', grams: 109, usda: '09003', source: 'USDA', status: 'verified' },
  { item: 'apples, quartered/chopped', measure: 'cup', grams: 125, usda: '09003', source: 'USDA', status: 'verified' },
  { item: 'apples, peeled slices', measure: 'cup', grams: 110, usda: '09004', source: 'USDA', status: 'verified' },
  { item: 'apple rings, dried', measure: 'cup', grams: 86, usda: '09011', source: 'USDA', status: 'verified' },
  { item: 'apple, dehydrated low-moisture', measure: 'cup', grams: 60, usda: '09009', source: 'USDA', status: 'verified' },
  { item: 'apricot halves', measure: 'cup', grams: 155, usda: '09021', source: 'USDA', status: 'verified' },
  { item: 'apricot slices', measure: 'cup', grams: 165, usda: '09021', source: 'USDA', status: 'verified' },
  { item: 'blackberries whole', measure: 'cup', grams: 144, usda: '09042', source: 'USDA', status: 'verified' },
  { item: 'blueberries whole', measure: 'cup', grams: 148, usda: '09050', source: 'USDA', status: 'verified' },
  { item: 'sour cherries pitted', measure: 'cup', grams: 155, usda: '09063', source: 'USDA', status: 'verified' },
  { item: 'sweet cherries pitted', measure: 'cup', grams: 154, usda: '09070', source: 'USDA', status: 'verified' },
  { item: 'crabapple slices', measure: 'cup', grams: 110, usda: '09077', source: 'USDA', status: 'verified' },
  { item: 'cranberries whole', measure: 'cup', grams: 100, usda: '09078', source: 'USDA', status: 'verified' },
  { item: 'cranberries chopped', measure: 'cup', grams: 110, usda: '09078', source: 'USDA', status: 'verified' },
  { item: 'currants', measure: 'cup', grams: 112, usda: '09083', source: 'USDA', status: 'verified' },
  { item: 'elderberries', measure: 'cup', grams: 145, usda: '09088', source: 'USDA', status: 'verified' },
  { item: 'gooseberries', measure: 'cup', grams: 150, usda: '09107', source: 'USDA', status: 'verified' },
  { item: 'grapes, slip-skin', measure: 'cup', grams: 92, usda: '09131', source: 'USDA', status: 'verified' },
  { item: 'grapes, European', measure: 'cup', grams: 151, usda: '09132', source: 'USDA', status: 'verified' },
  { item: 'kiwifruit sliced', measure: 'cup', grams: 180, usda: '09148', source: 'USDA', status: 'verified' },
  { item: 'lemon sections', measure: 'cup', grams: 212, usda: '09150', source: 'USDA', status: 'verified' },
  { item: 'lemon peel', measure: 'tbsp', grams: 6, usda: '09156', source: 'USDA', status: 'verified' },
  { item: 'orange sections', measure: 'cup', grams: 180, usda: '09200', source: 'USDA', status: 'verified' },
  { item: 'orange peel', measure: 'tbsp', grams: 6, usda: '09216', source: 'USDA', status: 'verified' },
  { item: 'mulberries', measure: 'cup', grams: 140, usda: '09190', source: 'USDA', status: 'verified' },
  { item: 'nectarine slices', measure: 'cup', grams: 143, usda: '09191', source: 'USDA', status: 'verified' },
  { item: 'peach slices', measure: 'cup', grams: 154, usda: '09236', source: 'USDA', status: 'verified' },
  { item: 'pear slices', measure: 'cup', grams: 140, usda: '09252', source: 'USDA', status: 'verified' },
  { item: 'pear cubes', measure: 'cup', grams: 161, usda: '09252', source: 'USDA', status: 'verified' },
  { item: 'pineapple chunks', measure: 'cup', grams: 165, usda: '09266', source: 'USDA', status: 'verified' },
  { item: 'plum slices', measure: 'cup', grams: 165, usda: '09279', source: 'USDA', status: 'verified' },
  { item: 'raspberries', measure: 'cup', grams: 123, usda: '09302', source: 'USDA', status: 'verified' },
  { item: 'rhubarb diced', measure: 'cup', grams: 122, usda: '09307', source: 'USDA', status: 'verified' },
  { item: 'strawberries whole', measure: 'cup', grams: 144, usda: '09316', source: 'USDA', status: 'verified' },
  { item: 'strawberries halves', measure: 'cup', grams: 152, usda: '09316', source: 'USDA', status: 'verified' },
  { item: 'strawberries sliced', measure: 'cup', grams: 166, usda: '09316', source: 'USDA', status: 'verified' },
  { item: 'strawberries pureed (use for crushed)', measure: 'cup', grams: 232, usda: '09316', source: 'USDA', status: 'verified' },
  { item: 'papaya mashed (pulp proxy)', measure: 'cup', grams: 230, usda: '09226', source: 'USDA', status: 'verified' },
  { item: 'feijoa pureed (pulp proxy)', measure: 'cup', grams: 243, usda: '09334', source: 'USDA', status: 'verified' },
  { item: 'tomato chopped', measure: 'cup', grams: 180, usda: '11529', source: 'USDA', status: 'verified' },
  { item: 'salt', measure: 'tsp', grams: 6, usda: '02047', source: 'USDA', status: 'verified' },
  { item: 'jam/preserve', measure: 'tbsp', grams: 20, usda: '19297', source: 'USDA', status: 'verified' },
  { item: 'jelly', measure: 'tbsp', grams: 21, usda: '19300', source: 'USDA', status: 'verified' },
  { item: 'pectin powder, 1.75 oz package', measure: 'package', grams: 50, usda: '19310', source: 'USDA', status: 'verified' },
  { item: 'citric acid powder, level', measure: 'tsp', grams: 5, source: 'UNOFFICIAL_PAGE', status: 'secondary', note: 'web page (weak); 4.5-5 g per tsp range from memory' },
  { item: 'citric acid powder, level', measure: 'tbsp', grams: 15, source: 'UNOFFICIAL_PAGE', status: 'secondary', note: 'web page (weak); 4.5-5 g per tsp range from memory' },
  { item: 'pectin powder (dextrose-standardised household type)', measure: 'tbsp', grams: 9, source: 'COMPUTED', status: 'computed', note: 'two pages disagree: one 1.75 oz box = 3 Tbsp or 6 Tbsp; bulk density 0.6-0.65 g/mL makes 6 Tbsp (8.3 g) right; always weigh' },
  { item: 'dried apple peel/core powder, fine', measure: 'tbsp', grams: 7, source: 'ESTIMATE', status: 'estimate', note: 'estimate: dehydrated apple 60 g/cup (USDA pieces) to fine powder 0.40-0.55 g/mL; 30 % either way' },
  { item: 'dried citrus peel powder, fine', measure: 'tbsp', grams: 7, source: 'ESTIMATE', status: 'estimate', note: 'estimate 0.4-0.55 g/mL; 30 % either way' },
  { item: 'crushed fruit or pulp, any', measure: 'cup', grams: 235, source: 'USDA', status: 'computed', note: 'USDA purees 230-244 g/cup (strawberry 232, papaya 230, feijoa 243, apple sauce 244)' },
] as const satisfies readonly HouseholdMeasure[];

/** Grams of one measure of an item. RangeError when the table has no such pair: a density is never guessed. */
export const gramsOfMeasure = (item: string, measure: HouseholdMeasure['measure']): number =>
  printedMeasure(item, measure).grams;

/** The row of one measure of an item. RangeError when the table has no such pair. */
export function printedMeasure(item: string, measure: HouseholdMeasure['measure']): HouseholdMeasure {
  const row = HOUSEHOLD_MEASURES.find((r) => r.item === item && r.measure === measure);
  if (!row) throw new RangeError(`no weight is printed for one ${measure} of "${item}"`);
  return row;
}
