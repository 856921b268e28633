/**
 * What never goes on the shelf, whatever the recipe says. The first five rows are read in extension guidance; the rest are
 * from memory of AIB 539 and NCHFP pages (sure). This list governs before every other table.
 */
import type { Cited } from './source.ts';

export type NeverShelfKind = 'anything' | 'butter' | 'puree' | 'juice' | 'syrup' | 'ordinary jam';

export interface NeverShelfRow extends Cited {
  readonly id: string;
  readonly what: string;
  /** Fruits of the fruit table the row names, with the kinds of preserve it excludes. */
  readonly excludes?: { readonly fruitIds: readonly string[]; readonly kinds: readonly NeverShelfKind[] };
}

const sure = { source: 'AIB539', status: 'memory' } as const;

export const NEVER_SHELF = [
  { id: 'pumpkin-butter', what: 'pumpkin or squash butter or puree', source: 'KS_PUMPKIN', status: 'verified' },
  { id: 'banana-butter', what: 'banana butter or puree', source: 'NCHFP_PUREE', status: 'verified' },
  {
    id: 'white-peach',
    what: 'white-flesh peach or nectarine, anything made of it',
    excludes: { fruitIds: ['peach-white'], kinds: ['anything'] },
    source: 'WI_PEACH',
    status: 'verified',
    also: ['ME_PEACH'],
  },
  {
    id: 'dark-elderberry',
    what: 'dark elderberry juice, syrup, puree, or jam of an ordinary recipe',
    excludes: {
      fruitIds: ['elderberry-european', 'elderberry-american'],
      kinds: ['juice', 'syrup', 'puree', 'ordinary jam'],
    },
    source: 'UMN_ELDER',
    status: 'verified',
    also: ['OSU_ELDER'],
  },
  {
    id: 'low-acid-puree',
    what: 'melon, papaya, ripe mango, coconut, fig or Asian-pear puree',
    excludes: { fruitIds: ['melon', 'watermelon', 'fig', 'pear-asian'], kinds: ['puree'] },
    source: 'NCHFP_PUREE',
    status: 'verified',
  },
  { id: 'uncooked-jam', what: 'uncooked (freezer) jam or jelly', ...sure },
  {
    id: 'starch-thickened',
    what: 'anything thickened before canning with flour, cornstarch, tapioca or chia (the cook-type modified starch of tested pie fillings alone is allowed)',
    ...sure,
  },
  {
    id: 'dairy-or-egg',
    what: 'curd and spreads with butter, egg or dairy, unless a tested short-life recipe',
    ...sure,
  },
  {
    id: 'gelatine-or-sugar-free',
    what: 'spreads set with gelatine or without sugar, not from a tested recipe',
    ...sure,
  },
  { id: 'alcohol-or-oil', what: 'fruit in alcohol only, fruit in oil', ...sure },
  {
    id: 'more-low-acid',
    what: 'any recipe with more low-acid ingredient (vegetables, herbs by volume; nuts as published excepted) than the tested one',
    ...sure,
  },
  {
    id: 'untested-closure',
    what: 'anything sealed by paraffin, inversion, oven, dishwasher or open kettle',
    source: 'MO_PARAFFIN',
    status: 'memory',
    note: 'paraffin read, the rest from memory (sure)',
  },
] as const satisfies readonly NeverShelfRow[];

/** The rows that exclude a kind of preserve of a fruit; empty when none does. */
export const neverShelfFor = (fruitId: string, kind: NeverShelfKind): readonly NeverShelfRow[] =>
  NEVER_SHELF.filter((row: NeverShelfRow) => {
    const { fruitIds, kinds } = row.excludes ?? { fruitIds: [], kinds: [] };
    return fruitIds.includes(fruitId) && (kinds.includes('anything') || kinds.includes(kind));
  });
