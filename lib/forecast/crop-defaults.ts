/**
 * What a crop is taken to do before its own seasons say otherwise: length of the picking window, spread between years, odds
 * of a failed year. All weak, all meant to be replaced by the user's records (`learnPrior`).
 *
 * windowDays: 5-95 % of one cultivar's crop. yearCv: between years, one orchard, estimate of this project (apple and pear .30,
 * biennial cultivars .6, plum .45, apricot .6, cherry .35, peach .45, small fruit .25, citrus .2). midSd: sd of the picking
 * date between years, days. failProb and failShare: a failed year 1 in 7 to 20 at about a quarter crop, from memory, weak.
 */
import type { FruitId } from '#lib/reference/fruit-list.ts';
import type { TableEntry } from './learn-prior.ts';

export type FigureStatus = 'verified' | 'computed' | 'memory' | 'estimate';

export interface CropDefaults {
  readonly kind: string;
  readonly fruits: readonly FruitId[];
  readonly windowDays: number;
  readonly windowRange: readonly [number, number];
  readonly windowStatus: FigureStatus;
  /** Where the window was read; empty when from memory. */
  readonly windowSource: string;
  readonly yearCv: number;
  readonly midSd: number;
  readonly midSdStatus: FigureStatus;
  readonly failProb: number;
}

/** Share of a crop that a failed year brings. From memory, weak. */
export const FAIL_SHARE = 0.25;
/** Between-year CV of alternate-bearing apples and pears. Estimate. */
export const BIENNIAL_CV = 0.6;
/**
 * Picking dates measured: sd between years, mean over cultivars of the long-term phenology observations at Klein-Altendorf 1958-2019
 * (doi:10.60507/FK2/MZIELI): apple 7.0, 8.3, 5.7, 8.9, 5.5 (five cultivars), pear 10.4, 7.8 (two).
 */
const APPLE_MID_SD = 7.1;
const PEAR_MID_SD = 9.1;
/** Not measured: tree fruit between the two above, small fruit 5-7 days from memory. */
const TREE_MID_SD = 8;
const SMALL_MID_SD = 6;

const STRAWBERRY_SOURCES =
  "New Mexico fruit growers' notes on strawberry types, 2011; University of Massachusetts, strawberries through the growing season";

const tree = { midSd: TREE_MID_SD, midSdStatus: 'estimate' } as const;
const small = { yearCv: 0.25, midSd: SMALL_MID_SD, midSdStatus: 'memory', failProb: 0.05 } as const;
const memory = { windowStatus: 'memory', windowSource: '' } as const;
const read = (windowSource: string) => ({ windowStatus: 'verified', windowSource }) as const;

// biome-ignore format: one crop to a line
export const CROP_DEFAULTS: readonly CropDefaults[] = [
  { kind: 'strawberry, June-bearing', fruits: ['strawberry'], windowDays: 21, windowRange: [14, 28], ...read(STRAWBERRY_SOURCES), ...small },
  { kind: 'strawberry, day-neutral', fruits: [], windowDays: 115, windowRange: [90, 130], ...read('gardening page on day-neutral strawberries; University of Massachusetts, as above'), ...small },
  { kind: 'raspberry, summer', fruits: ['raspberry-red', 'raspberry-black'], windowDays: 28, windowRange: [21, 35], ...memory, ...small },
  { kind: 'raspberry, autumn', fruits: [], windowDays: 45, windowRange: [30, 60], ...memory, ...small },
  { kind: 'blackberry', fruits: ['blackberry', 'loganberry'], windowDays: 28, windowRange: [21, 35], ...read('farming wiki, blackberry yield and harvest'), ...small },
  { kind: 'currant, red', fruits: ['currant-red'], windowDays: 12, windowRange: [7, 21], ...memory, ...small },
  { kind: 'currant, black', fruits: ['currant-black'], windowDays: 12, windowRange: [7, 18], ...memory, ...small },
  { kind: 'gooseberry', fruits: ['gooseberry'], windowDays: 25, windowRange: [14, 40], ...memory, ...small },
  { kind: 'cherry, sweet', fruits: ['cherry-sweet'], windowDays: 9, windowRange: [6, 14], ...read('weblog on when to harvest fruit'), yearCv: 0.35, ...tree, failProb: 0.14 },
  { kind: 'cherry, sour', fruits: ['cherry-sour'], windowDays: 8, windowRange: [5, 12], ...memory, yearCv: 0.35, ...tree, failProb: 0.1 },
  { kind: 'apricot', fruits: ['apricot'], windowDays: 10, windowRange: [7, 14], ...memory, yearCv: 0.6, ...tree, failProb: 0.14 },
  { kind: 'plum, European', fruits: ['plum-european', 'damson', 'mirabelle', 'greengage'], windowDays: 10, windowRange: [7, 16], ...memory, yearCv: 0.45, ...tree, failProb: 0.14 },
  { kind: 'plum, Japanese', fruits: ['plum-japanese'], windowDays: 12, windowRange: [8, 18], ...memory, yearCv: 0.45, ...tree, failProb: 0.14 },
  { kind: 'peach', fruits: ['peach-yellow', 'peach-white', 'nectarine'], windowDays: 10, windowRange: [7, 14], ...memory, yearCv: 0.45, ...tree, failProb: 0.14 },
  { kind: 'pear', fruits: ['pear'], windowDays: 8, windowRange: [5, 14], ...memory, yearCv: 0.3, midSd: PEAR_MID_SD, midSdStatus: 'computed', failProb: 0.1 },
  { kind: 'apple', fruits: ['apple-dessert', 'apple-cooking', 'apple-cider-sweet'], windowDays: 14, windowRange: [7, 25], ...memory, yearCv: 0.3, midSd: APPLE_MID_SD, midSdStatus: 'computed', failProb: 0.1 },
  { kind: 'quince', fruits: ['quince'], windowDays: 14, windowRange: [10, 25], ...memory, yearCv: 0.3, ...tree, failProb: 0.1 },
  { kind: 'grape', fruits: ['grape-vinifera', 'grape-slipskin'], windowDays: 10, windowRange: [7, 21], ...memory, yearCv: 0.3, ...tree, failProb: 0.1 },
  { kind: 'fig, main crop', fruits: ['fig'], windowDays: 50, windowRange: [30, 70], ...memory, yearCv: 0.3, ...tree, failProb: 0.1 },
  { kind: 'persimmon', fruits: ['persimmon-japanese'], windowDays: 30, windowRange: [20, 45], ...memory, yearCv: 0.3, ...tree, failProb: 0.1 },
  { kind: 'rhubarb', fruits: ['rhubarb'], windowDays: 60, windowRange: [56, 70], ...read('University of Illinois Extension, rhubarb'), ...small },
  { kind: 'orange, mandarin', fruits: ['orange-sweet', 'mandarin'], windowDays: 70, windowRange: [40, 120], ...memory, yearCv: 0.2, ...tree, failProb: 0.05 },
  { kind: 'lemon', fruits: ['lemon-whole'], windowDays: 300, windowRange: [200, 365], ...memory, yearCv: 0.2, ...tree, failProb: 0.05 },
];

/** For a fruit without a row: the middle of the tree fruits, all figures estimates. */
export const OTHER_CROP: CropDefaults = {
  kind: 'other',
  fruits: [],
  windowDays: 14,
  windowRange: [7, 28],
  windowStatus: 'estimate',
  windowSource: '',
  yearCv: 0.35,
  ...tree,
  failProb: 0.1,
};

/** The row of a fruit's usual kind; `OTHER_CROP` when there is none. */
export const cropDefaultsOf = (fruit: FruitId): CropDefaults =>
  CROP_DEFAULTS.find((row) => row.fruits.includes(fruit)) ?? OTHER_CROP;

/** Days from 10 to 90 % over days from 5 to 95 %, of a normal curve: 2 x 1.2816 / (2 x 1.6449). */
const WIDTH_OF_WINDOW = 0.7791;

export interface Block {
  readonly defaults: CropDefaults;
  /** Expected kg in a middling year. */
  readonly expectedKg: number;
  /** First and last day the grower expects to pick, on any one day count. */
  readonly window: { readonly from: number; readonly to: number };
  /** A marked alternate bearer. */
  readonly biennial?: boolean;
}

/** Table entry of a block whose window the grower has given. Throws RangeError when it ends before it starts. */
export function tableEntry(block: Block): TableEntry {
  const { from, to } = block.window;
  if (to < from) throw new RangeError(`The picking window ends ${from - to} days before it starts`);
  return {
    expected: block.expectedKg,
    cv: block.biennial ? Math.max(BIENNIAL_CV, block.defaults.yearCv) : block.defaults.yearCv,
    mid: (from + to) / 2,
    midSd: block.defaults.midSd,
    width: Math.max(2, WIDTH_OF_WINDOW * (to - from + 1)),
    failProb: block.defaults.failProb,
    failShare: FAIL_SHARE,
  };
}
