/**
 * What to order, and by when: jars by size, lids, sugar, acid, buffers, labels. The plan is what the lists say to make; a
 * household that plans otherwise types its own figures, and every number opens to what it was reckoned from.
 */
import { cases, jarsToOrder, lidsToOrder } from '#lib/forecast/order-count.ts';
import type { OrderAsk } from '#lib/forms/order-ask.ts';
import { DOSE_ITEMS } from '#lib/reference/recipes/dose-items.ts';
import { counted } from '#lib/units/format.ts';
import { addDays, daysBetween, longDate, type PlainDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { MATERIAL } from './plan-recipes.ts';
import { recipeHere } from './recipes-here.ts';
import { type SeasonLine, seasonLines } from './season-lines.ts';
import type { ListedLine } from './season-listed.ts';
import { seasonLists } from './season-lists.ts';
import { type ForecastInput, seasonInput } from './season-scenario.ts';
import { type SeasonSnapshot, seasonSnapshot } from './season-snapshot.ts';
import { calendarOfUse } from './season-use.ts';

export interface OrderWhy {
  formula: string;
  inputs: { label: string; value: string; from?: string }[];
  source: string;
  status: string;
  changes?: string;
}
export interface OrderRow {
  id: string;
  what: string;
  /** Number or mass to order, and as it is sold. */
  amount: number;
  unit: string;
  packs: number;
  pack: string;
  text: string;
  by: PlainDate;
  why: OrderWhy;
}
export interface JarAsked {
  code: string;
  label: string;
  fills: number;
  before: number;
  back: number;
  per: number;
  empties: number;
  /** What the lists say, where the household typed another figure. */
  reckoned: { fills: number; before: number; back: number };
}
export interface OrderView {
  today: PlainDate;
  by: PlainDate;
  boxOf: number;
  bagKg: number;
  jars: JarAsked[];
  rows: OrderRow[];
  /** The plan behind it: lines with the jars to make. */
  plan: {
    id: string;
    line: string;
    itemLabel: string;
    batches: number;
    jars: number;
    before: number;
    lastYear: number;
  }[];
}

const DOZEN = 12;
const BAG_KG = 5;
const LABELS_PER_SHEET = 24;
/** Millilitres of each buffer poured for one reading and thrown away, and what a bottle holds. From memory. */
const BUFFER = { mlPerReading: 20, bottleMl: 250 };
/** Most of a year's jars are filled by then: what the date is set to before anybody chooses one. */
const MOST = 0.9;
const OWN = 'this place’s own records and settings';

export async function readOrders(ctx: Context, ask: OrderAsk): Promise<OrderView> {
  return seasonOrders(await seasonSnapshot(ctx), ask);
}

interface Planned {
  listed: ListedLine;
  line: SeasonLine;
  meta: ForecastInput['lines'][number];
  product: ForecastInput['scenario']['products'][number];
  days: { day: PlainDate; jars: number }[];
}

export function seasonOrders(s: SeasonSnapshot, ask: OrderAsk): OrderView {
  const input = seasonInput(s);
  const of = seasonLines(s);
  const listed = seasonLists(s, input, null).lines;
  const planned = of.flatMap((line, i): Planned[] => {
    const l = listed[i] as ListedLine;
    const meta = input.lines[i] as Planned['meta'];
    const product = input.scenario.products[i] as Planned['product'];
    return l.make.jars > 0 ? [{ listed: l, line, meta, product, days: makingDays(s, line, l) }] : [];
  });
  const by = ask.by ?? usualDate(s.today, planned);
  const weeks = Math.max(0, daysBetween(s.today, by) / 7);
  const stall = calendarOfUse(of.map((l) => l.weeks)).comingStall;
  const jars = s.place.jarKinds
    .filter((k) => k.canning)
    .map((kind): JarAsked => {
      const mine = planned.filter((p) => p.listed.item === kind.code);
      const fills = sum(mine, (p) => p.listed.make.jars);
      const before = sum(mine, (p) => jarsBefore(p, by));
      const back = Math.round(
        sum(
          listed.filter((l) => l.item === kind.code),
          (l) =>
            backBy(
              l,
              {
                weeks,
                stall,
                before: sum(
                  mine.filter((p) => p.listed.id === l.id),
                  (p) => jarsBefore(p, by),
                ),
              },
              s,
            ),
        ),
      );
      const typed = ask.jars[kind.code] ?? {};
      return {
        code: kind.code,
        label: kind.label,
        fills: typed.fills ?? fills,
        before: Math.min(typed.before ?? before, typed.fills ?? fills),
        back: typed.back ?? back,
        per: typed.per ?? DOZEN,
        empties: onHand(s, (l) => l.kind === 'empties' && l.item === kind.code),
        reckoned: { fills, before, back },
      };
    });
  const boxOf = ask.boxOf ?? DOZEN;
  const bagKg = ask.bagKg ?? BAG_KG;
  const asked = { s, by, jars, planned, boxOf, bagKg };
  return {
    today: s.today,
    by,
    boxOf,
    bagKg,
    jars,
    rows: [
      ...jars.filter((j) => j.fills > 0 || j.before > 0).map((j) => jarRow(asked, j)),
      lidRow(asked),
      sugarRow(asked),
      ...acidRows(asked),
      ...bufferRows(asked),
      labelRow(asked),
    ],
    plan: planned.map((p) => ({
      id: p.listed.id,
      line: p.listed.line,
      itemLabel: p.listed.itemLabel,
      batches: p.listed.make.batches,
      jars: p.listed.make.jars,
      before: jarsBefore(p, by),
      lastYear: p.listed.lastYear.jars,
    })),
  };
}

interface Asked {
  s: SeasonSnapshot;
  by: PlainDate;
  jars: JarAsked[];
  planned: Planned[];
  boxOf: number;
  bagKg: number;
}

const sum = <T>(rows: readonly T[], of: (row: T) => number): number => rows.reduce((n, r) => n + of(r), 0);
const onHand = (s: SeasonSnapshot, fits: (l: SeasonSnapshot['lots'][number]) => boolean): number =>
  sum(s.lots.filter(fits), (l) => l.onHand);

/** Last year's batch days, a year later; where none is on record, the middle of the next harvest. */
function makingDays(s: SeasonSnapshot, line: SeasonLine, l: ListedLine): Planned['days'] {
  const again = line.batches.map((b) => {
    const day = addDays(b.day as PlainDate, 364);
    return { day: day < s.today ? addDays(day, 364) : day, jars: b.jars };
  });
  return again.length > 0 ? again : [{ day: l.on, jars: l.make.jars }];
}

/** Of a line's jars to make, those made before a day: shared out as last year's batches were. */
function jarsBefore(p: Planned, by: PlainDate): number {
  const all = sum(p.days, (d) => d.jars);
  const before = sum(
    p.days.filter((d) => d.day < by),
    (d) => d.jars,
  );
  return all > 0 ? Math.round((p.listed.make.jars * before) / all) : 0;
}

/** First of the month by which nine tenths of the year's jars are filled. */
function usualDate(today: PlainDate, planned: readonly Planned[]): PlainDate {
  const all = sum(planned, (p) => p.listed.make.jars);
  for (let month = 1; month <= 12; month++) {
    const day = firstOfMonth(today, month);
    if (sum(planned, (p) => jarsBefore(p, day)) >= MOST * all) return day;
  }
  return firstOfMonth(today, 12);
}
function firstOfMonth(today: PlainDate, ahead: number): PlainDate {
  const month = Number(today.slice(5, 7)) - 1 + ahead;
  return `${Number(today.slice(0, 4)) + Math.floor(month / 12)}-${String((month % 12) + 1).padStart(2, '0')}-01` as PlainDate;
}

/** Empties a line gives back by then; no more than stand there and are made before. */
function backBy(
  l: ListedLine,
  o: { weeks: number; stall: readonly boolean[]; before: number },
  s: SeasonSnapshot,
): number {
  const { jarsBack } = s.place.settings;
  const stallWeeks = o.stall.slice(0, Math.round(o.weeks)).filter(Boolean).length;
  const eatenGiven = (l.use.perYear * o.weeks) / 52;
  const sold = l.use.stallWeeks > 0 ? (l.use.sold / l.use.stallWeeks) * stallWeeks : 0;
  const used = eatenGiven + sold;
  const there = used > 0 ? Math.min(1, (l.onHand + o.before) / used) : 0;
  const eatenShare = l.use.perYear > 0 ? l.eatenYear / l.use.perYear : 0;
  return (
    there * (eatenGiven * (eatenShare * jarsBack.eaten + (1 - eatenShare) * jarsBack.given) + sold * jarsBack.sold)
  );
}

const packed = (order: number, packs: number, per: number, dozen: string, other: string): string =>
  order === 0 ? 'none' : per === DOZEN ? `${order} → ${packs} ${dozen}` : `${order} → ${packs} ${other} of ${per}`;

function jarRow({ s, by }: Asked, j: JarAsked): OrderRow {
  const { breakage, reserve, jarsBack } = s.place.settings;
  const o = jarsToOrder({
    fillsByDate: j.before,
    fills: j.fills,
    empties: j.empties,
    back: j.back,
    breakage,
    reserve,
    perCase: j.per,
  });
  const per = (share: number) => `${Math.round(share * 1000) / 10} %`;
  const state = o.short > 0 ? `${o.short} short` : o.short === 0 ? 'none short' : `${-o.short} to spare`;
  return {
    id: `jars ${j.code}`,
    what: `Jars, ${j.label}`,
    amount: o.order,
    unit: 'jar',
    packs: o.cases,
    pack: j.per === DOZEN ? 'dozen' : `case of ${j.per}`,
    text: packed(o.order, o.cases, j.per, 'dozen', 'cases'),
    by,
    why: {
      formula: `${j.before} - ${j.empties} - ${j.back} = ${state}; + ${o.broken} breakage + ${o.reserve} reserve = ${o.order}`,
      inputs: [
        { label: `Fills before ${longDate(by)}`, value: String(j.before), from: fromOf(j.before, j.reckoned.before) },
        { label: 'Empty on hand', value: String(j.empties), from: 'the ledger' },
        { label: 'Expected back by then', value: String(j.back), from: fromOf(j.back, j.reckoned.back) },
        { label: 'Breakage', value: `${o.broken}`, from: `${per(breakage)} of ${j.fills} fills` },
        { label: 'Reserve', value: `${o.reserve}`, from: `${per(reserve)} of ${j.fills} fills` },
      ],
      source: `${OWN}; of jars eaten ${per(jarsBack.eaten)} come back, of those given ${per(jarsBack.given)}, of those sold ${per(jarsBack.sold)}`,
      status: 'common practice; the shares are this household’s to set',
      changes: 'the plan, the date, jars counted at a stock-take, the shares under Place',
    },
  };
}

const fromOf = (value: number, reckoned: number): string =>
  value === reckoned ? 'reckoned from the lists and last year’s days' : `typed; the lists say ${reckoned}`;

const isOldLid = (l: SeasonSnapshot['lots'][number]): boolean =>
  l.item === 'lid-regular-old' || l.flags.some((f) => f.includes('over five years'));

function lidRow({ s, by, jars, boxOf }: Asked): OrderRow {
  const fills = sum(jars, (j) => j.fills);
  const usable = onHand(s, (l) => l.kind === 'lids' && l.item === 'lid-regular' && !isOldLid(l));
  const old = onHand(s, (l) => l.kind === 'lids' && isOldLid(l));
  const wide = onHand(s, (l) => l.kind === 'lids' && l.item === 'lid-wide');
  const margin = s.place.settings.lidMargin;
  const o = lidsToOrder({ fills, margin, usable, perBox: boxOf });
  return {
    id: 'lids',
    what: 'Lids, regular',
    amount: o.order,
    unit: 'lid',
    packs: o.boxes,
    pack: `box of ${boxOf}`,
    text: o.order === 0 ? 'none' : `${o.order} → ${counted(o.boxes, 'box', 'boxes')} of ${boxOf}`,
    by,
    why: {
      formula: `${fills} × ${1 + margin} = ${o.needed}; - ${usable} = ${o.order}`,
      inputs: [
        { label: 'Fills of the year', value: String(fills), from: 'all sizes of the plan' },
        {
          label: 'For lids that fail and jars done again',
          value: `${Math.round(margin * 1000) / 10} %`,
          from: 'Place',
        },
        { label: 'Usable on hand', value: String(usable), from: 'the ledger' },
        ...(old > 0 ? [{ label: 'Not counted', value: String(old), from: 'over five years old' }] : []),
        ...(wide > 0 ? [{ label: 'Not counted', value: String(wide), from: 'wide lids do not fit these jars' }] : []),
      ],
      source: `${OWN}; a flat lid is used once, and no lid over five years old (lid makers’ advice as given by US extension services)`,
      status: 'common practice',
      changes: 'the plan and the lids on hand',
    },
  };
}

function sugarRow({ s, by, planned, bagKg }: Asked): OrderRow {
  const need = sum(planned, (p) => p.listed.make.jars * p.product.sugarKgPerJar);
  const there = onHand(s, (l) => l.kind === 'supply' && l.item === 'sugar') / 1000;
  const order = Math.max(0, Math.ceil(need - there));
  const bags = cases(order, bagKg);
  const most = [...planned].sort(
    (a, b) => b.listed.make.jars * b.product.sugarKgPerJar - a.listed.make.jars * a.product.sugarKgPerJar,
  );
  return {
    id: 'sugar',
    what: 'Sugar',
    amount: order,
    unit: 'kg',
    packs: bags,
    pack: `bag of ${bagKg} kg`,
    text: order === 0 ? 'none' : `${order} kg → ${counted(bags, 'bag')} of ${bagKg} kg`,
    by,
    why: {
      formula: `${need.toFixed(1)} kg for the plan - ${there.toFixed(1)} kg on hand`,
      inputs: most.slice(0, 4).map((p) => ({
        label: p.listed.line,
        value: `${(p.listed.make.jars * p.product.sugarKgPerJar).toFixed(1)} kg`,
        from: `${p.listed.make.jars} × ${Math.round(p.product.sugarKgPerJar * 1000)} g, ${p.meta.madeBasis}`,
      })),
      source: 'the sugar of your own batches, else the recipe book',
      status: 'measured here',
      changes: 'the lists under “What to make”; fills typed above do not change it',
    },
  };
}

function acidRows({ s, by, planned }: Asked): OrderRow[] {
  const need = new Map<string, { grams: number; lines: OrderWhy['inputs'] }>();
  for (const p of planned) {
    const recipe = recipeHere(s.place, p.line.recipeId ?? '');
    if (!recipe?.acid || !('gPerKg' in recipe.acid)) continue;
    const grams = recipe.acid.gPerKg * p.product.kgPerJar * p.listed.make.jars;
    const known = need.get(recipe.acid.item) ?? { grams: 0, lines: [] };
    known.grams += grams;
    known.lines.push({
      label: p.listed.line,
      value: `${Math.round(grams)} g`,
      from: `${p.listed.make.jars} jars, ${recipe.acid.gPerKg} g a kg of fruit`,
    });
    need.set(recipe.acid.item, known);
  }
  return [...need.entries()].sort().map(([item, { grams, lines }]): OrderRow => {
    // A bottle is sold by volume: bottled lemon juice weighs about 1.03 g a millilitre (from memory), taken as 1.
    const there = onHand(s, (l) => l.kind === 'supply' && l.item === (MATERIAL[item] ?? item));
    const order = Math.ceil(Math.max(0, grams - there) / 10) * 10;
    const name = DOSE_ITEMS[item as keyof typeof DOSE_ITEMS]?.name ?? item;
    return {
      id: `acid ${item}`,
      what: name.charAt(0).toUpperCase() + name.slice(1),
      amount: order,
      unit: 'g',
      packs: order,
      pack: 'g',
      text: order === 0 ? 'none' : `${order} g`,
      by,
      why: {
        formula: `${Math.round(grams)} g for the plan - ${there} on hand (a millilitre taken as a gram)`,
        inputs: lines.slice(0, 4),
        source: 'the doses of the recipe book, on the fruit as weighed',
        status: 'computed',
        changes: 'the lists under “What to make”',
      },
    };
  });
}

/** Two buffers for every batch of the household's own recipes, which may wait for a meter's reading. */
function bufferRows({ s, by, planned }: Asked): OrderRow[] {
  const readings = sum(
    planned.filter((p) => {
      const recipe = recipeHere(s.place, p.line.recipeId ?? '');
      return p.line.kind === 'jars' && recipe?.origin.standing === 'house';
    }),
    (p) => p.listed.make.batches,
  );
  if (readings === 0) return [];
  const ml = readings * BUFFER.mlPerReading;
  return [4.01, 7].map((pH): OrderRow => {
    const there = onHand(s, (l) => l.item === `buffer-${pH.toFixed(2)}`);
    const order = Math.max(0, ml - there);
    const bottles = cases(order, BUFFER.bottleMl);
    return {
      id: `buffer ${pH}`,
      what: `Buffer, pH ${pH.toFixed(2)}`,
      amount: order,
      unit: 'ml',
      packs: bottles,
      pack: `bottle of ${BUFFER.bottleMl} ml`,
      text: order === 0 ? 'none' : `${order} ml → ${counted(bottles, 'bottle')} of ${BUFFER.bottleMl} ml`,
      by,
      why: {
        formula: `${counted(readings, 'reading')} × ${BUFFER.mlPerReading} ml - ${there} ml on hand`,
        inputs: [
          {
            label: 'Readings',
            value: String(readings),
            from: 'one for each batch of a recipe that is the household’s own',
          },
        ],
        source: 'fresh buffer for every reading, poured away after it; a published recipe kept to needs none',
        status: 'from memory',
        changes: 'a meter that wants a third buffer; buffers past their date',
      },
    };
  });
}

function labelRow({ s, by, jars }: Asked): OrderRow {
  const fills = sum(jars, (j) => j.fills);
  const spare = Math.ceil(s.place.settings.breakage * fills - 1e-9);
  const there = onHand(s, (l) => l.item === 'label');
  const order = Math.max(0, fills + spare - there);
  const sheets = cases(order, LABELS_PER_SHEET);
  return {
    id: 'labels',
    what: 'Labels',
    amount: order,
    unit: 'label',
    packs: sheets,
    pack: `sheet of ${LABELS_PER_SHEET}`,
    text: order === 0 ? 'none' : `${order} → ${counted(sheets, 'sheet')} of ${LABELS_PER_SHEET}`,
    by,
    why: {
      formula: `${fills} fills + ${spare} spoiled in printing - ${there} on hand`,
      inputs: [{ label: 'Fills of the year', value: String(fills), from: 'all sizes of the plan' }],
      source: 'one label a jar; the spare share is that of broken jars',
      status: 'estimate',
    },
  };
}

/** The page's sentence: what to order first of all. */
export function ordersAnswer(view: OrderView): { answer: string; sub: string } {
  const [jars, lids] = [view.rows.filter((r) => r.id.startsWith('jars ')), view.rows.find((r) => r.id === 'lids')];
  const glass = sum(jars, (r) => r.amount);
  const sub = `To be there by ${longDate(view.by)}. Open a line to see what it was reckoned from.`;
  if (glass === 0 && (lids?.amount ?? 0) === 0) return { answer: 'No jar or lid needs ordering', sub };
  const what = [glass > 0 ? counted(glass, 'jar') : null, lids && lids.amount > 0 ? counted(lids.amount, 'lid') : null];
  return { answer: `Order ${what.filter(Boolean).join(' and ')}`, sub };
}
