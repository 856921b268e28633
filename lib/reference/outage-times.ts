/**
 * How long a cold box stays cold once it has stopped, door shut, and what may become of what thaws in it. Ohio State University
 * Extension HYG-5357 and a preparedness page for freezers, North Dakota State University for fruit that has thawed; the fridge
 * from memory of United States guidance on power failures. Hours are "about".
 */
import type { Cited } from './source.ts';

export type Fullness = 'full' | 'more than half full' | 'half full or less';

export interface OutageRow extends Cited {
  readonly box: 'freezer' | 'fridge';
  readonly fullness: Fullness | null;
  readonly hours: number;
}

// biome-ignore format: one row to a line
export const OUTAGE_TIMES = [
  { box: 'freezer', fullness: 'full', hours: 48, source: 'OSU_OUTAGE', status: 'verified' },
  { box: 'freezer', fullness: 'more than half full', hours: 24, source: 'HOUSE_RULE', status: 'estimate', note: 'nothing is printed between half and full: the shorter figure' },
  { box: 'freezer', fullness: 'half full or less', hours: 24, source: 'HALF_OUTAGE', status: 'secondary', also: ['OSU_OUTAGE'] },
  { box: 'fridge', fullness: null, hours: 4, source: 'MEMORY', status: 'memory' },
] as const satisfies readonly OutageRow[];

export type ThawRuleId = 'fruit' | 'freezer-jam' | 'pectin-stock' | 'fridge';

// biome-ignore format: one rule to a line
export const THAW_RULES = [
  { id: 'fruit', text: 'Fruit that smells and tastes sound may be frozen again, or cooked: it makes good jam. Fruit that has begun to ferment goes.', source: 'NDSU_REFREEZE', status: 'verified' },
  { id: 'freezer-jam', text: 'Freezer jam goes to the fridge and is eaten within 3 weeks.', source: 'HGB_BERRYFREEZER', status: 'verified' },
  { id: 'pectin-stock', text: 'Pectin stock goes to the fridge and into the next batches. No time is printed: use it within 3 days, or boil it and freeze it again.', source: 'HOUSE_RULE', status: 'estimate' },
  { id: 'fridge', text: 'What stood above 4 °C (40 °F) for more than 2 hours and is kept only by the cold goes: opened jars, jars that did not seal, fridge jam.', source: 'MEMORY', status: 'memory' },
] as const satisfies readonly (Cited & { readonly id: ThawRuleId; readonly text: string })[];

/** Days in the fridge for pectin stock that has thawed: the rule above. */
export const THAWED_STOCK_DAYS = 3;
