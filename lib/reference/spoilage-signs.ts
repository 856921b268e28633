/** What a spoiled jar shows to the eye, before and on opening. Michigan State University Extension sheet 01600953. Nobody tastes. */
import type { Cited } from './source.ts';

export type SpoilageSignId = 'mould' | 'flat-lid' | 'streaks' | 'bubbles' | 'odour';

export interface SpoilageSign extends Cited {
  readonly id: SpoilageSignId;
  /** On the button. */
  readonly name: string;
  readonly look: string;
}

// biome-ignore format: one sign to a line
export const SPOILAGE_SIGNS = [
  { id: 'mould', name: 'Mould', look: 'on the food, under the lid, in any colour', source: 'MSU_SPOILAGE', status: 'verified' },
  { id: 'flat-lid', name: 'Lid flat', look: 'it no longer curves down, or it gives when pressed', source: 'MSU_SPOILAGE', status: 'verified' },
  { id: 'streaks', name: 'Streaks from the rim', look: 'dried food running down the glass', source: 'MSU_SPOILAGE', status: 'verified' },
  { id: 'bubbles', name: 'Moving bubbles', look: 'rising, with the jar standing still', source: 'MSU_SPOILAGE', status: 'verified' },
  { id: 'odour', name: 'Odour on opening', look: 'not that of the fruit', source: 'MSU_SPOILAGE', status: 'verified' },
] as const satisfies readonly SpoilageSign[];

/** What to do with it, whichever sign it is. */
export const SPOILED_JAR = {
  text: 'Throw the whole jar away. Do not scrape the mould off, and do not taste to find out.',
  source: 'AIB539',
  status: 'memory',
  also: ['MSU_SPOILAGE'],
} as const satisfies Cited & { text: string };

/** Spoiled jars of one batch from which all of it is held: one may be a bad seal, two are the batch. */
export const HOLD_FROM_JARS = { jars: 2, source: 'HOUSE_RULE', status: 'estimate' } as const satisfies Cited & {
  jars: number;
};
