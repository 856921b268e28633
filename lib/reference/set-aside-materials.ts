/**
 * What is set aside from a pan, a press or a board, and what it is dried to. Fresh moistures with their range: apple core and peel
 * 0.82 and home-press pomace 0.74 (0.66-0.80) from memory and estimate, orange rind 0.725 USDA SR26, peeled apple rings
 * 86.67 % USDA SR26; pear, zest and herbs as the dryer manuals that give their hours; quince the whole fruit's, USDA SR26. Targets: 8 % for milling and for peel (common practice, 5-8 %), 20 % for pliable fruit.
 */
import type { IsothermFood } from './dried-storage.ts';
import type { Cited } from './source.ts';

export interface SetAsideMaterial extends Cited {
  readonly id: string;
  readonly name: string;
  /** Three letters of its lot codes. */
  readonly letters: string;
  /** Row of the dryer table for its first guess. */
  readonly dryer: string;
  /** Moisture, share of the wet weight: fresh, and where it is dry. */
  readonly w0: number;
  readonly wt: number;
  /** Lowest and highest fresh moisture that is met; pomace from memory, the others estimates around the row's own figure. */
  readonly w0Range: readonly [number, number];
  /** What the lot is once dry: its name, and the stock a recipe draws on. */
  readonly driedName: string;
  readonly driedItem: string;
  /** Loaded on a tray, kg a m², low to high; estimates. */
  readonly kgPerM2: readonly [number, number];
  /** Asked before it is dried or ground. */
  readonly seeds: boolean;
  readonly rind: boolean;
  /** Cut on purpose, for its own sake: no trim. */
  readonly cut: boolean;
  /** Isotherm it is taken to follow. */
  readonly isotherm: IsothermFood;
  /** Tied in bundles it dries hanging. */
  readonly hangs: boolean;
}

export const SET_ASIDE_MATERIALS = [
  {
    id: 'apple-peel-core',
    name: 'Apple peel and core',
    letters: 'APC',
    dryer: 'apple-peel-core',
    w0: 0.82,
    wt: 0.08,
    w0Range: [0.8, 0.84],
    driedName: 'Dried apple peel and core powder',
    driedItem: 'apple-powder',
    kgPerM2: [2, 3],
    seeds: true,
    rind: false,
    cut: false,
    isotherm: 'peel-core',
    hangs: false,
    source: 'ESTIMATE',
    status: 'estimate',
  },
  {
    id: 'apple-pomace',
    name: 'Apple pomace',
    letters: 'APM',
    dryer: 'press-pomace',
    w0: 0.74,
    wt: 0.08,
    w0Range: [0.66, 0.8],
    driedName: 'Dried apple pomace powder',
    driedItem: 'apple-powder',
    kgPerM2: [5, 8],
    seeds: true,
    rind: false,
    cut: false,
    isotherm: 'peel-core',
    hangs: false,
    source: 'ESTIMATE',
    status: 'estimate',
  },
  {
    id: 'citrus-rind',
    name: 'Citrus rind',
    letters: 'RND',
    dryer: 'orange-rind',
    w0: 0.725,
    wt: 0.08,
    w0Range: [0.7, 0.75],
    driedName: 'Dried citrus rind',
    driedItem: 'citrus-rind',
    kgPerM2: [2, 3],
    seeds: false,
    rind: true,
    cut: false,
    isotherm: 'citrus-peel',
    hangs: false,
    source: 'USDA',
    status: 'verified',
  },
  {
    id: 'apple-rings',
    name: 'Peeled apple rings',
    letters: 'RNG',
    dryer: 'apple-slices',
    w0: 0.8667,
    wt: 0.2,
    w0Range: [0.86, 0.875],
    driedName: 'Dried apple rings',
    driedItem: 'dried-apple',
    kgPerM2: [3, 5],
    seeds: false,
    rind: false,
    cut: true,
    isotherm: 'apple',
    hangs: false,
    source: 'USDA',
    status: 'verified',
  },
  {
    id: 'pear-slices',
    name: 'Pear slices',
    letters: 'PRS',
    dryer: 'pear-slices',
    w0: 0.84,
    wt: 0.2,
    w0Range: [0.82, 0.86],
    driedName: 'Dried pear slices',
    driedItem: 'dried-pear',
    kgPerM2: [3, 5],
    seeds: false,
    rind: false,
    cut: true,
    isotherm: 'apple',
    hangs: false,
    source: 'UNOFFICIAL_PAGE',
    status: 'secondary',
  },
  {
    id: 'quince-peel-core',
    name: 'Quince peel and core',
    letters: 'QPC',
    dryer: 'apple-peel-core',
    w0: 0.838,
    wt: 0.08,
    w0Range: [0.8, 0.86],
    driedName: 'Dried quince peel and core',
    driedItem: 'quince-powder',
    kgPerM2: [2, 3],
    seeds: true,
    rind: false,
    cut: false,
    isotherm: 'peel-core',
    hangs: false,
    source: 'USDA',
    status: 'estimate',
    note: 'water of the whole fruit, hours of apple peel',
  },
  {
    id: 'citrus-zest',
    name: 'Citrus zest',
    letters: 'ZST',
    dryer: 'citrus-zest',
    w0: 0.74,
    wt: 0.08,
    w0Range: [0.7, 0.78],
    driedName: 'Dried citrus zest',
    driedItem: 'citrus-zest',
    kgPerM2: [2, 3],
    seeds: false,
    rind: true,
    cut: false,
    isotherm: 'citrus-peel',
    hangs: false,
    source: 'UNOFFICIAL_PAGE',
    status: 'secondary',
  },
  {
    id: 'herb-leaf',
    name: 'Leafy herb',
    letters: 'HRB',
    dryer: 'herb-leaf',
    w0: 0.85,
    wt: 0.08,
    w0Range: [0.8, 0.9],
    driedName: 'Dried herb',
    driedItem: 'herb-dried',
    kgPerM2: [0.5, 1],
    seeds: false,
    rind: false,
    cut: true,
    isotherm: 'herb',
    hangs: true,
    source: 'UNOFFICIAL_PAGE',
    status: 'secondary',
  },
] as const satisfies readonly SetAsideMaterial[];

/** Zest by a fine grater, share of the fruit's weight: orange 3-5 %, lemon 4-6 %; estimate. Twice the most has pith in it. */
export const ZEST_SHARE = { low: 0.03, high: 0.06, doubtful: 0.12, source: 'ESTIMATE', status: 'estimate' } as const;

/** What the trim of a batch is: by its recipe, else quince where only quince went in; undefined where nothing is known of it. */
export function trimMaterial(
  byProducts: readonly string[],
  foodIds: readonly (string | null)[],
): SetAsideMaterial | undefined {
  const known = SET_ASIDE_MATERIALS.find((m) => byProducts.includes(m.id));
  const quince = foodIds.length > 0 && foodIds.every((id) => id === 'quince');
  return known ?? (quince ? setAsideMaterial('quince-peel-core') : undefined);
}

/** RangeError for a material that is not of the table. */
export function setAsideMaterial(id: string): SetAsideMaterial {
  const row = SET_ASIDE_MATERIALS.find((m) => m.id === id);
  if (!row) throw new RangeError(`"${id}" is not a material of the table`);
  return row;
}

/** Home rack press: per cent of the fruit's weight that runs off as juice. 55 just fair, 67 good (Good Fruit Growers, read); 62 between. */
export const PRESS_JUICE = { low: 0.55, typ: 0.62, high: 0.67, source: 'GOA', status: 'verified' } as const;
/** Left on cloth, racks and hands; estimate. */
export const PRESS_LOSS = 0.02;
