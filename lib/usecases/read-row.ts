/** A row or tree over the years: kilograms, culls and jars, beside its neighbours, and whether its jars were finished. */
import { type RowYear, rowHistory, rowKey } from '#lib/ledger/row-history.ts';
import { offYearAhead } from '#lib/science/bearing.ts';
import { loadActs } from '#lib/store/act-store.ts';
import { loadLots, movementsBetween } from '#lib/store/ledger-store.ts';
import type { Crop, Place } from '#lib/store/place.ts';
import { counted } from '#lib/units/format.ts';
import { addDays, type PlainDate, yearOf } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { windowOf } from './season-crops.ts';

export interface RowView {
  answer: string;
  sub: string;
  years: { year: string; kg: string; each: string; cull: string; jars: string; finished: string }[];
  neighbours: { id: string; row: string; crop: string; kg: string; each: string; against: string; here: boolean }[];
  finishedSays: string;
  offYear: string;
}

const YEARS_BACK = 10;
/** Fewer jars than this of a row say nothing about what people liked. */
const ENOUGH_JARS = 6;

/** `code`: a row ("C1") or a tree in it ("C1-06"), in any case. Null when there is neither. */
export async function readRow(ctx: Context, code: string): Promise<RowView | null> {
  const found = rowOf(ctx.place, code);
  if (!found) return null;
  const from = addDays(ctx.today, -366 * YEARS_BACK);
  const [lots, moved, acts, corrections] = await Promise.all([
    loadLots(ctx.db, ctx.place.id, { emptied: true }),
    movementsBetween(ctx.db, ctx.place.id, from, ctx.today),
    loadActs(ctx.db, ctx.place.id, { kinds: ['harvest'], to: ctx.today }),
    loadActs(ctx.db, ctx.place.id, { kinds: ['correct'] }),
  ]);
  const wrong = new Set(corrections.flatMap((a) => (a.corrects ? [a.corrects] : [])));
  const rows = rowHistory({
    pickings: acts.flatMap((a) => {
      const row = wrong.has(a.id) ? null : pickedRow(ctx.place, a.payload);
      return row ? [{ row, year: yearOf(a.day), movements: a.movements }] : [];
    }),
    lots,
    movements: moved.filter((m) => m.kind !== 'correct' && !wrong.has(m.actId)),
  });
  return rowView(ctx.place, found, { rows, today: ctx.today });
}

interface Found {
  row: string;
  /** Tree within the row, as typed; null for the row itself. */
  tree: string | null;
  crops: Crop[];
}

function rowOf(place: Place, typed: string): Found | null {
  const code = typed.trim().toUpperCase();
  const tree = place.crops.find((c) => c.plantings.some((p) => p.code.toUpperCase() === code && p.row !== p.code));
  const row = tree?.plantings.find((p) => p.code.toUpperCase() === code)?.row ?? code;
  const crops = tree ? [tree] : place.crops.filter((c) => c.plantings.some((p) => p.row.toUpperCase() === code));
  const name = crops[0]?.plantings.find((p) => p.row.toUpperCase() === row.toUpperCase())?.row;
  return name ? { row: name, tree: tree ? code : null, crops } : null;
}

/** Row of a harvest act: "C1|quince" as weighed in the shed, or row and crop apart. */
function pickedRow(place: Place, payload: Record<string, unknown>): string | null {
  const { rowId, row, crop } = payload;
  const [name, code] = typeof rowId === 'string' ? rowId.split('|') : [row, crop];
  const id = place.crops.find((c) => c.code === code)?.id;
  return typeof name === 'string' && id ? rowKey(name, id) : null;
}

const plantsIn = (crop: Crop, row: string): number =>
  crop.plantings.filter((p) => p.row === row).reduce((n, p) => n + p.count, 0);
const kgText = (kg: number): string => (kg < 10 ? kg.toFixed(1) : String(Math.round(kg)));
const NONE: RowYear[] = [];

export function rowView(
  place: Place,
  found: Found,
  { rows, today }: { rows: ReadonlyMap<string, RowYear[]>; today: PlainDate },
): RowView {
  const of = found.crops.map((crop) => {
    const years = rows.get(rowKey(found.row, crop.id)) ?? NONE;
    return { crop, years, plants: plantsIn(crop, found.row) };
  });
  const years = of.flatMap(({ crop, years: list, plants }) => list.map((y) => ({ crop, plants, ...y })));
  const last = years.map((y) => y.year).sort((a, b) => b - a)[0] ?? null;
  return {
    ...answerOf(found, of, { last, today }),
    years: years
      .sort((a, b) => b.year - a.year)
      .map((y) => ({
        year: of.length > 1 ? `${y.year} ${y.crop.label}` : String(y.year),
        kg: kgText(y.pickedG / 1000),
        each: y.plants > 0 ? kgText(y.pickedG / 1000 / y.plants) : '',
        cull: y.pickedG > 0 ? `${Math.round((100 * y.cullG) / y.pickedG)} %` : '',
        jars: String(Math.round(y.jars)),
        finished: y.jars >= 0.5 ? `${Math.round(y.finished)} of ${Math.round(y.jars)}` : '',
      })),
    neighbours: last === null ? [] : neighboursOf(place, found, rows, last),
    finishedSays: finishedSays(place, found, rows),
    offYear: of
      .map(({ crop, years: list }) => offYearSays(crop, list))
      .filter((x) => x !== '')
      .join(' '),
  };
}

function answerOf(
  found: Found,
  of: { crop: Crop; years: RowYear[]; plants: number }[],
  { last, today }: { last: number | null; today: PlainDate },
) {
  const name = found.tree ?? `Row ${found.row}`;
  const crops = found.crops.map((c) => c.label).join(' and ');
  const sub = found.tree
    ? `${crops}. Fruit is weighed by the row, so a tree is judged by its row: weigh it apart to know more.`
    : `${crops}. Weighed by the row; jars by the row’s share of each pan.`;
  if (last === null) return { answer: `${name}: nothing picked on record yet`, sub };
  const best = of[0] as (typeof of)[number];
  const year = best.years.find((y) => y.year === last);
  const kg = (year?.pickedG ?? 0) / 1000;
  const usual = best.crop.gPerUnit / 1000;
  const each = best.plants > 0 ? kg / best.plants : kg;
  const ordinary = `${kgText(usual)} of an ordinary year`;
  const open = last === yearOf(today) && today <= windowOf(best.crop, last).to;
  const worth = each >= 1.1 * usual ? 'above' : each <= 0.9 * usual ? 'below' : 'about';
  return {
    answer: open
      ? `${name}: ${kgText(each)} kg a ${best.crop.unit} so far in ${last}, of the ${ordinary}`
      : `${name}: ${kgText(each)} kg a ${best.crop.unit} in ${last}, ${worth} the ${ordinary}`,
    sub,
  };
}

/** Rows of the same crops in the same year; where a crop has one row only, that is said by the empty table. */
function neighboursOf(_place: Place, found: Found, rows: ReadonlyMap<string, RowYear[]>, year: number) {
  return found.crops.flatMap((crop) => {
    const each = [...new Set(crop.plantings.map((p) => p.row))].map((row) => {
      const kg = (rows.get(rowKey(row, crop.id))?.find((y) => y.year === year)?.pickedG ?? 0) / 1000;
      return { row, kg, each: kg / Math.max(1, plantsIn(crop, row)) };
    });
    const mine = each.find((e) => e.row === found.row)?.each ?? 0;
    return each
      .sort((a, b) => b.each - a.each)
      .map((e) => ({
        id: `${e.row} ${crop.id}`,
        row: e.row,
        crop: crop.label,
        kg: kgText(e.kg),
        each: kgText(e.each),
        against: e.row === found.row || mine === 0 ? '' : `${Math.round((100 * e.each) / mine)} % of this one`,
        here: e.row === found.row,
      }));
  });
}

/** Where this row stands among those whose jars people finished. */
function finishedSays(place: Place, found: Found, rows: ReadonlyMap<string, RowYear[]>): string {
  const label = new Map(place.crops.map((c) => [c.id, c.label]));
  const all = [...rows.entries()]
    .map(([key, years]) => {
      const jars = years.reduce((n, y) => n + y.jars, 0);
      const finished = years.reduce((n, y) => n + y.finished, 0);
      const [row, cropId] = key.split('|') as [string, string];
      return { row, cropId, jars, finished, share: jars > 0 ? finished / jars : 0 };
    })
    .filter((r) => r.jars >= ENOUGH_JARS)
    .sort((a, b) => b.share - a.share);
  const best = all[0];
  const mine = all.find((r) => r.row === found.row && found.crops.some((c) => c.id === r.cropId));
  if (!best) return 'Too few jars are on record to say whose were finished.';
  const say = (r: typeof best) => `${Math.round(r.finished)} of ${Math.round(r.jars)}`;
  const first = `Finished first, of all rows: ${best.row} ${label.get(best.cropId) ?? ''}, ${say(best)} jars and packs eaten, given or sold.`;
  if (!mine) return `Fewer than ${ENOUGH_JARS} jars were made of this row’s fruit. ${first}`;
  if (mine === best) return `The jars people finished first came from here: ${say(best)} eaten, given or sold.`;
  return `${say(mine)} jars and packs of this row’s fruit were eaten, given or sold: place ${all.indexOf(mine) + 1} of ${counted(all.length, 'row')}. ${first}`;
}

function offYearSays(crop: Crop, years: readonly RowYear[]): string {
  const kg = years.map((y) => ({ year: y.year, kg: y.pickedG / 1000 }));
  if (kg.length === 0) return '';
  const off = offYearAhead(kg);
  if (off)
    return `${crop.label} bears by turns here (index ${off.index.toFixed(2)}): the next year may be a ${off.next} one. One ${off.next === 'light' ? 'heavy' : 'light'} year is no verdict on the tree.`;
  return kg.length < 3
    ? `${crop.label}: ${counted(kg.length, 'year')} on record; whether it bears by turns is asked from three on. One heavy year is no verdict on the tree.`
    : `${crop.label}: no heavy and light years by turns in ${kg.length} years.`;
}
