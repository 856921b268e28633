/**
 * Names this batch may carry by its composition (US: 21 CFR 150 and the FDA answer on jam, jelly, butter and marmalade).
 * A name is about labels and says nothing about keeping. Below every minimum it is a fruit spread.
 */
import { fruitOf } from '#lib/reference/fruits.ts';
import { countedGrams } from '#lib/reference/juice-factors.ts';
import { FRUIT_SHARE_RULES, type FruitShareRule } from '#lib/reference/label-rules.ts';
import type { RecipeKind } from '#lib/reference/recipes/recipe.ts';
import { type Figure, figure, input } from './figure.ts';

export interface NameQuestion {
  readonly kind: RecipeKind;
  readonly foodIds: readonly string[];
  /** Prepared fruit, or juice in a jelly, grams. */
  readonly fruitG: number;
  readonly sweetenerG: number;
  readonly brix: number;
  /** Of the juice, for a jelly: weak juice counts for less. */
  readonly juiceBrix?: number | undefined;
}

export interface LabelNames {
  readonly allowed: readonly string[];
  readonly ratio: Figure | null;
  readonly reasons: readonly string[];
}

const BITTER = new Set(['orange-seville', 'lemon-whole']);

export function labelNames(q: NameQuestion): LabelNames {
  const rule = ruleFor(q);
  if (!rule) return { allowed: [], ratio: null, reasons: [] };
  if (q.sweetenerG <= 0 || !rule.parts)
    return { allowed: ['fruit spread'], ratio: null, reasons: ['no sweetener was added'] };
  const least = rule.parts.fruit / rule.parts.sweetener;
  const fruitG = countedFruit(q);
  const ratio = fruitG / q.sweetenerG;
  const reasons: string[] = [];
  if (ratio < least) reasons.push(`fruit to sweetener is ${ratio.toFixed(2)}; ${rule.name} asks ${least.toFixed(2)}`);
  const brix = rule.minSolublePct ?? 0;
  if (q.brix < brix) reasons.push(`soluble solids ${q.brix.toFixed(1)} %; ${rule.name} asks ${brix} %`);
  return {
    allowed: reasons.length === 0 ? namesOf(q.kind) : ['fruit spread'],
    ratio: figure({
      value: ratio,
      unit: 'fruit : sweetener',
      formula: `fruit over sweetener by weight; ${rule.name} asks at least ${rule.parts.fruit} : ${rule.parts.sweetener}`,
      inputs: [input('fruit', fruitG, 'g'), input('sweetener', q.sweetenerG, 'g')],
      source: rule.source,
      status: rule.status,
    }),
    reasons,
  };
}

/** Juice counts by weight × Brix × the factor of its fruit (21 CFR 150.140); without a factor, by weight. */
function countedFruit({ kind, foodIds, fruitG, juiceBrix }: NameQuestion): number {
  const fruitId = foodIds[0];
  if (kind !== 'jelly' || juiceBrix === undefined || !fruitId) return fruitG;
  return countedGrams({ kind: 'jelly', fruitId, grams: fruitG, brix: juiceBrix }) ?? fruitG;
}

const namesOf = (kind: RecipeKind): string[] => {
  if (kind === 'jam' || kind === 'preserve') return ['jam', 'preserve'];
  if (kind === 'butter') return ['fruit butter'];
  return kind === 'conserve' ? ['conserve', 'jam'] : [kind];
};

function ruleFor({ kind, foodIds }: NameQuestion): FruitShareRule | null {
  const named = (name: string) => FRUIT_SHARE_RULES.find((r) => r.place === 'US' && r.name === name) ?? null;
  if (kind === 'jelly') return named('jelly');
  if (kind === 'butter') return named('fruit butter');
  if (kind === 'marmalade')
    return named(
      foodIds.some((id) => BITTER.has(id)) ? 'marmalade, bitter orange, lemon or lime' : 'marmalade, sweet orange',
    );
  if (kind !== 'jam' && kind !== 'preserve' && kind !== 'conserve') return null;
  const groups = new Set(foodIds.map((id) => fruitOf(id).labelGroup));
  if (groups.size > 1) return named('jam, both groups mixed');
  return named(groups.has('I') ? 'jam, Group I fruit' : 'jam, Group II fruit');
}
