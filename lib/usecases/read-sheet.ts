/** The sheet page: what was typed into the address, worked out. */
import { BATCH_LISTS, batchAskForm } from '#lib/forms/batch.ts';
import { isRefusal, type Refusal } from '#lib/ledger/entry.ts';
import { byWeightG, type HeldLot, packG } from '#lib/ledger/lot.ts';
import { counted, kilograms } from '#lib/units/format.ts';
import { batchAskOf } from './batch-ask-of-form.ts';
import type { Context } from './context.ts';
import { type Draft, draftBatch, fruitLabel } from './draft-batch.ts';
import { type DraftView, draftView } from './draft-view.ts';
import { exchangeOptions } from './exchange-dose.ts';

type Typed = Record<string, string | string[] | undefined>;
type Option = { value: string; label: string };

export interface SheetView {
  answer: string;
  sub: string;
  /** What could not be worked with; the sheet then stands without it. */
  problem: string | null;
  props: {
    draft: DraftView;
    typed: {
      recipe: string;
      lots: { id: string; label: string; code: string; onHandKg: string; packs: string | null; kg: string }[];
      trim: string;
      brix: string;
      water: string;
      pan: string;
      kitchen: string;
      jar: string;
      batches: string;
      sugar: string;
      addwater: string;
      pectin: string;
      acid: string;
      stock: string;
      pectinFrom: string;
      acidFrom: string;
    };
    /** The food whose colour the pictures take. */
    foodId: string;
    pans: Option[];
    kitchens: Option[];
    jars: Option[];
    pectins: Option[];
    acids: Option[];
  };
}

/** What may stay empty: left out when it cannot be worked with, so that the sheet stands and the typed text with it. */
const OPTIONAL = [
  'trim',
  'brix',
  'water',
  'batches',
  'sugar',
  'addwater',
  'pectin',
  'acid',
  'stock',
  'pectinFrom',
  'acidFrom',
] as const;

export async function readSheet(ctx: Context, typed: Typed): Promise<SheetView | Refusal> {
  const told = await drafted(ctx, typed);
  if (!isRefusal(told)) return sheetView(ctx, typed, told, null);
  const without = await drafted(ctx, { ...typed, ...Object.fromEntries(OPTIONAL.map((k) => [k, ''])) });
  return isRefusal(without) ? told : sheetView(ctx, typed, without, told.refused);
}

async function drafted(ctx: Context, typed: Typed): Promise<Draft | Refusal> {
  const lists = Object.fromEntries(BATCH_LISTS.map((k) => [k, [typed[k] ?? []].flat()]));
  const parsed = batchAskForm.safeParse({ ...Object.fromEntries(OPTIONAL.map((k) => [k, ''])), ...typed, ...lists });
  if (!parsed.success) return { refused: parsed.error.issues.map((i) => i.message).join('; ') };
  return draftBatch(ctx, batchAskOf(parsed.data));
}

function sheetView(ctx: Context, typed: Typed, draft: Draft, problem: string | null): SheetView {
  const view = draftView(draft);
  const text = (k: string) => (typeof typed[k] === 'string' ? (typed[k] as string) : '');
  return {
    answer: answerOf(view),
    problem,
    sub: view.final
      ? `Cook each to ${kilograms(view.final.value)}${view.process ? `, then ${view.process.value} minutes in the canner` : ''}. Every figure opens to what it rests on.`
      : 'Every figure opens to what it rests on.',
    props: {
      draft: view,
      typed: {
        recipe: draft.recipe.id,
        lots: draft.lots.map(({ lot, grams }) => ({
          id: lot.id,
          label: fruitLabel(lot),
          code: lot.code,
          onHandKg: ((byWeightG(lot) ?? 0) / 1000).toFixed(3),
          packs: packsOf(lot, grams),
          kg: (grams / 1000).toString(),
        })),
        trim: text('trim'),
        brix: text('brix'),
        water: text('water') || (draft.waterFrom === 'reading' ? String(draft.waterC) : ''),
        pan: draft.pan?.code ?? '',
        kitchen: draft.kitchen.id,
        jar: draft.jarKind?.code ?? '',
        batches: text('batches'),
        sugar: text('sugar'),
        addwater: text('addwater'),
        pectin: text('pectin'),
        acid: text('acid'),
        stock: text('stock'),
        pectinFrom: text('pectinFrom'),
        acidFrom: text('acidFrom'),
      },
      foodId: draft.lots[0]?.lot.foodId ?? '',
      pans: draft.kitchen.pans.filter((p) => p.maxFillPercent !== null).map((p) => ({ value: p.code, label: p.label })),
      kitchens: ctx.place.kitchens.map((k) => ({ value: k.id, label: `${k.label}, ${k.altitudeM} m` })),
      jars: jarsFor(ctx, draft),
      ...exchangeOptions(),
    },
  };
}

/** "2.6 packs of 500 g; 0.20 kg stays in the opened one". */
function packsOf(lot: HeldLot, grams: number): string | null {
  const each = packG(lot);
  if (each === null || grams <= 0) return null;
  const over = grams % each;
  const packs = `${Math.round((grams / each) * 10) / 10} packs of ${each} g`;
  return over === 0 ? packs : `${packs}; ${kilograms(each - over)} stays in the opened one`;
}

const answerOf = (v: DraftView): string =>
  v.batches > 1
    ? `${v.title}: ${counted(v.batches, 'batch', 'batches')}, ${counted(v.jars.value, 'jar')} in all`
    : `${v.title}: ${v.jars.value > 0 ? counted(v.jars.value, v.jarLabel ?? 'pack') : 'nothing to fill yet'}`;

/** Every jar kind with a size in the tables: one too large is offered and answered, not hidden. */
const jarsFor = (ctx: Context, draft: Draft): Option[] =>
  draft.recipe.jarSizes.length === 0
    ? []
    : ctx.place.jarKinds.filter((k) => k.size !== null).map((k) => ({ value: k.code, label: k.label }));
