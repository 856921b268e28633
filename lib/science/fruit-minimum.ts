/**
 * Names a composition allows. Source: 21 CFR 150 (FDA guidance, read): fruit to sweetener by weight and soluble solids.
 * Jam 47:55 (group I) or 45:55 (group II), jelly 45:55 with juice counted by its factor, butter 5:2. Naming only: a ratio
 * says nothing about keeping.
 */
import { FRUIT_SHARE_RULES } from '#lib/reference/label-rules.ts';

export type PreserveName = 'jam' | 'jelly' | 'fruit butter';

export interface NameCheck {
  readonly allowed: boolean;
  readonly ratio: number;
  readonly ratioNeeded: number;
  readonly solidsNeeded: number;
}

const RULE_OF = {
  jam: { I: 'jam, Group I fruit', II: 'jam, Group II fruit', mixed: 'jam, both groups mixed' },
  jelly: { I: 'jelly', II: 'jelly', mixed: 'jelly' },
  'fruit butter': { I: 'fruit butter', II: 'fruit butter', mixed: 'fruit butter' },
} as const;

/** `fruitG` is prepared fruit (for jelly see countedJuice); `brix` of the finished product. RangeError without sweetener. */
export function fruitMinimum(spread: {
  name: PreserveName;
  group: 'I' | 'II' | 'mixed';
  fruitG: number;
  sweetenerG: number;
  brix: number;
}): NameCheck {
  if (!(spread.sweetenerG > 0)) throw new RangeError('these names are for sweetened spreads: no sweetener was given');
  const wanted = RULE_OF[spread.name][spread.group];
  const rule = FRUIT_SHARE_RULES.find((row) => row.name === wanted);
  if (!rule?.parts) throw new RangeError(`no rule is kept for "${wanted}"`);
  const ratio = spread.fruitG / spread.sweetenerG;
  const ratioNeeded = rule.parts.fruit / rule.parts.sweetener;
  const solidsNeeded = rule.minSolublePct;
  return { allowed: ratio >= ratioNeeded - 1e-12 && spread.brix >= solidsNeeded, ratio, ratioNeeded, solidsNeeded };
}

/** Juice that counts for a jelly: weight × °Bx × factor / 100 (factor = 100 / assumed °Bx of the fruit's juice, 21 CFR 150.140). */
export const countedJuice = (juice: { grams: number; brix: number; cfrFactor: number }): number =>
  (juice.grams * juice.brix * juice.cfrFactor) / 100;
