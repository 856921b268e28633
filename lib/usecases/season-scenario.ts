/** From one look at the place to the season ahead as plain numbers: what the forecast is run on, and nothing else. */
import type { Taste } from '#lib/forecast/batch-worth.ts';
import type { Intention, Lot, PlannedBatch, ProductSpec, Scenario } from '#lib/forecast/scenario.ts';
import { addDays, daysBetween, type PlainDate } from '#lib/units/plain-date.ts';
import { lineSlug } from './read-pantry.ts';
import { recipeHere } from './recipes-here.ts';
import { type SeasonCrop, seasonCrops } from './season-crops.ts';
import { type SeasonLine, seasonLines } from './season-lines.ts';
import { HOUR_VALUE, type LineMaking, lineMaking, WASTE_VALUE } from './season-making.ts';
import { batchesAhead } from './season-plan.ts';
import { type FruitPool, fruitPools } from './season-pools.ts';
import { SEASON_WEEKS, type SeasonSnapshot } from './season-snapshot.ts';
import {
  boardCm,
  jarKind,
  largestFreezerL,
  roomOfJar,
  type SeasonStore,
  seasonContainers,
  seasonLids,
  seasonStores,
  storeOfKind,
  sugarOnHandG,
} from './season-stores.ts';
import { calendarOfUse, type LineUse, lineUse, type UseCalendar, type UseWeek } from './season-use.ts';

/** What is kept of a line beside its numbers in the scenario; positions are the same as the scenario's products. */
export interface LineMeta {
  id: string;
  line: string;
  slug: string;
  item: string;
  itemLabel: string;
  /** Put up in a jar made for canning. */
  inGlass: boolean;
  foodId: string;
  onHand: number;
  heldBack: number;
  /** Weeks (of the year ahead) in which jars on hand pass their best-before day. */
  bestBy: number[];
  /** "None left" is asked from the end of the season under way to the next harvest of its fruit. */
  fromWeek: number;
  toWeek: number;
  made: boolean;
  madeBasis: string;
  jarsPerBatch: number;
  usePerWeek: number;
  /** What making aims at: the learnt use, but no more a year than was made or used in the last one. */
  wantedPerWeek: number;
  learnt: LineUse['learnt'];
}

export interface ForecastInput {
  today: PlainDate;
  /** Without `batchWorth`, which follows from the rest. */
  scenario: Scenario;
  taste: Taste;
  /** Positions as in `scenario.crops`. */
  pools: FruitPool[];
  crops: SeasonCrop[];
  lines: LineMeta[];
  stores: Pick<SeasonStore, 'id' | 'kind' | 'label' | 'basis'>[];
  lidMargin: number;
  breakage: number;
  sugarOnHandG: number;
  /** One shelf, cm of front; the largest freezer, litres (null where none is on record). */
  boardCm: number;
  largestFreezerL: number | null;
}

/** A jar is taken to stay half a year past its best-before day, which is about quality. Estimate. */
const KEPT_ON_WEEKS = 26;
const LIFE_WEEKS = 52;
/** Jars of a batch vary by so much. From memory. */
const YIELD_SD = 0.06;
/** Weeks until a jar taken comes back empty. From memory. */
const BACK_AFTER_WEEKS = 3;
/** One kitchen week in eight falls through, and one planned batch in ten. From memory. */
const MISSED_WEEK = 1 / 8;
const PLANNED_HAPPENS = 0.9;

/** Same snapshot, same numbers: nothing here draws or reads a clock. */
export function seasonInput(s: SeasonSnapshot): ForecastInput {
  const lines = seasonLines(s);
  const crops = seasonCrops(s);
  const pools = fruitPools(s, crops);
  const stores = seasonStores(s);
  const items = [...new Set(lines.map((l) => l.item))].sort();
  const calendar = calendarOfUse(lines.map((l) => l.weeks));
  const usual = { sold: usualIn(lines, 'sold', calendar.pastStall), given: usualIn(lines, 'given', calendar.pastGift) };
  const known = lines.map((line) => ({
    line,
    use: lineUse({ weeks: line.weeks, calendar, stated: statedRate(s, line), usual, back: s.place.settings.jarsBack }),
    making: lineMaking(
      line,
      recipeHere(s.place, line.recipeId ?? '') ?? null,
      pools,
      jarKind(s, line.item)?.fillMl ?? 500,
    ),
  }));
  const scenario: Scenario = {
    weeks: SEASON_WEEKS,
    stores: stores.map(({ id, capacity, unit, hard }) => ({
      id,
      capacity,
      unit,
      ...(hard && capacity > 0 ? { hard } : {}),
    })),
    containers: seasonContainers(s, items),
    lids: seasonLids(s),
    crops: pools.map((p) => ({ id: p.id, keepPerWeek: p.keepPerWeek, freshKgPerWeek: 0, onHandKg: p.onHandKg })),
    products: known.map((k) => productOf(s, k, { items, stores })),
    lots: lines.flatMap((line, product) =>
      line.lots.map(
        (l): Lot => ({
          product,
          jars: l.onHand,
          bestByWeek: goneByWeek(s, l.bestBefore),
          ...(typeof l.details.offBy === 'number' ? { offBy: l.details.offBy } : {}),
        }),
      ),
    ),
    events: [],
    planned: plannedBatches(s, known),
    intentions: known.flatMap(({ making }, product): Intention[] =>
      making.pool < 0 ? [] : [{ product, target: 0, fromWeek: 0, toWeek: SEASON_WEEKS - 1, maxBatchesPerWeek: 1 }],
    ),
    hours: Array<number>(SEASON_WEEKS).fill(kitchenHours(s)),
    missWeekProb: MISSED_WEEK,
  };
  return {
    today: s.today,
    scenario,
    taste: { value: known.map((k) => k.making.value), waste: WASTE_VALUE, perHour: HOUR_VALUE },
    pools,
    crops,
    lines: known.map((k) => metaOf(s, k, pools)),
    stores: stores.map(({ id, kind, label, basis }) => ({ id, kind, label, basis })),
    lidMargin: s.place.settings.lidMargin,
    breakage: s.place.settings.breakage,
    sugarOnHandG: sugarOnHandG(s),
    boardCm: boardCm(s),
    largestFreezerL: largestFreezerL(s),
  };
}

interface Known {
  line: SeasonLine;
  use: LineUse;
  making: LineMaking;
}

/** Kitchen hours of a week: everybody's free minutes, Monday to Sunday. */
const kitchenHours = (s: SeasonSnapshot): number =>
  s.place.people.reduce((sum, p) => sum + p.minutes.reduce((a, b) => a + b, 0), 0) / 60;

const statedRate = (s: SeasonSnapshot, line: SeasonLine) => {
  const rate = s.rates.find((r) => lineSlug(r.line) === line.slug);
  return rate ? { perWeek: rate.perWeek, source: rate.source } : null;
};

/** Jars a line loses in an ordinary stall or gift week, over the lines that go that way. */
function usualIn(lines: readonly SeasonLine[], way: 'sold' | 'given', open: UseCalendar['pastStall']): number {
  const those = lines.filter((l) => l.weeks.some((w) => w[way] > 0));
  const weeks = those.flatMap((l) => l.weeks.filter((w: UseWeek, i) => w.there && open[i]));
  return weeks.length > 0 ? weeks.reduce((n, w) => n + w[way], 0) / weeks.length : 0;
}

function goneByWeek(s: SeasonSnapshot, bestBefore: PlainDate | null): number {
  const last = SEASON_WEEKS + LIFE_WEEKS;
  if (bestBefore === null) return last;
  const weeks = Math.floor(daysBetween(s.today, bestBefore) / 7);
  return Math.min(last, Math.max(weeks, 0) + KEPT_ON_WEEKS);
}

function productOf(
  s: SeasonSnapshot,
  { line, use, making }: Known,
  at: { items: string[]; stores: SeasonStore[] },
): ProductSpec {
  const kind = jarKind(s, line.item);
  return {
    id: line.id,
    store: at.stores.findIndex((r) => r.kind === storeOfKind[line.kind]),
    container: at.items.indexOf(line.item),
    ...roomOfJar(s, line),
    lifeWeeks: LIFE_WEEKS + KEPT_ON_WEEKS,
    usePerWeek: use.usePerWeek,
    profile: use.profile,
    rateCv: use.rateCv,
    dispersion: use.dispersion,
    crop: making.pool,
    kgPerJar: making.kgPerJar,
    sugarKgPerJar: making.sugarKgPerJar,
    jarsPerBatch: making.jarsPerBatch,
    hoursPerBatch: making.hoursPerBatch,
    yieldSd: YIELD_SD,
    returnProb: kind?.canning ? use.returnShare : 0,
    returnLagWeeks: BACK_AFTER_WEEKS,
    // Which of the jars that leave are opened at home is not known week by week: their room in the fridge is not counted.
    openStore: -1,
    openUnit: 0,
    openWeeks: 0,
  };
}

/** Batches of the plan in force go to the line of their recipe; a line the household does not have yet is left to the plan page. */
function plannedBatches(s: SeasonSnapshot, known: readonly Known[]): PlannedBatch[] {
  return batchesAhead(s.plan, s.today).flatMap((b, i) => {
    const product = known.findIndex((k) => k.line.recipeId === b.recipeId && k.making.pool >= 0);
    const week = Math.floor(daysBetween(s.today, b.day) / 7);
    return product < 0 || week >= SEASON_WEEKS
      ? []
      : [{ id: `plan ${i} ${b.recipeId}`, week, product, batches: b.batches, prob: PLANNED_HAPPENS }];
  });
}

/**
 * A line that is new was only seen while it was there; what that says of a whole year is held to what the household made
 * of it, or used of it, in the last one.
 */
function wantedPerWeek(line: SeasonLine, use: LineUse): number {
  const made = line.batches.reduce((n, b) => n + b.jars, 0);
  const used = line.weeks.reduce((n, w) => n + w.eaten + w.sold + w.given, 0);
  return made > 0 ? Math.min(use.usePerWeek, Math.max(made, used) / SEASON_WEEKS) : use.usePerWeek;
}

function metaOf(s: SeasonSnapshot, { line, use, making }: Known, pools: readonly FruitPool[]): LineMeta {
  const pool = pools[making.pool];
  const days = line.lots.flatMap((l) =>
    l.bestBefore && l.bestBefore >= s.today ? [Math.floor(daysBetween(s.today, l.bestBefore) / 7)] : [],
  );
  return {
    id: line.id,
    line: line.line,
    slug: line.slug,
    item: line.item,
    itemLabel: jarKind(s, line.item)?.label ?? line.item,
    inGlass: jarKind(s, line.item)?.canning ?? false,
    foodId: line.foodId,
    onHand: line.onHand,
    heldBack: line.heldBack,
    bestBy: [...new Set(days)].filter((w) => w < SEASON_WEEKS).sort((a, b) => a - b),
    fromWeek: Math.max(0, Math.min(pool?.endsWeek ?? 0, (pool?.nextWeek ?? SEASON_WEEKS) - 1)),
    toWeek: Math.max(1, pool?.nextWeek ?? SEASON_WEEKS),
    made: making.pool >= 0,
    madeBasis: making.basis,
    jarsPerBatch: making.jarsPerBatch,
    usePerWeek: use.usePerWeek,
    wantedPerWeek: wantedPerWeek(line, use),
    learnt: use.learnt,
  };
}

export const weekDay = (input: Pick<ForecastInput, 'today'>, week: number): PlainDate => addDays(input.today, 7 * week);
