/** "What is in it?": what may be shown to a customer about a jar. No stock, no people, no cost. */
import { allergensOf } from '#lib/labels/ingredients.ts';
import { ingredientText, netText } from '#lib/labels/jar-label.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import { doseItem } from '#lib/reference/recipes/dose-items.ts';
import { loadLots, lotOfCode } from '#lib/store/ledger-store.ts';
import { addDays, longDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { contentsOf, type JarContents } from './jar-contents.ts';
import { LABELLED, labelFacts, reasonsAgainstSale } from './read-label.ts';
import { lineSlug } from './read-pantry.ts';
import { splitCode } from './read-trace.ts';
import { recipeHere } from './recipes-here.ts';

export interface JarCard {
  lot: string;
  slug: string;
  name: string;
  allergens: string[];
  /** Heaviest first; null where no record says. */
  ingredients: string | null;
  doubts: string[];
  /** Made that day in the same pan, with the allergens their recipes bring. */
  samePan: { line: string; allergens: string[] }[];
  trees: string[];
  /** Young trees of its cultivars on the nursery bench. */
  youngTrees: { cultivar: string; forSale: number }[];
  madeOn: string;
  bestBefore: string | null;
  net: string | null;
  /** Why it may not be sold; none when it may. */
  against: string[];
  /** False where none of the lot is left. */
  onHand: boolean;
}

/** The card of a jar or lot by its code; null when no jar lot bears it. */
export async function readCard(ctx: Context, code: string): Promise<{ card: JarCard; jar: string | null } | null> {
  const wanted = code.trim().toUpperCase();
  const [lotCode, piece] = splitCode(wanted);
  const lot = (await lotOfCode(ctx.db, ctx.place.id, lotCode)) ?? (await lotOfCode(ctx.db, ctx.place.id, code.trim()));
  if (!lot || !LABELLED.includes(lot.kind)) return null;
  const card = (await cardsOf(ctx, [lot]))[0] as JarCard;
  return { card, jar: piece === null ? null : wanted };
}

/** Jars made longer ago than this are not kept on the device (common practice: a year's best-before and half a year more). */
const KEPT_DAYS = 548;

/** Cards of every lot a customer may hold in their hands, what is left first: kept on the device for the stall. */
export async function stallCards(ctx: Context): Promise<JarCard[]> {
  const lots = await loadLots(ctx.db, ctx.place.id, {
    kinds: ['jars', 'dried', 'cold-jars'],
    madeFrom: addDays(ctx.today, -KEPT_DAYS),
    emptied: true,
  });
  const older = await loadLots(ctx.db, ctx.place.id, { kinds: ['jars', 'dried', 'cold-jars'] });
  const all = new Map([...lots, ...older].filter((l) => l.unit !== 'g').map((l) => [l.id, l]));
  return cardsOf(ctx, [...all.values()]);
}

async function cardsOf(ctx: Context, lots: readonly HeldLot[]): Promise<JarCard[]> {
  const contents = await contentsOf(ctx, lots);
  return lots.map((l) => cardOf(ctx, contents.get(l.id) as JarContents));
}

function cardOf(ctx: Context, c: JarContents): JarCard {
  const facts = labelFacts(ctx, c);
  const cultivars = new Set(
    ctx.place.crops
      .flatMap((crop) => crop.plantings)
      .filter((p) => c.trees.includes(p.code))
      .flatMap((p) => (p.cultivar ? [p.cultivar] : [])),
  );
  return {
    lot: c.lot.code,
    slug: lineSlug(c.lot.label),
    name: facts.name,
    allergens: allergensOf(c.ingredients ?? []),
    ingredients: ingredientText(c.ingredients),
    doubts: (c.ingredients ?? []).filter((i) => i.basis === 'recipe').map((i) => i.name),
    samePan: c.samePan.map((b) => ({ line: b.label, allergens: recipeAllergens(ctx, b.recipeId) })),
    trees: c.trees,
    youngTrees: (ctx.place.settings.nursery ?? [])
      .filter((n) => cultivars.has(n.cultivar))
      .map(({ cultivar, forSale }) => ({ cultivar, forSale })),
    madeOn: longDate(c.lot.madeOn),
    bestBefore: c.lot.bestBefore ? longDate(c.lot.bestBefore) : null,
    net: netText(facts.netG),
    against: reasonsAgainstSale(ctx, c),
    onHand: c.lot.onHand > 0,
  };
}

const recipeAllergens = (ctx: Context, recipeId: string): string[] => [
  ...new Set(
    (recipeHere(ctx.place, recipeId)?.others ?? []).flatMap((d) =>
      doseItem(d.item).allergens.map((a) => `${a} (${doseItem(d.item).nut ?? doseItem(d.item).ingredient})`),
    ),
  ),
];
