/**
 * How long a finished item keeps, in days, by the place it is kept in. `days` is the figure to plan with, the shorter where
 * two publications differ; `upToDays` the longer one. `ends` says what comes then: `quality` (still eaten while sealed and
 * sound) or `use` (eat or throw away). Months are counted as 365/12 days, rounded.
 * Shelf 10-21 °C, dark and dry; fridge 4 °C or below; freezer -18 °C. Sources beside each row; precedence: the shorter.
 */
import type { Cited } from './source.ts';

export type HoldStore = 'shelf' | 'fridge' | 'freezer';

export type HoldItem =
  | 'sealed jar'
  | 'opened full-sugar spread'
  | 'opened low-sugar spread'
  | 'freezer jam'
  | 'opened freezer jam'
  | 'unsealed jar'
  | 'frozen fruit'
  | 'frozen citrus'
  | 'dried fruit'
  | 'dried peel or core'
  | 'dried herb'
  | 'fruit leather'
  | 'raw cider';

export interface HoldRow extends Cited {
  readonly item: HoldItem;
  readonly store: HoldStore;
  readonly days: number;
  readonly upToDays?: number;
  readonly ends: 'quality' | 'use';
}

// biome-ignore format: one printed row to a line
export const HOLD_TIMES = [
  { item: 'sealed jar', store: 'shelf', days: 365, ends: 'quality', source: 'AIB539', status: 'memory', also: ['PURDUE_PIE'], note: 'best quality 12 months; above 35 C or near heat or sun it is lost in weeks to months' },
  { item: 'opened full-sugar spread', store: 'fridge', days: 30, ends: 'use', source: 'JAMFRIDGE', status: 'verified', note: '1 month at 4 C or below' },
  { item: 'opened low-sugar spread', store: 'fridge', days: 14, upToDays: 21, ends: 'use', source: 'HOUSE_RULE', status: 'memory', note: 'the publications say only that it is shorter; 2-3 weeks is an assumption of this project' },
  { item: 'freezer jam', store: 'fridge', days: 21, upToDays: 28, ends: 'use', source: 'HGB_BERRYFREEZER', status: 'verified', also: ['MSU_FREEZERJAM'], note: '3 weeks in one bulletin, 4 in another' },
  { item: 'freezer jam', store: 'freezer', days: 365, ends: 'quality', source: 'HGB_BERRYFREEZER', status: 'verified' },
  { item: 'opened freezer jam', store: 'fridge', days: 3, ends: 'use', source: 'HGB_BERRYFREEZER', status: 'estimate', note: 'printed as "within a few days of opening"; 3 days is this project\'s reading' },
  { item: 'unsealed jar', store: 'fridge', days: 7, ends: 'use', source: 'MSU_REPROCESS', status: 'estimate', note: '7 days is this project\'s reading of "several days" to "one week"; or reprocess within 24 h with a new lid and the same time' },
  { item: 'unsealed jar', store: 'freezer', days: 243, upToDays: 365, ends: 'quality', source: 'MSU_REPROCESS', status: 'estimate', also: ['FREEZE_USDA'], note: 'with 1-1/2 in headspace; the months are those of frozen fruit' },
  { item: 'frozen fruit', store: 'freezer', days: 243, upToDays: 365, ends: 'quality', source: 'FREEZE_USDA', status: 'verified', note: '8-12 months; sweetened keeps better than unsweetened' },
  { item: 'frozen citrus', store: 'freezer', days: 91, upToDays: 122, ends: 'quality', source: 'MEMORY', status: 'memory', note: 'sections or juice, 3-4 months (fairly sure; another sheet 4-6)' },
  { item: 'dried fruit', store: 'shelf', days: 183, upToDays: 365, ends: 'quality', source: 'DRYSTORE', status: 'verified', note: '6 months at 27 C, 12 months at 16 C, airtight and dark (dried-storage)' },
  { item: 'dried peel or core', store: 'shelf', days: 183, upToDays: 365, ends: 'quality', source: 'DRYSTORE', status: 'memory', note: 'no figure was published: the rule of dried fruit; 6 months is the warning, 12 the end' },
  { item: 'dried herb', store: 'shelf', days: 365, ends: 'quality', source: 'ESTIMATE', status: 'estimate' },
  { item: 'fruit leather', store: 'shelf', days: 30, ends: 'use', source: 'LEATHER', status: 'verified' },
  { item: 'fruit leather', store: 'freezer', days: 365, ends: 'quality', source: 'LEATHER', status: 'verified' },
  { item: 'raw cider', store: 'fridge', days: 7, ends: 'use', source: 'MEMORY', status: 'memory', note: 'extension, fairly sure' },
  { item: 'raw cider', store: 'freezer', days: 365, ends: 'quality', source: 'MEMORY', status: 'memory', note: 'with 1-1/2 in headspace' },
] as const satisfies readonly HoldRow[];

export type HoldLookup = { ok: true; row: HoldRow } | { ok: false; reason: string };

/** The row of an item in a store. Refuses a pair no publication gives a time for. */
export function holdTime(item: HoldItem, store: HoldStore): HoldLookup {
  const row = HOLD_TIMES.find((r) => r.item === item && r.store === store);
  return row ? { ok: true, row } : { ok: false, reason: `no time is published for ${item} kept on or in the ${store}` };
}
