/**
 * What Wrenlatch put up in 2025, line by line: carry + made - eaten - given - sold - spoiled = on hand on 15 January 2026.
 * Demo values. The make days are laid out so that the fruit is there when its day comes; grams per jar are what the season
 * script draws (raw fruit with its trim), not recipes.
 */
import type { LotKind } from '#lib/ledger/lot.ts';
import { DEMO_CROPS } from './wrenlatch.ts';

export interface DemoLine {
  label: string;
  recipeId: string;
  /** Letters of its lot codes. */
  code: string;
  jar: 'HP' | 'Q4' | 'PT' | 'QT' | 'FZ' | 'FZK' | 'FZ8' | 'DR';
  /** Crops whose lots are drawn, in this order; bought fruit by its item code. */
  crops: readonly string[];
  carry: number;
  eaten: number;
  given: number;
  sold: number;
  spoiled: number;
  /** Per jar or pack, grams: raw fruit, sugar, water, and what is in the jar. */
  fruitG: number;
  sugarG: number;
  waterG: number;
  netG: number;
  /** Share of the raw fruit that is trim, per cent. */
  trimPercent: number;
  /** Day and jars of each batch, MM-DD in 2025. */
  makes: readonly (readonly [string, number])[];
  /** Shelves it stands on, in order of choice. */
  shelves: readonly string[];
  /** First day (MM-DD of 2025) on which jars made that year are opened, given or sold; default: ten days after the first batch. */
  openFrom?: string;
}

const jam = { jar: 'HP', sugarG: 180, waterG: 20, netG: 311, trimPercent: 5 } as const;
const syrup = { sugarG: 60, waterG: 160 } as const;
const frozen = { sugarG: 0, waterG: 0, shelves: ['chest'] } as const;
const dry = { jar: 'DR', sugarG: 0, waterG: 0, netG: 100, shelves: ['dry-cupboard'] } as const;

export const DEMO_LINES: readonly DemoLine[] = [
  { ...jam, label: 'Rhubarb-ginger jam', recipeId: 'rhubarb-ginger-jam', code: 'RHU', crops: ['rhubarb'], carry: 3, eaten: 9, given: 3, sold: 8, spoiled: 0, fruitG: 280, trimPercent: 25, makes: [['05-04', 8], ['05-18', 7], ['06-01', 7]], shelves: ['B1-S1'] },
  { ...jam, label: 'Strawberry jam', recipeId: 'strawberry-jam', code: 'STR', crops: ['strawberry'], carry: 4, eaten: 12, given: 4, sold: 9, spoiled: 1, fruitG: 230, makes: [['06-21', 7], ['06-25', 7], ['06-28', 6], ['07-02', 6]], shelves: ['B1-S1'] },
  { ...jam, label: 'Gooseberry jam', recipeId: 'gooseberry-jam', code: 'GSB', crops: ['gooseberry'], carry: 6, eaten: 5, given: 2, sold: 9, spoiled: 0, fruitG: 220, makes: [['07-05', 6], ['07-10', 6], ['07-14', 6]], shelves: ['B1-S1'] },
  { ...jam, label: 'Redcurrant jelly', recipeId: 'redcurrant-jelly', code: 'RCU', crops: ['currant-red'], carry: 5, eaten: 7, given: 4, sold: 8, spoiled: 0, fruitG: 340, trimPercent: 30, makes: [['07-11', 7], ['07-15', 7], ['07-19', 6]], shelves: ['B1-S2'] },
  { ...jam, label: 'Blackcurrant jam', recipeId: 'blackcurrant-jam', code: 'BCU', crops: ['currant-black'], carry: 7, eaten: 16, given: 6, sold: 18, spoiled: 1, fruitG: 205, trimPercent: 2, makes: [['07-12', 8], ['07-14', 8], ['07-16', 7], ['07-18', 7], ['07-21', 7], ['07-24', 7]], shelves: ['B2-S3'] },
  { ...jam, label: 'Raspberry jam', recipeId: 'raspberry-jam', code: 'RAS', crops: ['raspberry-red'], carry: 2, eaten: 19, given: 8, sold: 21, spoiled: 0, fruitG: 190, trimPercent: 2, makes: [['07-09', 7], ['07-12', 6], ['07-15', 7], ['07-19', 7], ['07-23', 7], ['07-28', 7], ['08-03', 7]], shelves: ['B2-S2'] },
  { ...jam, label: 'Blueberry-lemon conserve', recipeId: 'blueberry-lemon-conserve', code: 'BLU', crops: ['blueberry'], carry: 3, eaten: 5, given: 4, sold: 6, spoiled: 0, fruitG: 200, makes: [['07-31', 8], ['08-12', 8]], shelves: ['B1-S4'] },
  { ...jam, label: 'Tayberry jam', recipeId: 'tayberry-jam', code: 'TAY', crops: ['loganberry'], carry: 0, eaten: 9, given: 3, sold: 10, spoiled: 0, fruitG: 200, trimPercent: 4, makes: [['07-30', 8], ['08-09', 8], ['08-21', 8]], shelves: ['B2-S2'] },
  { ...jam, label: 'Sour cherry-almond conserve', recipeId: 'sour-cherry-almond-conserve', code: 'SCH', crops: ['cherry-sour'], carry: 1, eaten: 8, given: 5, sold: 11, spoiled: 1, fruitG: 220, trimPercent: 10, makes: [['07-16', 7], ['07-20', 6], ['07-26', 7], ['07-29', 6]], shelves: ['B2-S5'] },
  { ...jam, label: 'Mirabelle jam', recipeId: 'mirabelle-jam', code: 'MIR', crops: ['mirabelle'], carry: 0, eaten: 6, given: 4, sold: 9, spoiled: 0, fruitG: 220, trimPercent: 8, makes: [['08-14', 8], ['08-17', 7], ['08-20', 7]], shelves: ['B2-S4'] },
  { ...jam, label: 'Early plum jam', recipeId: 'plum-jam', code: 'PLM', crops: ['plum-early'], carry: 6, eaten: 9, given: 5, sold: 12, spoiled: 0, fruitG: 215, trimPercent: 6, makes: [['08-12', 7], ['08-15', 7], ['08-18', 7], ['08-22', 7]], shelves: ['B2-S4'] },
  { ...jam, label: 'Prune-plum butter', recipeId: 'prune-plum-butter', code: 'PLB', crops: ['plum-prune'], carry: 4, eaten: 8, given: 3, sold: 7, spoiled: 0, fruitG: 420, sugarG: 90, netG: 290, trimPercent: 14, makes: [['09-16', 8], ['09-19', 8], ['09-23', 8]], shelves: ['B2-S5'] },
  { ...jam, label: 'Damson jam', recipeId: 'damson-jam', code: 'DAM', crops: ['damson'], carry: 3, eaten: 9, given: 6, sold: 17, spoiled: 0, fruitG: 215, trimPercent: 10, makes: [['09-17', 8], ['09-19', 8], ['09-21', 8], ['09-23', 8], ['09-26', 7]], shelves: ['B2-S1'], openFrom: '11-21' },
  { ...jam, label: 'Crabapple jelly', recipeId: 'crabapple-jelly', code: 'CRB', crops: ['crabapple'], carry: 8, eaten: 6, given: 6, sold: 12, spoiled: 0, fruitG: 330, trimPercent: 35, makes: [['09-02', 8], ['09-06', 7], ['09-10', 8], ['09-14', 7]], shelves: ['B1-S2'] },
  { ...jam, label: 'Apple butter', recipeId: 'apple-butter', code: 'APB', crops: ['apple-early', 'apple-keeper'], carry: 5, eaten: 10, given: 6, sold: 11, spoiled: 0, fruitG: 420, sugarG: 80, netG: 290, trimPercent: 23, makes: [['08-31', 8], ['09-07', 7], ['09-16', 7], ['10-12', 7], ['10-19', 7]], shelves: ['B1-S3'] },
  { ...jam, label: 'Pear-ginger conserve', recipeId: 'pear-ginger-conserve', code: 'PGC', crops: ['pear-early', 'pear-mid', 'pear-late'], carry: 2, eaten: 4, given: 3, sold: 6, spoiled: 0, fruitG: 240, trimPercent: 15, makes: [['09-09', 6], ['09-20', 6], ['10-05', 6]], shelves: ['B1-S4'] },
  { ...jam, label: 'Quince jelly', recipeId: 'quince-jelly', code: 'QUJ', crops: ['quince'], carry: 4, eaten: 4, given: 5, sold: 8, spoiled: 0, fruitG: 380, trimPercent: 39, makes: [['10-19', 8], ['10-23', 7], ['10-26', 7]], shelves: ['B1-S3'] },
  { ...jam, label: 'Medlar jelly', recipeId: 'medlar-jelly', code: 'MED', crops: ['medlar'], carry: 1, eaten: 1, given: 2, sold: 1, spoiled: 0, fruitG: 450, trimPercent: 45, makes: [['11-16', 9]], shelves: ['B1-S3'] },
  { ...jam, label: 'Seville marmalade (Feb)', recipeId: 'seville-marmalade', code: 'ORA', crops: ['orange-seville'], carry: 3, eaten: 17, given: 7, sold: 15, spoiled: 0, fruitG: 130, waterG: 110, trimPercent: 2, makes: [['02-01', 9], ['02-02', 8], ['02-08', 9], ['02-09', 8], ['02-15', 8]], shelves: ['B1-S4'] },
  { ...jam, label: 'Damson paste', recipeId: 'damson-paste', code: 'DAP', jar: 'Q4', crops: ['damson'], carry: 0, eaten: 3, given: 5, sold: 6, spoiled: 0, fruitG: 240, sugarG: 100, netG: 158, trimPercent: 14, makes: [['09-27', 16]], shelves: ['kitchen-fridge'] },
  { ...jam, label: 'Quince paste', recipeId: 'quince-paste', code: 'QUP', jar: 'Q4', crops: ['quince'], carry: 3, eaten: 3, given: 6, sold: 5, spoiled: 0, fruitG: 290, sugarG: 100, netG: 158, trimPercent: 39, makes: [['10-25', 18]], shelves: ['kitchen-fridge'] },
  { ...syrup, label: 'Sour cherries in syrup', recipeId: 'sour-cherries-in-syrup', code: 'SCS', jar: 'PT', crops: ['cherry-sour'], carry: 4, eaten: 7, given: 1, sold: 0, spoiled: 0, fruitG: 420, netG: 490, trimPercent: 10, makes: [['07-21', 7], ['07-24', 7]], shelves: ['B3-S4'] },
  { label: 'Apple sauce', recipeId: 'apple-sauce', code: 'APS', jar: 'PT', crops: ['apple-dessert', 'apple-early', 'apple-keeper'], carry: 11, eaten: 22, given: 3, sold: 0, spoiled: 1, fruitG: 680, sugarG: 0, waterG: 60, netG: 495, trimPercent: 22, makes: [['08-30', 9], ['09-27', 36], ['10-18', 9]], shelves: ['B3-S1', 'B3-S2', 'B3-S3'] },
  { ...syrup, label: 'Pears in light syrup', recipeId: 'pears-in-light-syrup', code: 'PES', jar: 'PT', crops: ['pear-early', 'pear-mid', 'pear-late'], carry: 6, eaten: 14, given: 4, sold: 0, spoiled: 2, fruitG: 480, netG: 490, trimPercent: 23, makes: [['09-11', 9], ['09-26', 9], ['09-30', 9], ['10-04', 9], ['10-11', 9]], shelves: ['B3-S5', 'B3-S4'] },
  { ...syrup, label: 'Plums in syrup', recipeId: 'plums-in-syrup', code: 'PLS', jar: 'QT', crops: ['plum-early', 'plum-prune'], carry: 6, eaten: 9, given: 0, sold: 0, spoiled: 1, fruitG: 850, sugarG: 90, waterG: 260, netG: 985, trimPercent: 6, makes: [['08-17', 7], ['09-18', 7], ['09-22', 7]], shelves: ['B4-S1'] },
  { ...syrup, label: 'Apple slices in syrup', recipeId: 'apple-slices-in-syrup', code: 'ASL', jar: 'QT', crops: ['apple-keeper'], carry: 8, eaten: 4, given: 0, sold: 0, spoiled: 0, fruitG: 1150, sugarG: 80, waterG: 200, netG: 985, trimPercent: 23, makes: [['10-14', 7], ['10-17', 7]], shelves: ['B4-S2', 'B4-S1'] },
  { label: 'Apple juice, canned', recipeId: 'apple-juice-canned', code: 'APJ', jar: 'QT', crops: ['apple-cider-sharp'], carry: 14, eaten: 28, given: 4, sold: 0, spoiled: 0, fruitG: 1610, sugarG: 0, waterG: 0, netG: 998, trimPercent: 37, makes: [['10-16', 28], ['10-21', 28], ['10-25', 28]], shelves: ['B4-S3', 'B4-S4', 'B4-S5', 'B4-S2'] },
  { ...frozen, label: 'Raspberry freezer jam', recipeId: 'raspberry-freezer-jam', code: 'RFJ', jar: 'FZ8', crops: ['raspberry-red'], carry: 0, eaten: 12, given: 0, sold: 0, spoiled: 0, fruitG: 120, sugarG: 170, netG: 285, trimPercent: 0, makes: [['07-17', 10], ['07-27', 10]] },
  { ...frozen, label: 'Frozen raspberries 500 g', recipeId: 'frozen-raspberries', code: 'RFZ', jar: 'FZ', crops: ['raspberry-red'], carry: 4, eaten: 14, given: 0, sold: 0, spoiled: 0, fruitG: 500, netG: 500, trimPercent: 0, makes: [['07-16', 6], ['07-20', 6], ['07-24', 6], ['07-28', 6], ['08-02', 6], ['08-09', 6]] },
  { ...frozen, label: 'Frozen blackcurrants 500 g', recipeId: 'frozen-blackcurrants', code: 'BFZ', jar: 'FZ', crops: ['currant-black'], carry: 6, eaten: 8, given: 0, sold: 0, spoiled: 0, fruitG: 511, netG: 500, trimPercent: 2, makes: [['07-15', 10], ['07-18', 10], ['07-22', 10], ['07-25', 10]] },
  { ...frozen, label: 'Frozen sour cherries 500 g', recipeId: 'frozen-sour-cherries', code: 'CFZ', jar: 'FZ', crops: ['cherry-sour'], carry: 0, eaten: 4, given: 0, sold: 0, spoiled: 0, fruitG: 556, netG: 500, trimPercent: 10, makes: [['07-18', 7], ['07-25', 7]] },
  { ...frozen, label: 'Frozen apple slices 1 kg', recipeId: 'frozen-apple-slices', code: 'AFZ', jar: 'FZK', crops: ['apple-keeper'], carry: 3, eaten: 5, given: 0, sold: 0, spoiled: 0, fruitG: 1300, netG: 1000, trimPercent: 23, makes: [['10-20', 8], ['10-22', 8]] },
  { ...frozen, label: 'Frozen plum halves 1 kg', recipeId: 'frozen-plum-halves', code: 'PFZ', jar: 'FZK', crops: ['plum-early', 'plum-prune'], carry: 2, eaten: 3, given: 0, sold: 0, spoiled: 0, fruitG: 1065, netG: 1000, trimPercent: 6, makes: [['08-21', 6], ['09-20', 6]] },
  { ...dry, label: 'Dried apple rings 100 g', recipeId: 'dried-apple-rings', code: 'ADR', crops: ['apple-dessert', 'apple-trial'], carry: 5, eaten: 21, given: 5, sold: 12, spoiled: 0, fruitG: 750, trimPercent: 23, makes: [['10-01', 12], ['10-08', 12], ['10-13', 12], ['10-24', 12]] },
  { ...dry, label: 'Dried pears 100 g', recipeId: 'dried-pears', code: 'PDR', crops: ['pear-mid', 'pear-late'], carry: 0, eaten: 9, given: 2, sold: 4, spoiled: 0, fruitG: 600, trimPercent: 10, makes: [['09-28', 11], ['10-07', 11]] },
  { ...dry, label: 'Prunes 100 g', recipeId: 'prunes', code: 'PRU', crops: ['plum-prune'], carry: 2, eaten: 11, given: 2, sold: 6, spoiled: 0, fruitG: 330, trimPercent: 6, makes: [['09-13', 10], ['09-17', 10], ['09-24', 10]] },
  { ...dry, label: 'Fruit leather roll', recipeId: 'fruit-leather', code: 'LEA', crops: ['apple-trial'], carry: 0, eaten: 34, given: 6, sold: 0, spoiled: 2, fruitG: 350, netG: 50, trimPercent: 23, makes: [['10-06', 20], ['10-15', 20], ['10-27', 20]] },
];

export const madeInYear = (line: DemoLine): number => line.makes.reduce((n, [, jars]) => n + jars, 0);
export const leftAtEnd = (line: DemoLine): number =>
  line.carry + madeInYear(line) - line.eaten - line.given - line.sold - line.spoiled;
export const isGlass = (line: DemoLine): boolean => ['HP', 'Q4', 'PT', 'QT'].includes(line.jar);
/** Fruit paste has no published process: its jars stand in the fridge. */
export const isShelved = (line: DemoLine): boolean => isGlass(line) && line.shelves[0] !== 'kitchen-fridge';
export const lotKindOf = (line: DemoLine): Extract<LotKind, 'jars' | 'cold-jars' | 'frozen' | 'dried'> =>
  isShelved(line) ? 'jars' : isGlass(line) ? 'cold-jars' : line.jar === 'DR' ? 'dried' : 'frozen';
/** Lines whose fruit may lie above pH 4.2: the season's records hold a reading of each batch (demo value). */
export const DEMO_PH: Readonly<Record<string, number>> = { MIR: 3.4, PLM: 3.2, PLB: 3.5, PGC: 3.9, MED: 3.6, ORA: 3.1 };
/** Food of a line, for its colour: that of its first crop, or the bought fruit itself. */
export const foodOfLine = (line: DemoLine): string =>
  DEMO_CROPS.find((c) => c.code === line.crops[0])?.foodId ?? (line.crops[0] as string);
