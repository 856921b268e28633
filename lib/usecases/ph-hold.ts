/**
 * What keeps a lot of jars from the shelf, in words. A lot may be held for more than one reason at once (a pH not read yet,
 * a process cut short); each reason is one part of the text, and only its own remedy takes it away.
 */

const BETWEEN = '; ';
const PH_WANTED = 'not for the shelf before a calibrated pH reading of the cooled product';
const PH_TOO_HIGH = 'not for shelf: pH ';

export const ACID_DOSE_HOLD = 'not for the shelf without the tested acid dose in every jar';
export const PROCESS_HOLD = 'process not as tested: cool it, then fridge, freezer or the full process again within 2 h';

export const phTooHigh = (pH: number, limit: number): string =>
  `${PH_TOO_HIGH}${pH.toFixed(2)} is above ${limit}, to the freezer or the fridge`;

const partsOf = (hold: string | null): string[] => hold?.split(BETWEEN) ?? [];
const joined = (parts: readonly string[]): string | null => (parts.length > 0 ? parts.join(BETWEEN) : null);
const aboutPh = (part: string): boolean => part === PH_WANTED || part.startsWith(PH_TOO_HIGH);

/** The hold with one more reason in it. */
export const withHold = (hold: string | null, part: string): string =>
  joined([...partsOf(hold).filter((p) => p !== part), part]) as string;

/** The hold without that reason; the others stay. */
export const withoutHold = (hold: string | null, part: string): string | null =>
  joined(partsOf(hold).filter((p) => p !== part));

/** The hold after its pH was read and is low enough: what else holds the lot stays. */
export const withoutPhHold = (hold: string | null): string | null => joined(partsOf(hold).filter((p) => !aboutPh(p)));

/** The hold after a pH that is too high: it takes the place of what was said about pH before. */
export const withHighPh = (hold: string | null, pH: number, limit: number): string =>
  withHold(withoutPhHold(hold), phTooHigh(pH, limit));

/** A calibrated reading alone is what this lot waits for, or waits for among other things. */
export const waitsForPh = (hold: string | null): boolean => partsOf(hold).includes(PH_WANTED);
export const heldByHighPh = (hold: string | null): boolean => partsOf(hold).some((p) => p.startsWith(PH_TOO_HIGH));

/** Why freshly filled jars are on hold, by what their sheet still needs; null when it needs nothing. */
export const holdAtFilling = (needs: readonly string[]): string | null =>
  joined([
    ...(needs.includes('ph-reading') ? [PH_WANTED] : []),
    ...(needs.includes('acid-dose') ? [ACID_DOSE_HOLD] : []),
  ]);
