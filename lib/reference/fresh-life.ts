/**
 * How long sound fresh fruit keeps, at two anchors: the recommended cold store (its temperature, and the printed range of
 * days) and 20 °C. The cold anchor is published (Table L3.3 with USDA/ASHRAE content, UC Davis, extension; the source beside
 * each row); every figure at 20 °C is an estimate of this project. 43 rows. A food may have two rows (long-keeping and
 * chilling-sensitive apples): the first is the ordinary one.
 */
import type { Cited } from './source.ts';

export interface FreshLifeRow extends Cited {
  readonly crop: string;
  readonly foodIds: readonly string[];
  /** Temperature of the cold anchor, °C. */
  readonly storeTempC: number;
  readonly humidityPct: number;
  /** Printed range of days at the cold anchor. */
  readonly daysLow: number;
  readonly daysHigh: number;
  /** Estimate of this project in every row. */
  readonly daysAt20C: number;
}

// biome-ignore format: one printed row to a line
export const FRESH_LIFE = [
  { crop: 'apple, long keeping', foodIds: ['apple-dessert', 'apple-cooking', 'apple-cider-sweet'], storeTempC: -0.5, humidityPct: 92, daysLow: 90, daysHigh: 240, daysAt20C: 25, source: 'L33', status: 'verified', also: ['DAVIS'] },
  { crop: 'apple, chilling sensitive cultivars', foodIds: ['apple-dessert', 'apple-cooking'], storeTempC: 4, humidityPct: 92, daysLow: 30, daysHigh: 60, daysAt20C: 16, source: 'DAVIS', status: 'verified' },
  { crop: 'Asian pear', foodIds: ['pear-asian'], storeTempC: 1, humidityPct: 92, daysLow: 120, daysHigh: 180, daysAt20C: 14, source: 'DAVIS', status: 'verified' },
  { crop: 'pear European', foodIds: ['pear'], storeTempC: -1, humidityPct: 92, daysLow: 60, daysHigh: 210, daysAt20C: 7, source: 'L33', status: 'verified' },
  { crop: 'quince', foodIds: ['quince'], storeTempC: -0.5, humidityPct: 90, daysLow: 60, daysHigh: 90, daysAt20C: 25, source: 'QUINCE_CARGO', status: 'verified' },
  { crop: 'medlar (hard, to blet)', foodIds: ['medlar'], storeTempC: 2, humidityPct: 90, daysLow: 14, daysHigh: 60, daysAt20C: 18, source: 'MEMORY', status: 'memory', note: 'sureness: low' },
  { crop: 'crabapple', foodIds: ['crabapple'], storeTempC: 0, humidityPct: 92, daysLow: 30, daysHigh: 60, daysAt20C: 12, source: 'MEMORY', status: 'memory', note: 'sureness: low' },
  { crop: 'apricot', foodIds: ['apricot'], storeTempC: -0.3, humidityPct: 90, daysLow: 7, daysHigh: 21, daysAt20C: 3, source: 'WA', status: 'verified', also: ['L33', 'DAVIS'] },
  { crop: 'peach', foodIds: ['peach-yellow', 'peach-white'], storeTempC: -0.3, humidityPct: 90, daysLow: 14, daysHigh: 28, daysAt20C: 4, source: 'L33', status: 'verified', also: ['DEG1'] },
  { crop: 'nectarine', foodIds: ['nectarine'], storeTempC: -0.3, humidityPct: 90, daysLow: 14, daysHigh: 28, daysAt20C: 4, source: 'L33', status: 'verified' },
  { crop: 'plum, damson, mirabelle', foodIds: ['plum-european', 'plum-japanese', 'damson', 'greengage', 'mirabelle'], storeTempC: -0.5, humidityPct: 92, daysLow: 14, daysHigh: 35, daysAt20C: 5, source: 'DEG1', status: 'verified', also: ['CARGOPL'] },
  { crop: 'sweet cherry', foodIds: ['cherry-sweet'], storeTempC: -0.7, humidityPct: 92, daysLow: 14, daysHigh: 21, daysAt20C: 3, source: 'L33', status: 'verified', also: ['WA'] },
  { crop: 'sour cherry', foodIds: ['cherry-sour'], storeTempC: 0, humidityPct: 92, daysLow: 3, daysHigh: 7, daysAt20C: 2, source: 'L33', status: 'verified', also: ['WA'] },
  { crop: 'strawberry', foodIds: ['strawberry'], storeTempC: 0, humidityPct: 92, daysLow: 5, daysHigh: 7, daysAt20C: 1.5, source: 'L33', status: 'verified' },
  { crop: 'raspberry', foodIds: ['raspberry-red', 'raspberry-black'], storeTempC: 0, humidityPct: 92, daysLow: 2, daysHigh: 5, daysAt20C: 1, source: 'BUSH', status: 'verified', also: ['OMAFRA'] },
  { crop: 'blackberry', foodIds: ['blackberry'], storeTempC: -0.3, humidityPct: 92, daysLow: 2, daysHigh: 6, daysAt20C: 1, source: 'L33', status: 'verified', also: ['DAVIS'] },
  { crop: 'boysenberry, loganberry, tayberry', foodIds: ['loganberry'], storeTempC: -0.3, humidityPct: 95, daysLow: 2, daysHigh: 3, daysAt20C: 1, source: 'WA', status: 'verified', also: ['L33'] },
  { crop: 'blueberry', foodIds: ['blueberry'], storeTempC: -0.3, humidityPct: 92, daysLow: 10, daysHigh: 28, daysAt20C: 4, source: 'DAVIS', status: 'verified', also: ['OMAFRA'] },
  { crop: 'cranberry', foodIds: ['cranberry'], storeTempC: 3, humidityPct: 92, daysLow: 60, daysHigh: 112, daysAt20C: 21, source: 'L33', status: 'verified', also: ['WA'] },
  { crop: 'currant red/white/black', foodIds: ['currant-red', 'currant-black'], storeTempC: -0.3, humidityPct: 92, daysLow: 7, daysHigh: 14, daysAt20C: 2.5, source: 'L33', status: 'verified', also: ['WA'] },
  { crop: 'gooseberry', foodIds: ['gooseberry'], storeTempC: -0.3, humidityPct: 92, daysLow: 14, daysHigh: 28, daysAt20C: 5, source: 'L33', status: 'verified', also: ['WA'] },
  { crop: 'elderberry', foodIds: ['elderberry-european', 'elderberry-american'], storeTempC: -0.3, humidityPct: 92, daysLow: 7, daysHigh: 14, daysAt20C: 1.5, source: 'L33', status: 'verified' },
  { crop: 'mulberry', foodIds: ['mulberry-black', 'mulberry-white'], storeTempC: 0, humidityPct: 92, daysLow: 2, daysHigh: 4, daysAt20C: 0.8, source: 'MEMORY', status: 'memory', note: 'sureness: medium' },
  { crop: 'saskatoon', foodIds: ['saskatoon'], storeTempC: 0, humidityPct: 92, daysLow: 10, daysHigh: 14, daysAt20C: 3, source: 'MEMORY', status: 'memory', note: 'sureness: low' },
  { crop: 'aronia', foodIds: ['aronia'], storeTempC: 0, humidityPct: 92, daysLow: 30, daysHigh: 60, daysAt20C: 10, source: 'MEMORY', status: 'memory', note: 'sureness: low' },
  { crop: 'grape European', foodIds: ['grape-vinifera'], storeTempC: -0.7, humidityPct: 92, daysLow: 84, daysHigh: 180, daysAt20C: 6, source: 'L33', status: 'verified', also: ['WA'] },
  { crop: 'grape American', foodIds: ['grape-slipskin'], storeTempC: -0.3, humidityPct: 87, daysLow: 14, daysHigh: 56, daysAt20C: 4, source: 'L33', status: 'verified' },
  { crop: 'kiwifruit', foodIds: ['kiwifruit'], storeTempC: 0, humidityPct: 92, daysLow: 56, daysHigh: 150, daysAt20C: 14, source: 'WA', status: 'verified', also: ['DEG1'] },
  { crop: 'fig', foodIds: ['fig'], storeTempC: -0.5, humidityPct: 90, daysLow: 7, daysHigh: 14, daysAt20C: 1.5, source: 'L33', status: 'verified', also: ['DEG1'] },
  { crop: 'persimmon', foodIds: ['persimmon-japanese'], storeTempC: -1, humidityPct: 90, daysLow: 90, daysHigh: 120, daysAt20C: 14, source: 'L33', status: 'verified', also: ['PERS_STORE'] },
  { crop: 'pomegranate', foodIds: ['pomegranate'], storeTempC: 6, humidityPct: 92, daysLow: 60, daysHigh: 90, daysAt20C: 21, source: 'MEMORY', status: 'memory', note: 'sureness: fairly sure' },
  { crop: 'feijoa', foodIds: ['feijoa'], storeTempC: 4, humidityPct: 90, daysLow: 28, daysHigh: 35, daysAt20C: 6, source: 'WA', status: 'verified' },
  { crop: 'loquat', foodIds: ['loquat'], storeTempC: 1, humidityPct: 90, daysLow: 7, daysHigh: 14, daysAt20C: 4, source: 'WA', status: 'verified' },
  { crop: 'orange', foodIds: ['orange-sweet'], storeTempC: 0.5, humidityPct: 88, daysLow: 56, daysHigh: 84, daysAt20C: 16, source: 'L33', status: 'verified', also: ['DEG1'], note: 'Florida and Texas fruit; western oranges 3-8 C, 21-56 days, from memory' },
  { crop: 'mandarin', foodIds: ['mandarin'], storeTempC: 6, humidityPct: 88, daysLow: 14, daysHigh: 56, daysAt20C: 10, source: 'WA', status: 'verified' },
  { crop: 'lemon', foodIds: ['lemon-whole'], storeTempC: 13, humidityPct: 88, daysLow: 30, daysHigh: 168, daysAt20C: 28, source: 'L33', status: 'verified', also: ['WA'] },
  { crop: 'lime', foodIds: ['lime'], storeTempC: 9, humidityPct: 88, daysLow: 28, daysHigh: 70, daysAt20C: 16, source: 'WA', status: 'verified', also: ['L33'] },
  { crop: 'grapefruit', foodIds: ['grapefruit'], storeTempC: 13, humidityPct: 88, daysLow: 28, daysHigh: 70, daysAt20C: 21, source: 'WA', status: 'verified' },
  { crop: 'kumquat', foodIds: ['kumquat'], storeTempC: 4, humidityPct: 92, daysLow: 14, daysHigh: 28, daysAt20C: 8, source: 'MEMORY', status: 'memory', note: 'sureness: medium' },
  { crop: 'Seville orange', foodIds: ['orange-seville'], storeTempC: 5, humidityPct: 88, daysLow: 28, daysHigh: 56, daysAt20C: 14, source: 'MEMORY', status: 'memory', note: 'sureness: low' },
  { crop: 'rhubarb stalks', foodIds: ['rhubarb'], storeTempC: 0, humidityPct: 97, daysLow: 14, daysHigh: 28, daysAt20C: 4, source: 'MEMORY', status: 'memory', note: 'sureness: fairly sure' },
  { crop: 'melon cantaloupe', foodIds: ['melon'], storeTempC: 3, humidityPct: 92, daysLow: 10, daysHigh: 15, daysAt20C: 3, source: 'MEMORY', status: 'memory', note: 'sureness: fairly sure' },
  { crop: 'prickly pear', foodIds: ['prickly-pear'], storeTempC: 6, humidityPct: 92, daysLow: 14, daysHigh: 21, daysAt20C: 6, source: 'MEMORY', status: 'memory', note: 'sureness: medium' },
] as const satisfies readonly FreshLifeRow[];

/** The ordinary row of a food. RangeError when none was published: a life is never guessed from a similar fruit. */
export function freshLifeOf(foodId: string): FreshLifeRow {
  const row = FRESH_LIFE.find((r: FreshLifeRow) => r.foodIds.includes(foodId));
  if (!row) throw new RangeError(`no fresh life is printed for "${foodId}"`);
  return row;
}
