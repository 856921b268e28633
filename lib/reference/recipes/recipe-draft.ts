/**
 * Fills what most recipes of a kind share, so that a recipe file shows only what is its own. `house` marks figures of
 * this program (household-only); `published` names the publication that is followed as written.
 */

import type { HoldItem } from '../hold-times.ts';
import type { Cited } from '../source.ts';
import type { SourceId } from '../sources.ts';
import type { DoseItem } from './dose-items.ts';
import type { CeilingRule, Dose, FruitPart, Recipe, WorkRule } from './recipe.ts';

type Optional = 'extraction' | 'sugar' | 'syrup' | 'acid' | 'water' | 'pectin' | 'others' | 'contents' | 'byProducts';
type Given = 'origin' | 'householdOnly';
export type RecipeDraft = Omit<Recipe, Optional | Given> & Partial<Pick<Recipe, Optional>>;

const EMPTY = {
  extraction: null,
  sugar: null,
  syrup: null,
  acid: null,
  water: null,
  pectin: null,
  others: [],
  contents: [],
  byProducts: [],
} as const;

/** Own figures: never sold as tested, and the gate asks more of them. */
export const house = (draft: RecipeDraft, because = 'own figures, not from a tested collection'): Recipe => ({
  ...EMPTY,
  ...draft,
  origin: { standing: 'house', because },
  householdOnly: true,
});

export interface Publication {
  readonly sources: readonly [SourceId, ...SourceId[]];
  readonly status: Cited['status'];
  /** Low-acid rules this very recipe was tested for. */
  readonly rules?: readonly string[];
}

export const published = (draft: RecipeDraft, from: Publication): Recipe => ({
  ...EMPTY,
  ...draft,
  origin: { standing: 'published', sources: from.sources, status: from.status, rules: from.rules ?? [] },
  householdOnly: false,
});

/** The only fruit of a recipe. */
export const only = (...foodIds: string[]): readonly FruitPart[] => [{ foodIds, share: { low: 1, typ: 1, high: 1 } }];
/** A part of a mixture. */
export const part = (foodIds: readonly string[], low: number, typ: number, high: number): FruitPart => ({
  foodIds,
  share: { low, typ, high },
});
export const dose = (item: DoseItem, gPerKg: number): Dose => ({ item, gPerKg });

/** Six to eight cups at a time: AIB 539 for jelly; carried over to jam as a quality limit (estimate). */
export const CRUSHED_CUPS: CeilingRule = { by: 'cups', of: 'crushed fruit', gPerCup: 235, warn: 6, stop: 8 };
export const JUICE_CUPS: CeilingRule = { by: 'cups', of: 'juice', gPerCup: 248, warn: 6, stop: 8 };

const work = (a: number, perKg: number, b: number, bPerKg: number): WorkRule => ({
  activeFixedH: a,
  activeHPerKg: perKg,
  burnerFixedH: b,
  burnerHPerKg: bPerKg,
  status: 'estimate',
});
export const SPREAD_WORK = work(0.5, 0.25, 0.4, 0.2);
export const JELLY_WORK = work(0.7, 0.2, 0.8, 0.25);
export const BUTTER_WORK = work(0.6, 0.2, 1, 0.5);
export const PACK_WORK = work(0.5, 0.12, 0.5, 0.04);
export const PRESS_WORK = work(1.5, 0.03, 0.7, 0.03);
export const COLD_WORK = work(0.2, 0.08, 0, 0);
export const DRY_WORK = work(0.3, 0.2, 0, 0);

export const SPREAD_KEEPS: readonly HoldItem[] = ['opened full-sugar spread', 'unsealed jar'];
export const LOW_SUGAR_KEEPS: readonly HoldItem[] = ['opened low-sugar spread', 'unsealed jar'];
export const FRUIT_KEEPS: readonly HoldItem[] = ['unsealed jar'];
export const JUICE_KEEPS: readonly HoldItem[] = ['raw cider'];
