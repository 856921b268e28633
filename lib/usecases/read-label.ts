/** The label of a lot: its facts from the records, and whether it may be printed for that purpose. */
import type { Ingredient } from '#lib/labels/ingredients.ts';
import { type JarLabel, jarLabel, type Keeping, type LabelFacts, type Purpose } from '#lib/labels/jar-label.ts';
import { againstSale } from '#lib/labels/may-be-sold.ts';
import { nameOnLabel } from '#lib/labels/names.ts';
import { type RuleCard, ruleCardOf } from '#lib/labels/rule-card.ts';
import type { HeldLot, LotKind } from '#lib/ledger/lot.ts';
import { pieceCode } from '#lib/ledger/pieces.ts';
import { loadLots, lotOfCode, piecesOf } from '#lib/store/ledger-store.ts';
import type { Context } from './context.ts';
import { contentsOf, type JarContents } from './jar-contents.ts';

/** Lots that carry labels. */
export const LABELLED: readonly LotKind[] = ['jars', 'cold-jars', 'frozen', 'dried'];

const KEEPING: Partial<Record<LotKind, Keeping>> = {
  jars: 'shelf',
  'cold-jars': 'fridge',
  frozen: 'freezer',
  dried: 'dry',
};

export interface LabelView {
  lot: string;
  line: string;
  /** Numbers of the jars on hand, as codes. */
  pieces: string[];
  label: JarLabel | null;
  blanks: string[];
  against: string[];
  ingredients: Ingredient[] | null;
  /** Words of what is not from a weighing, for the person who prints. */
  doubts: string[];
  noted: string[];
}

/** The label for that purpose of a lot of jars or packs; null when there is no such lot. */
export async function readLabel(ctx: Context, code: string, purpose: Purpose): Promise<LabelView | null> {
  const lot = await lotOfCode(ctx.db, ctx.place.id, code);
  if (!lot || !LABELLED.includes(lot.kind) || lot.unit === 'g') return null;
  const contents = (await contentsOf(ctx, [lot])).get(lot.id) as JarContents;
  const pieces = (await piecesOf(ctx.db, ctx.place.id, [lot.id])).get(lot.id) ?? [];
  const facts = labelFacts(ctx, contents);
  const answer = jarLabel(facts, ruleCard(ctx), purpose);
  return {
    lot: lot.code,
    line: lot.label,
    pieces: pieces.map((p) => pieceCode(lot.code, p)),
    label: answer.ok ? answer.label : null,
    blanks: answer.ok ? [] : answer.blanks,
    against: answer.ok ? [] : answer.against,
    ingredients: contents.ingredients,
    doubts: (contents.ingredients ?? [])
      .filter((i) => i.basis === 'recipe')
      .map((i) => `${i.name}: by the recipe, no weight is on record`),
    noted: (contents.ingredients ?? []).filter((i) => i.basis === 'noted').map((i) => i.name),
  };
}

export const ruleCard = (ctx: Context): RuleCard => ruleCardOf(ctx.place.settings.ruleCard);

/** Reasons against selling the jars of a lot; none when they may go to the stall. */
export const reasonsAgainstSale = (ctx: Context, c: JarContents): string[] => {
  const card = ruleCard(ctx);
  return againstSale({
    lot: c.lot,
    juiceRule: card.juice,
    ingredientsKnown: c.ingredients !== null,
    badFruit: c.badFruit,
    ruleCardChecked: card.checkedWith !== '' && card.checkedOn !== '',
  });
};

export const labelFacts = (ctx: Context, c: JarContents): LabelFacts => ({
  name: nameOnLabel(c.lot.label, c.names),
  ingredients: c.ingredients,
  netG: typeof c.lot.details.netG === 'number' ? c.lot.details.netG : null,
  madeOn: c.lot.madeOn,
  bestBefore: c.lot.bestBefore,
  lot: c.lot.code,
  keeping: KEEPING[c.lot.kind] ?? 'shelf',
  processed: c.lot.process === 'as tested',
  againstSale: reasonsAgainstSale(ctx, c),
});

/** Lots with jars or packs on hand, the newest first. */
export async function labelledLots(ctx: Context): Promise<HeldLot[]> {
  const lots = await loadLots(ctx.db, ctx.place.id, { kinds: LABELLED });
  return lots.filter((l) => l.unit !== 'g').reverse();
}
