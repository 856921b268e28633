/**
 * How years differ, by kind of fruit, until the place's own seasons say it. CV between years of one orchard: estimate of
 * this project (small fruit .25, apple and pear .30, plum .45, cherry .35, apricot .6, peach .45, citrus .2). Failed years:
 * from memory, weak (1 in 7 to 1 in 20, at about a quarter of the crop). Mid-date: 7 days between years, the middle of the
 * 5.5 to 10 measured on apples and pears at Klein-Altendorf, 1958-2019.
 */
export interface YearSpread {
  cv: number;
  failProb: number;
}

export const FAILED_SHARE = 0.25;
export const MID_SD_DAYS = 7;
/** A tent over the window has a tenth before 0.224 of it and a tenth after 0.776: 10 to 90 % takes 0.55 of its days. */
export const WIDTH_OF_WINDOW = 0.55;

const SMALL: YearSpread = { cv: 0.25, failProb: 0.05 };
const POME: YearSpread = { cv: 0.3, failProb: 0.08 };
const PLUM: YearSpread = { cv: 0.45, failProb: 0.12 };

const BY_NAME: readonly (readonly [start: string, spread: YearSpread])[] = [
  ['apple', POME],
  ['crabapple', POME],
  ['pear', POME],
  ['quince', POME],
  ['medlar', POME],
  ['plum', PLUM],
  ['damson', PLUM],
  ['greengage', PLUM],
  ['mirabelle', PLUM],
  ['sloe', PLUM],
  ['cherry', { cv: 0.35, failProb: 0.12 }],
  ['apricot', { cv: 0.6, failProb: 0.14 }],
  ['peach', { cv: 0.45, failProb: 0.12 }],
  ['nectarine', { cv: 0.45, failProb: 0.12 }],
  ['orange', { cv: 0.2, failProb: 0.05 }],
  ['lemon', { cv: 0.2, failProb: 0.05 }],
  ['mandarin', { cv: 0.2, failProb: 0.05 }],
];

/** Spread between years of a food; small fruit for what is not named. */
export const yearSpread = (foodId: string): YearSpread =>
  BY_NAME.find(([start]) => foodId.startsWith(start))?.[1] ?? SMALL;
