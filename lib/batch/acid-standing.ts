/**
 * Is this batch acid enough for boiling water, and on what ground? In order: a measured pH that stops it; the low-acid
 * rules; the acid class of each fruit. Ground is a published recipe followed as written, or fruit that is acid by its
 * published pH range, or a calibrated reading of 4.6 or less. A predicted pH is no ground.
 *
 * House rules where the publications leave room (stricter of two readings):
 * - a class A fruit whose pH range is from memory counts as A only if a boiling-water row without added acid names it;
 * - a recipe the household wrote needs a reading whatever it is made of;
 * - class B and C fruit above a tenth of the batch needs a reading in any recipe of one's own, and when soft in any recipe.
 */
import { type Fruit, fruitOf } from '#lib/reference/fruits.ts';
import { type LowAcidRule, lowAcidRuleOf } from '#lib/reference/low-acid-rules.ts';
import { PROCESS_ROWS, type ProcessRow } from '#lib/reference/process-times.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import { BUTTER_CLASS_BRIX, SPREAD_CLASS_BRIX } from '#lib/reference/recipes/spread-class.ts';
import { type FruitUsed, foodShares } from './fruit-used.ts';
import { ACID_LIMIT_PH, type PhReading, readingStanding } from './ph-reading.ts';

export type Need = 'ph-reading' | 'acid-dose';

export interface AcidQuestion {
  readonly recipe: Recipe;
  readonly fruit: readonly FruitUsed[];
  readonly row: ProcessRow | null;
  /** A published recipe whose amounts were kept, or house amounts inside the tested class of the product. */
  readonly followsPublished: boolean;
  readonly acidDoseGiven: boolean;
  readonly reading?: PhReading | undefined;
}

export interface AcidStanding {
  readonly stops: readonly string[];
  readonly needs: readonly Need[];
  readonly reasons: readonly string[];
  readonly cautions: readonly string[];
}

const MINOR_SHARE = 0.1;

export function acidStanding(q: AcidQuestion): AcidStanding {
  const stops: string[] = [];
  const needs = new Set<Need>();
  const reasons: string[] = [];
  const cautions: string[] = [];
  const read = q.reading ? readingStanding(q.reading) : null;
  const pH = read?.ok ? read.pH : null;
  if (read && !read.ok) reasons.push(`Reading void: ${read.reason}.`);
  if (pH !== null && pH > ACID_LIMIT_PH)
    stops.push(`Measured pH ${pH.toFixed(2)} is above 4.6: hold it off the shelf. Freeze it.`);
  else if (read?.ok && read.amber)
    cautions.push(`Measured pH ${read.pH.toFixed(2)} is close to 4.6: read a second jar.`);

  const acidAsked = q.recipe.acid?.purpose === 'safety dose' || q.row?.acidRequired === true;
  if (acidAsked && !q.acidDoseGiven) {
    needs.add('acid-dose');
    reasons.push('The published acid dose has to go into every jar; it is a floor.');
  }
  const weak: { readonly share: number; readonly why: string }[] = [];
  for (const [foodId, share] of foodShares(q.fruit)) {
    const fruit = fruitOf(foodId);
    const rule = fruit.lowAcidRule ? lowAcidRuleOf(fruit.lowAcidRule) : null;
    if (rule) applyRule(rule, fruit, q, pH, { stops, needs, reasons, cautions });
    const soft = q.fruit.some((f) => f.foodId === foodId && f.grade === 'soft');
    if (wantsReading(fruit, soft, q)) weak.push({ share, why: whyReading(fruit, soft) });
  }
  if (pH === null && weak.reduce((sum, w) => sum + w.share, 0) > MINOR_SHARE) {
    needs.add('ph-reading');
    reasons.push(...weak.map((w) => w.why));
  }
  if (pH === null && !q.followsPublished && (writtenHere(q.recipe) || !insideTestedClass(q.recipe))) {
    needs.add('ph-reading');
    reasons.push(
      'Own amounts outside any tested recipe: read the pH of a cooled, blended jar with a calibrated meter, or freeze.',
    );
  }
  return { stops, needs: [...needs], reasons: [...new Set(reasons)], cautions };
}

interface Into {
  readonly stops: string[];
  readonly needs: Set<Need>;
  readonly reasons: string[];
  readonly cautions: string[];
}

function applyRule(rule: LowAcidRule, fruit: Fruit, q: AcidQuestion, pH: number | null, into: Into): void {
  const tested =
    q.followsPublished && q.recipe.origin.standing === 'published' && q.recipe.origin.rules.includes(rule.id);
  const named = q.row?.fruitIds?.includes(fruit.id) === true;
  if (rule.shelf === 'forbidden') into.stops.push(`${fruit.name}: no tested process of any kind. Freeze it.`);
  if (rule.shelf === 'forbidden-except-tested-weighed-jam' && !(tested && isJamOrJelly(q.recipe))) {
    into.stops.push(
      `${fruit.name}: only a tested jam or jelly, weighed as printed, may go on the shelf. Attach one, or freeze it.`,
    );
  }
  if (isTestedOnly(rule) && !tested)
    into.stops.push(`${fruit.name}: only a tested recipe for it may go on the shelf. Freeze or dry it.`);
  if (rule.shelf === 'allowed-with-acid' && !(named && q.row?.acidRequired)) {
    into.stops.push(
      `${fruit.name}: only its own tested method with measured acid may go on the shelf. Use that, or freeze it.`,
    );
  }
  if (rule.hotPackOnly && q.recipe.process?.pack === 'raw')
    into.stops.push(`${fruit.name}: hot pack only. Heat it in the syrup first.`);
  if ((rule.meterRequired || rule.shelf === 'caution') && pH === null) {
    into.needs.add('ph-reading');
    into.reasons.push(`${fruit.name}: a calibrated pH reading is asked before the shelf.`);
  }
  const limit = rule.stopAbovePH;
  if (limit !== undefined && limit < ACID_LIMIT_PH && pH !== null && pH > limit) {
    into.stops.push(`${fruit.name}: measured pH ${pH.toFixed(2)} is above ${limit}. Freeze it.`);
  }
  const warn = rule.warnAbovePH;
  if (warn !== undefined && pH !== null && pH > warn && pH <= ACID_LIMIT_PH) {
    into.cautions.push(`${fruit.name}: measured pH ${pH.toFixed(2)} is at the upper end for this fruit.`);
  }
}

const isTestedOnly = (rule: LowAcidRule): boolean =>
  ['conditional', 'tested-recipe-only', 'forbidden-alone', 'forbidden-as-butter-or-puree'].includes(rule.shelf);
const isJamOrJelly = (recipe: Recipe): boolean => recipe.kind === 'jam' || recipe.kind === 'jelly';

function wantsReading(fruit: Fruit, soft: boolean, q: AcidQuestion): boolean {
  if (firmlyAcid(fruit)) return false;
  return soft ? fruit.acidClass !== 'A' || !q.followsPublished : !q.followsPublished;
}

/** Class A by a sourced range, or by memory and named besides in a published row that asks no acid. */
function firmlyAcid(fruit: Fruit): boolean {
  if (fruit.acidClass !== 'A') return false;
  return !fruit.acidProvisional || PROCESS_ROWS.some((r) => !r.acidRequired && r.fruitIds?.includes(fruit.id));
}

const whyReading = (fruit: Fruit, soft: boolean): string =>
  `${fruit.name}${soft ? ', soft,' : ''} can be less acid than it tastes (pH to ${fruit.pH.high}): read the pH of a cooled, blended jar, or freeze.`;

/** A recipe the household wrote itself: no reading of it is known, whatever its solids. */
const writtenHere = ({ origin }: Recipe): boolean => origin.standing === 'house' && origin.by === 'household';

/** House amounts that are still the product the process row was printed for. */
function insideTestedClass({ kind, finish, process }: Recipe): boolean {
  if (!process || finish.by !== 'solids') return false;
  if (kind === 'butter') return finish.brix >= BUTTER_CLASS_BRIX;
  return ['jam', 'jelly', 'preserve', 'conserve', 'marmalade'].includes(kind) && finish.brix >= SPREAD_CLASS_BRIX;
}
