/**
 * Borderline and low-acid foods: what each may become. These rows govern before the acid class and before any process row;
 * the stricter always wins. Acid doses stand in acid-doses. 16 rows, extension guidance and AIB 539, the source beside each.
 */
import type { Cited } from './source.ts';

export type ShelfRule =
  | 'allowed'
  | 'allowed-with-acid'
  | 'conditional'
  | 'caution'
  | 'tested-recipe-only'
  | 'forbidden-alone'
  | 'forbidden-as-butter-or-puree'
  | 'forbidden-except-tested-weighed-jam'
  | 'forbidden';

export interface LowAcidRule extends Cited {
  readonly id: string;
  readonly food: string;
  readonly fruitIds: readonly string[];
  /** Printed range; null where the source gives none or only a bound (see the note). */
  readonly pH: { readonly low: number; readonly high: number } | null;
  readonly shelf: ShelfRule;
  readonly rule: string;
  /** A measured pH above this is a warning. */
  readonly warnAbovePH?: number;
  /** A measured pH above this keeps the lot off the shelf. */
  readonly stopAbovePH?: number;
  /** No shelf without a calibrated meter reading, whatever acid was added. */
  readonly meterRequired?: true;
  readonly hotPackOnly?: true;
}

// biome-ignore format: one printed row to a line
export const LOW_ACID_RULES = [
  { id: 'tomato', food: 'tomato', fruitIds: ['tomato'], pH: { low: 4.3, high: 4.9 }, shelf: 'allowed-with-acid', rule: 'always acidify, boiling water or pressure', source: 'TOMACID', status: 'verified' },
  { id: 'fig', food: 'fig', fruitIds: ['fig'], pH: { low: 5.05, high: 5.98 }, shelf: 'allowed-with-acid', rule: 'must be acidified; boiling water 45 or 50 minutes at the lowest altitude band; the dose is a floor, and above about pH 5 it is not confirmed by the acid balance: a meter reading is required', meterRequired: true, source: 'MSU_FIG', status: 'verified' },
  { id: 'pear-asian', food: 'Asian pear', fruitIds: ['pear-asian'], pH: { low: 4.7, high: 4.7 }, shelf: 'allowed-with-acid', rule: 'must acidify; hot pack only; no puree', hotPackOnly: true, source: 'NCHFP_ASIANPEAR', status: 'verified' },
  { id: 'elderberry-dark', food: 'dark elderberry (Sambucus nigra, S. canadensis)', fruitIds: ['elderberry-european', 'elderberry-american'], pH: null, shelf: 'forbidden-except-tested-weighed-jam', rule: 'no whole, juice, syrup or puree canning; only a weighed high-sugar jam or jelly from a tested recipe (sugar by mass, never reduced); else freeze. Always heat: the raw berry is toxic', source: 'UMN_ELDER', status: 'verified', also: ['OSU_ELDER', 'ME_PEACH'], note: 'pH averages 4.8, some lots higher; older lists print 3.6-3.8 and the whole-berry list still names elderberry: this row overrides both' },
  { id: 'elderberry-blue', food: 'blue elderberry (S. nigra ssp. cerulea)', fruitIds: [], pH: null, shelf: 'conditional', rule: 'acid enough for ordinary berry recipes by Oregon State; other states have not adopted it', source: 'OSU_ELDER', status: 'verified' },
  { id: 'peach-white', food: 'white-flesh peach or nectarine', fruitIds: ['peach-white'], pH: null, shelf: 'forbidden', rule: 'no tested acidification and no pressure process: freeze only; excludes jam, butter and puree (Wisconsin and California name even drying and jam as yellow-flesh only)', source: 'WI_PEACH', status: 'verified', also: ['ME_PEACH'], note: 'pH above 4.6 in some cultivars' },
  { id: 'mango', food: 'mango', fruitIds: [], pH: { low: 3.4, high: 4.8 }, shelf: 'tested-recipe-only', rule: 'only green or just-ripe mango in a tested sauce or chutney with acid; no ripe puree. Copies of the pH list disagree on ripe and green: treat any mango as low-acid', source: 'NCHFP_PUREE', status: 'verified', also: ['LOWACIDLIST', 'FDA_PH'] },
  { id: 'papaya', food: 'papaya', fruitIds: [], pH: { low: 5.2, high: 6 }, shelf: 'tested-recipe-only', rule: 'low acid; tested recipe with added acid only; no puree', source: 'NCHFP_PUREE', status: 'verified', also: ['UC_LOWACID', 'KS_LOWACID'] },
  { id: 'banana', food: 'banana', fruitIds: [], pH: { low: 4.5, high: 5.2 }, shelf: 'forbidden-alone', rule: 'low acid; no puree/butter canning', source: 'NCHFP_PUREE', status: 'verified', also: ['KS_LOWACID'] },
  { id: 'persimmon', food: 'persimmon', fruitIds: ['persimmon-japanese', 'persimmon-american'], pH: { low: 4.42, high: 4.7 }, shelf: 'tested-recipe-only', rule: 'borderline; no USDA process; freeze/dry; needs acid in any tested recipe', source: 'UC_LOWACID', status: 'verified', note: 'pH from memory' },
  { id: 'melon', food: 'melon (all, watermelon and cantaloupe too)', fruitIds: ['melon', 'watermelon'], pH: { low: 5.18, high: 6.67 }, shelf: 'tested-recipe-only', rule: 'only as tested pickles/high-sugar tested jelly; no plain canning or puree', source: 'NCHFP_PUREE', status: 'verified', also: ['KS_LOWACID'] },
  { id: 'coconut', food: 'coconut', fruitIds: [], pH: { low: 5.5, high: 7.8 }, shelf: 'forbidden', rule: 'no puree', source: 'NCHFP_PUREE', status: 'verified', note: 'pH from memory' },
  { id: 'pumpkin-squash', food: 'pumpkin or winter squash', fruitIds: [], pH: { low: 4.9, high: 6.2 }, shelf: 'forbidden-as-butter-or-puree', rule: 'no mash, puree or butter by any canner (home-made butters measured up to pH 5.4); cubes by pressure only; freeze or dry butters/leather', source: 'KS_PUMPKIN', status: 'verified' },
  { id: 'mulberry', food: 'mulberry', fruitIds: ['mulberry-black', 'mulberry-white'], pH: { low: 3.37, high: 5.6 }, shelf: 'caution', rule: 'listed with whole berries, but reported pH reaches 5.6: freeze unless the lot measures 4.2 or less', stopAbovePH: 4.2, source: 'LOWACIDLIST', status: 'memory', note: 'the limit of 4.2 is a cautious rule of this project' },
  { id: 'upper-range-watch', food: 'overripe apricot, blackberry, sweet cherry, pear, plum (upper range)', fruitIds: ['apricot', 'blackberry', 'cherry-sweet', 'pear', 'plum-european', 'plum-japanese', 'greengage', 'mirabelle'], pH: { low: 3.3, high: 4.8 }, shelf: 'allowed', rule: 'the published process needs no acid; a lot measured above pH 4.2 is a warning and above 4.6 a stop', warnAbovePH: 4.2, stopAbovePH: 4.6, source: 'FDA_PH', status: 'memory', note: 'the 4.2 warning is a rule of this project' },
  { id: 'pineapple', food: 'ripe pineapple', fruitIds: ['pineapple'], pH: { low: 3.2, high: 4 }, shelf: 'allowed', rule: 'the published process has no added acid; one county list names ripe pineapple low-acid: the published process is kept', source: 'UC_LOWACID', status: 'verified', also: ['FDA_PH'] },
] as const satisfies readonly LowAcidRule[];

/** The rule of an id (the `lowAcidRule` of a fruit). RangeError when there is none. */
export function lowAcidRuleOf(id: string): LowAcidRule {
  const row = LOW_ACID_RULES.find((r) => r.id === id);
  if (!row) throw new RangeError(`"${id}" is not a low-acid rule`);
  return row;
}
