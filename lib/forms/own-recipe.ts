/** The form of a recipe of one's own: fruits with their shares, grams by the kilogram, where the boil ends. */
import { z } from 'zod';
import { FRUITS } from '#lib/reference/fruits.ts';
import { doseItem } from '#lib/reference/recipes/dose-items.ts';
import {
  juiceRuleFor,
  OWN_ACIDS,
  OWN_EXTRAS,
  OWN_KINDS,
  OWN_PECTINS,
  type OwnFigures,
  type OwnPectin,
  USUAL_BRIX,
} from '#lib/reference/recipes/own-recipe.ts';
import { number, optional, tick, word } from './fields.ts';

/** Fruits and extras a form has room for. */
export const FRUIT_LINES = [1, 2, 3, 4] as const;
export const EXTRA_LINES = [1, 2, 3] as const;

const chosen = <T extends string>(list: readonly T[], what: string) =>
  z
    .string()
    .trim()
    .optional()
    .transform((v, ctx): T | null => {
      if (!v) return null;
      const known = list.find((x) => x === v);
      if (known) return known;
      ctx.addIssue({ code: 'custom', message: `${what}: "${v}" is not on the list` });
      return z.NEVER;
    });
/** More than any pan takes is kept and marked (own-doubts); only what no scale weighs out is refused. */
const grams = (what: string) => number({ what, min: 0, max: 20_000 });
const lines = <T extends z.ZodType>(nums: readonly number[], name: string, of: (n: number) => T) =>
  Object.fromEntries(nums.map((n) => [`${name}${n}`, of(n)])) as Record<string, T>;

const FOODS = FRUITS.map((f) => f.id);
const typed = z.object({
  title: word('the name', 60),
  kind: z.enum(OWN_KINDS, { error: 'choose what it is' }),
  ...lines(FRUIT_LINES, 'fruit', (n) => chosen(FOODS, `fruit ${n}`)),
  ...lines(FRUIT_LINES, 'share', (n) => optional(number({ what: `the share of fruit ${n}`, min: 1, max: 100 }))),
  sugar: grams('the sugar'),
  water: optional(grams('the water')),
  acid: chosen(OWN_ACIDS, 'the acid'),
  acidG: optional(grams('the acid')),
  pectin: chosen(Object.keys(OWN_PECTINS) as OwnPectin[], 'the pectin'),
  pectinG: optional(grams('the pectin')),
  ...lines(EXTRA_LINES, 'extra', (n) => chosen(OWN_EXTRAS, `addition ${n}`)),
  ...lines(EXTRA_LINES, 'extraG', (n) => optional(grams(`addition ${n}`))),
  brix: optional(number({ what: 'the finish', min: 20, max: 82 })),
  softToo: tick,
});

/** What was typed, as the figures of a recipe; every contradiction is said with its numbers. */
export const ownRecipeForm = typed.transform((t, ctx): OwnFigures => {
  const v = t as Record<string, unknown> & typeof t;
  const say = (message: string) => ctx.addIssue({ code: 'custom', message });
  const fruits = FRUIT_LINES.flatMap((n) => {
    const foodId = v[`fruit${n}`] as string | null;
    return foodId ? [{ foodId, share: v[`share${n}`] as number | null, n }] : [];
  });
  if (fruits.length === 0) say('a fruit is missing');
  const repeated = fruits.find((f, i) => fruits.findIndex((o) => o.foodId === f.foodId) < i);
  if (repeated) say(`fruit ${repeated.n} is there twice`);
  const only = fruits.length === 1;
  const unsaid = fruits.filter((f) => f.share === null);
  if (!only && unsaid.length > 0) say(`the share of fruit ${unsaid.map((f) => f.n).join(' and ')} is missing`);
  const sum = fruits.reduce((s, f) => s + (f.share ?? 0), 0);
  if (fruits.length > 1 && unsaid.length === 0 && Math.abs(sum - 100) > 0.5) say(`the shares make ${sum} %, not 100 %`);
  const measured = (item: string | null, g: number | null, what: string): number => {
    if (item && !(g && g > 0)) say(`${what}: ${doseItem(item as OwnPectin).name} is chosen and its grams are missing`);
    if (!item && g) say(`${what}: ${g} g, and of what is not said`);
    return g ?? 0;
  };
  const acidG = measured(t.acid, t.acidG, 'the acid');
  const pectinG = measured(t.pectin, t.pectinG, 'the pectin');
  const extras = EXTRA_LINES.flatMap((n) => {
    const item = v[`extra${n}`] as OwnFigures['extras'][number]['item'] | null;
    const gPerKg = measured(item, v[`extraG${n}`] as number | null, `addition ${n}`);
    return item ? [{ item, gPerKg }] : [];
  });
  const usual = USUAL_BRIX[t.kind];
  if (usual === null && t.brix !== null) say(`${t.kind.replace('-', ' ')} is not boiled down: leave the finish empty`);
  if (t.kind === 'jelly' && fruits[0] && juiceRuleFor(fruits[0].foodId) === null)
    say('the book draws no juice from the first fruit of this jelly: make it a jam, or put another fruit first');
  return {
    title: t.title,
    kind: t.kind,
    fruits: fruits.map(({ foodId, share }) => ({ foodId, share: only ? 1 : (share ?? 0) / sum })),
    sugarG: t.sugar,
    waterG: t.water ?? 0,
    acid: t.acid ? { item: t.acid, gPerKg: acidG } : null,
    pectin: t.pectin ? { item: t.pectin, gPerKg: pectinG } : null,
    extras,
    brix: usual === null ? null : (t.brix ?? usual),
    softToo: t.softToo,
  };
});

/** The text that stands in the form for these figures. */
export function ownRecipeText(f: OwnFigures): Record<string, string> {
  const text = (n: number): string => String(Number(n.toFixed(1)));
  return {
    title: f.title,
    kind: f.kind,
    ...Object.fromEntries(
      f.fruits.flatMap((p, i) => [
        [`fruit${i + 1}`, p.foodId],
        [`share${i + 1}`, text(100 * p.share)],
      ]),
    ),
    sugar: text(f.sugarG),
    water: f.waterG ? text(f.waterG) : '',
    acid: f.acid?.item ?? '',
    acidG: f.acid ? text(f.acid.gPerKg) : '',
    pectin: f.pectin?.item ?? '',
    pectinG: f.pectin ? text(f.pectin.gPerKg) : '',
    ...Object.fromEntries(
      f.extras.flatMap((e, i) => [
        [`extra${i + 1}`, e.item],
        [`extraG${i + 1}`, text(e.gPerKg)],
      ]),
    ),
    brix: f.brix === null ? '' : text(f.brix),
    softToo: f.softToo ? 'on' : '',
  };
}
