/** The batch record as somebody asks for it: recipe and source, lots in, weights, process asked and kept, seals, readings, log, where the jars went. */
import { batchOfCode } from '#lib/store/batch-store.ts';
import { bothMasses, bothTemperatures, counted } from '#lib/units/format.ts';
import { longDate, type PlainDate } from '#lib/units/plain-date.ts';
import { celsius } from '#lib/units/quantity.ts';
import type { Context } from './context.ts';
import { readBatch } from './read-batches.ts';
import { readRecall } from './read-recall.ts';
import { readTrace } from './read-trace.ts';
import { recipeHere } from './recipes-here.ts';
import { traceCards } from './trace-cards.ts';

export interface BatchRecordView {
  code: string;
  line: string;
  day: string;
  facts: { what: string; value: string }[];
  /** Lots that went in, lids and glass too. */
  lots: { code: string; label: string; amount: string; from: string }[];
  trees: string[];
  readings: { id: string; when: string; what: string; value: string }[];
  log: { at: string; time: string; what: string }[];
  sums: { what: string; count: number }[];
}

const KINDS: Readonly<Record<string, string>> = { water: 'boiling water', 'set-test': 'set test', ph: 'pH' };

export async function readBatchRecord(ctx: Context, code: string): Promise<BatchRecordView | null> {
  const batch = await batchOfCode(ctx.db, ctx.place.id, code);
  const view = batch ? await readBatch(ctx, code) : null;
  if (!batch || !view) return null;
  const lot = view.jars[0]?.code ?? null;
  const [trace, recall] = lot ? await Promise.all([readTrace(ctx, lot), readRecall(ctx, lot)]) : [null, null];
  const cards = trace ? traceCards(trace) : null;
  const recipe = recipeHere(ctx.place, batch.recipeId);
  const kitchen = ctx.place.kitchens.find((k) => k.id === batch.kitchenId);
  const { sheet } = view;
  const jars = view.jars.filter((j) => j.kind === 'jars');
  const facts: [string, string | null][] = [
    ['Recipe', recipe?.title ?? batch.recipeId],
    ['Its source', sourceOf(recipe)],
    ['Kitchen', kitchen ? `${kitchen.label}, ${kitchen.altitudeM} m above the sea` : null],
    ['Pan', kitchen?.pans.find((p) => p.code === batch.panCode)?.label ?? null],
    ['Water boiled at', sheet?.waterC ? bothTemperatures(celsius(sheet.waterC)) : null],
    ['Fruit as weighed', sheet ? bothMasses(sheet.rawG) : null],
    ['Prepared', sheet ? bothMasses(sheet.preparedG) : null],
    ...(sheet?.doses ?? []).map((d): [string, string] => [d.name, bothMasses(d.grams)]),
    ['Pan weight to stop at', sheet?.finalG ? bothMasses(sheet.finalG) : null],
    ['Filled', recall ? counted(recall.made, 'jar or pack', 'jars and packs') : null],
    ['Headspace', sheet?.headspaceMm ? `${sheet.headspaceMm} mm` : null],
    ['Minutes the table asks', sheet?.processMin ? `${sheet.processMin}, at this altitude` : null],
    [
      'Process',
      jars.length > 0 ? [...new Set(jars.map((j) => j.process ?? 'unknown'))].join(', ') : 'none: kept cold or dry',
    ],
    ['Seals', jars.length > 0 ? [...new Set(jars.map((j) => j.seal ?? 'unknown'))].join(', ') : null],
    ['On hold', view.jars.map((j) => j.hold).find((h) => h !== null) ?? 'no'],
    [
      'For',
      jars.length > 0 ? (trace?.lot.household === false ? 'household, gifts and sale' : 'household and gifts') : null,
    ],
  ];
  return {
    code: view.code,
    line: view.label,
    day: longDate(view.day as PlainDate),
    facts: facts.flatMap(([what, value]) => (value === null ? [] : [{ what, value }])),
    lots: [
      ...(cards?.parents ?? []).map((p) => ({ code: p.code, label: p.label, amount: p.amount, from: p.from })),
      ...(cards?.receipts ?? [])
        .filter((r) => !cards?.parents.some((p) => p.code === r.code))
        .map((r) => ({ ...r, amount: '', from: 'used with it' })),
    ],
    trees: cards?.trees ?? [],
    readings: view.readings.map((r, i) => ({
      id: `${r.at}-${i}`,
      when: `${r.at.slice(0, 10)} ${r.at.slice(11, 16)} UTC`,
      what: KINDS[r.kind] ?? r.kind,
      value: `${r.value} ${r.unit}`,
    })),
    log: view.log,
    sums: recall?.sums ?? [],
  };
}

const sourceOf = (recipe: ReturnType<typeof recipeHere>): string | null => {
  if (!recipe) return null;
  return recipe.origin.standing === 'published' ? recipe.origin.sources.join(', ') : 'house recipe, not a tested one';
};
