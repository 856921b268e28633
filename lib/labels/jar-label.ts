/**
 * One label, as plain lines. A sale label with a blank required field is not made: the fields that are blank are named
 * instead. Jars for the house carry the small label (name, lot, made on, processed, allergens), never less.
 * Elements: Utah Department of Agriculture, food label review (`reference/label-rules`); both units of weight from memory.
 */
import { LABEL_ELEMENTS } from '#lib/reference/label-rules.ts';
import { GRAMS_PER_OUNCE } from '#lib/units/convert.ts';
import { isPlainDate, longDate } from '#lib/units/plain-date.ts';
import { allergensOf, type Ingredient } from './ingredients.ts';
import type { AskedLine, RuleCard } from './rule-card.ts';

export type Purpose = 'sale' | 'home' | 'gift';
export type Keeping = 'shelf' | 'fridge' | 'freezer' | 'dry';

export interface LabelFacts {
  /** As the composition allows it. */
  readonly name: string;
  /** Null where no record says what went in. */
  readonly ingredients: readonly Ingredient[] | null;
  /** Least mass of food in a jar, grams. */
  readonly netG: number | null;
  readonly madeOn: string;
  readonly bestBefore: string | null;
  readonly lot: string;
  readonly keeping: Keeping;
  readonly processed: boolean;
  /** Reasons against a sale, none when it may be sold. */
  readonly againstSale: readonly string[];
}

export interface JarLabel {
  readonly purpose: Purpose;
  readonly name: string;
  readonly ingredients: string | null;
  /** "milk (butter), tree nuts (almonds)"; null when none of the listed ones was put in. */
  readonly contains: string | null;
  readonly net: string | null;
  readonly madeOn: string;
  readonly bestBefore: string | null;
  readonly lot: string;
  readonly keep: string;
  readonly processed: string | null;
  readonly maker: readonly string[];
  /** Printed in 12-point type where the card asks for it. */
  readonly homeKitchen: string | null;
}

export type LabelAnswer = { ok: true; label: JarLabel } | { ok: false; blanks: string[]; against: string[] };

const KEEP: Readonly<Record<Keeping, string>> = {
  shelf: 'Keep cool and dark. Once opened, keep in the fridge and use within a month.',
  fridge: 'Keep in the fridge.',
  freezer: 'Keep frozen. Once thawed, keep in the fridge.',
  dry: 'Keep dry, dark and closed.',
};

const rule = (id: (typeof LABEL_ELEMENTS)[number]['id']): string => LABEL_ELEMENTS.find((e) => e.id === id)?.rule ?? id;

/** Fields that are blank on a sale label, with what is asked of each. */
export function blankFields(facts: LabelFacts, card: RuleCard): string[] {
  const blank: [boolean, string][] = [
    [facts.name.trim() === '', `name: ${rule('identity')}`],
    [ingredientText(facts.ingredients) === null, `ingredients: ${rule('ingredients')}`],
    [netText(facts.netG) === null, `net weight: ${rule('net')}`],
    [!isPlainDate(facts.madeOn), 'made on'],
    [facts.bestBefore === null || !isPlainDate(facts.bestBefore), 'best before'],
    [facts.lot.trim() === '', 'lot'],
    [card.maker === '', `maker: ${rule('maker')}`],
    [card.address === '', `maker’s address: ${rule('maker')}`],
    ...card.asks.map((line): [boolean, string] => [card[line] === '', ASKED_TEXT[line]]),
  ];
  return blank.flatMap(([isBlank, what]) => (isBlank ? [what] : []));
}

const ASKED_TEXT: Readonly<Record<AskedLine, string>> = {
  contact: 'contact, which the rule card asks for',
  permit: 'permit number, which the rule card asks for',
  homeKitchen: 'home-kitchen sentence, which the rule card asks for',
};

/** The label for that purpose, or what stands against it. */
export function jarLabel(facts: LabelFacts, card: RuleCard, purpose: Purpose): LabelAnswer {
  if (purpose === 'sale') {
    const blanks = blankFields(facts, card);
    if (blanks.length > 0 || facts.againstSale.length > 0)
      return { ok: false, blanks, against: [...facts.againstSale] };
  }
  const small = purpose === 'home';
  const allergens = allergensOf(facts.ingredients ?? []);
  return {
    ok: true,
    label: {
      purpose,
      name: facts.name,
      ingredients: small ? null : ingredientText(facts.ingredients),
      contains: allergens.length > 0 ? allergens.join(', ') : null,
      net: small ? null : netText(facts.netG),
      madeOn: dayText(facts.madeOn),
      bestBefore: small || facts.bestBefore === null ? null : dayText(facts.bestBefore),
      lot: facts.lot,
      keep: KEEP[facts.keeping],
      processed: small && facts.keeping === 'shelf' ? (facts.processed ? 'yes' : 'no') : null,
      maker: purpose === 'sale' ? makerLines(card) : card.maker ? [card.maker] : [],
      homeKitchen: purpose === 'sale' && card.asks.includes('homeKitchen') ? card.homeKitchen : null,
    },
  };
}

const makerLines = (card: RuleCard): string[] => [
  `Made by ${card.maker}, ${card.address}`,
  ...[card.contact, card.permit].filter((line) => line !== ''),
];

const dayText = (day: string): string => (isPlainDate(day) ? longDate(day) : day);

/** "damsons, sugar, water"; null when nothing is on record. */
export function ingredientText(ingredients: readonly Ingredient[] | null): string | null {
  const names = (ingredients ?? []).map((i) => i.name.trim()).filter((n) => n !== '');
  return names.length > 0 ? names.join(', ') : null;
}

/** "311 g (10.9 oz)", both rounded down: never more than is in the jar. */
export function netText(netG: number | null): string | null {
  if (netG === null || !(netG >= 1)) return null;
  const oz = Math.floor((netG / GRAMS_PER_OUNCE) * 10) / 10;
  return `${Math.floor(netG)} g (${oz.toFixed(1)} oz)`;
}
