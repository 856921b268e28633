/** What is done around the clock of a process, in words for the batch sheet, with the source of each. */
import type { Cited } from './source.ts';

export interface CanningStep extends Cited {
  readonly when: 'before' | 'during' | 'after' | 'next day' | 'unsealed';
  readonly text: string;
}

// biome-ignore format: one step to a line
export const CANNING_STEPS = [
  { when: 'before', text: 'Use two-piece lids, a flat lid once only; bands may be used again.', source: 'MSU_JARS', status: 'verified' },
  { when: 'before', text: 'Cover the lids with 1 to 2 inches of water.', source: 'PURDUE_PIE', status: 'verified' },
  { when: 'during', text: 'Count from a full boil with the lid on. If the boil stops, start the whole time again.', source: 'AIB539', status: 'memory' },
  { when: 'after', text: 'Heat off, lid off, wait 5 minutes, then lift the jars out.', source: 'EDIS_PLUM', status: 'verified' },
  { when: 'after', text: 'Cool 12 to 24 hours untouched. Do not retighten the bands.', source: 'PURDUE_PIE', status: 'verified' },
  { when: 'next day', text: 'Bands off: the centre must not spring when pressed.', source: 'MSU_SEAL', status: 'verified' },
  { when: 'next day', text: 'Tap the lid with a spoon: a sealed lid rings high (a dull one may touch food).', source: 'MSU_SEAL', status: 'verified' },
  { when: 'next day', text: 'At eye level the lid curves down.', source: 'MSU_SEAL', status: 'verified' },
  { when: 'unsealed', text: 'Within 24 hours: process again with a new lid for the same time, or freeze with 1-1/2 inches of headspace, or refrigerate and eat within days.', source: 'MSU_REPROCESS', status: 'verified' },
] as const satisfies readonly CanningStep[];

/** Rules a batch sheet repeats where they apply. */
// biome-ignore format: one rule to a line
export const CANNING_RULES = [
  { id: 'bottled-juice', text: 'Where acid is a dose that keeps the food, use bottled lemon juice (4.5 % acid or more); fresh only for flavour or set in fruit that is acid by nature.', source: 'IA_LEMON', status: 'verified', note: 'second half from memory' },
  { id: 'sugar-is-not-acid', text: 'Sugar may mask the acid; it does not replace it.', source: 'TOMACID', status: 'verified' },
  { id: 'sugar-in-syrup', text: 'Sugar in the syrup on whole fruit is for quality only and may be left out.', source: 'AIB539', status: 'memory' },
  { id: 'less-sugar', text: 'Less sugar in a full-sugar recipe gives a runny spread that moulds sooner; use low-sugar pectin with its own recipe.', source: 'MO_PARAFFIN', status: 'verified', note: 'first clause from memory' },
  { id: 'no-doubling', text: 'Do not double a batch: at most 6 to 8 cups of juice.', source: 'AIB_JELLY', status: 'verified' },
  { id: 'no-paraffin', text: 'No paraffin seals: moulds and their poisons get in.', source: 'MO_PARAFFIN', status: 'verified' },
  { id: 'commercial-jars', text: 'Pint and quart mayonnaise-type jars fail more often and only ever go in boiling water with acid food; other reused jars do not go in at all. In this program no reused jar goes on the shelf.', source: 'MSU_JARS', status: 'verified', note: 'last sentence is a rule of this project' },
  { id: 'mouldy-jam', text: 'Mouldy jam: throw away the whole jar.', source: 'AIB539', status: 'memory' },
] as const satisfies readonly (Cited & { readonly id: string; readonly text: string })[];
