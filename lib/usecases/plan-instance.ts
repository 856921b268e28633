/** One snapshot of the place as the plan's data: real lots and their clocks, what is still to be picked, and every limit. */

import { storageClass } from '#lib/batch/gate.ts';
import type { Grade, HeldLot } from '#lib/ledger/lot.ts';
import { shelfHolds, shelfTaken } from '#lib/ledger/shelf-room.ts';
import type { FormerPlan, PlanDay, PlanInstance, PlanLot, PlanPin } from '#lib/plan/instance.ts';
import type { JarSize } from '#lib/reference/jar-sizes.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import { RECIPES } from '#lib/reference/recipes/recipe-book.ts';
import { loadLots } from '#lib/store/ledger-store.ts';
import { type Kitchen, mainKitchen } from '#lib/store/place.ts';
import { feet } from '#lib/units/convert.ts';
import { addDays, weekday } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { ownPectin, placeOf, planRecipe, type RecipePlan } from './plan-recipes.ts';
import { usedInAYear, wantOf } from './plan-wants.ts';
import { addressesOf } from './read-pantry.ts';
import { lotClock } from './read-today.ts';

export interface ExpectedPick {
  cropId: string;
  /** Day of the horizon, 0 = today. */
  day: number;
  kg: number;
}

export interface PlanAsk {
  horizon: number;
  expected: readonly ExpectedPick[];
  pins?: readonly PlanPin[];
  former?: FormerPlan;
  /** Overrides of today's free hours, as the person says. */
  hoursToday?: number | null;
  /** Recipes the person does not want this time. */
  without?: readonly string[];
}

const SATURDAY = 5;
/** kg a litre freezer freezes in a day: 2 lb a cubic foot (Michigan State Univ. Extension 01600508, lower figure). */
const FREEZE_KG_PER_LITRE = (2 * 0.45359237) / 28.316846592;
/** Usable share of a cold box. From memory. */
const USABLE = 0.65;

export async function planInstance(ctx: Context, ask: PlanAsk): Promise<PlanInstance> {
  const kitchen = mainKitchen(ctx.place);
  if (!kitchen) throw new RangeError('this place has no kitchen yet');
  const lots = await loadLots(ctx.db, ctx.place.id, { emptied: true });
  const held = lots.filter((l) => l.onHand > 0);
  const fruit = planLots(ctx, held, ask);
  const cropIds = new Set(fruit.map((l) => l.crop));
  const crops = ctx.place.crops.filter((c) => cropIds.has(c.id));
  const used = await usedInAYear(ctx, lots);
  const recipes = recipesFor(ctx, {
    crops,
    kitchen,
    used,
    pinned: (ask.pins ?? []).map((p) => p.recipe),
    without: ask.without ?? [],
  });
  const known = new Set(recipes.map((r) => r.recipe.id));
  const pins = (ask.pins ?? []).filter((p) => known.has(p.recipe));
  const batches = (ask.former?.batches ?? []).filter((b) => known.has(b.recipe));
  return {
    firstDay: ctx.today,
    horizon: ask.horizon,
    crops: crops.map((c) => ({
      id: c.id,
      name: c.label,
      pectin: ownPectin(c.foodId),
      carryValue: CARRY_VALUE,
      wasteCost: 0,
    })),
    lots: fruit,
    recipes: recipes.map((r) => r.recipe),
    products: recipes.map((r) =>
      wantOf({
        recipeId: r.recipe.id,
        name: r.recipe.name ?? r.recipe.id,
        kind: r.kind,
        place: r.place,
        unitLitres: r.unitLitres,
        used: used.get(r.recipe.id),
        onHand: onHandOf(held, r.recipe.id),
      }),
    ),
    vessels: [
      ...kitchen.pans.filter((p) => p.maxFillPercent !== null).map((p) => ({ id: p.code, name: p.label, count: 1 })),
      { id: 'table', name: 'table and trays', count: 2 },
      { id: 'press', name: 'mill and press', count: 1 },
    ],
    jars: jarsOf(ctx, kitchen),
    materials: supplies(ctx, held, ask.horizon),
    leftovers: [
      {
        id: 'apple-peel-core',
        name: 'apple peel and cores',
        dryDays: 2,
        dryYield: 196,
        m2PerKg: 0.25,
        becomes: 'apple-powder',
      },
    ],
    pectinSources: [
      { material: 'apple-powder', strength: 5.5 / 150, maxPerKg: 60 },
      { material: 'pectin-powder', strength: 0.5, maxPerKg: 30 },
    ],
    acidSources: [],
    outlets: outletsOf(ctx, crops, ask.horizon),
    days: Array.from({ length: ask.horizon }, (_, d) => dayOf(ctx, kitchen, d, ask)),
    storage: storageOf(ctx, held, ask.horizon),
    weights: WEIGHTS,
    variety: { min: Math.min(4, crops.length), penalty: 2 },
    sugarMaterial: 'sugar',
    ...(pins.length > 0 ? { pins } : {}),
    ...(ask.former && batches.length > 0 ? { former: { ...ask.former, batches } } : {}),
  };
}

/**
 * Starting worths, in the place's money; all estimates, the household's to overrule.
 * labour 3 an hour: nobody is paid, but an evening is worth something; at 3 a jam batch of seven half-pints (worth about 20)
 *   costs 4, so work alone never stops a wanted jar, and the third dozen of one kind is no longer worth an evening.
 * overtime 5 on top: an hour more is given only for fruit that would be lost. waste 1 a kg: about what windfalls fetch, so that
 *   dying fruit is saved when it costs little. shortage 60: dearer than anything a batch can bring; only a pin pays it.
 */
const WEIGHTS = {
  labour: 3,
  overtime: 5,
  burner: 0.3,
  waste: 1,
  overflow: 3,
  shortage: 60,
  underfill: 1.5,
  tieBreak: 0.002,
};
/** Worth of a kg that keeps past the horizon: about what its second-best use brings later, less the work. Estimate. */
const CARRY_VALUE = 1;
/** A lot that keeps so many days past the plan keeps as well as any other as far as the plan can see (see carryWorth). */
const FAR_DAYS = 4;
/** The kitchen is lit in the evening: fruit that will not see this hour of a day cannot be cooked on it. Common practice. */
const EVENING_HOUR = 18;
/** Share trimmed off for every day a lot waits. Estimate. */
const TRIM_PER_DAY = 0.02;
/** Fruit counts as soft in the last fifth of its time. Estimate. */
const SOFT_FROM = 0.8;

/** Fruit on hand by its own clock, and what is still to be picked; culls, windfalls and locked lots stay out. */
export function planLots(
  ctx: Context,
  held: readonly HeldLot[],
  ask: Pick<PlanAsk, 'horizon' | 'expected'>,
): PlanLot[] {
  const there = held
    .filter(
      (l) =>
        l.kind === 'fruit' && l.cropId && l.grade !== 'cull' && !l.groundFall && (l.lockedUntil ?? '') <= ctx.today,
    )
    .flatMap((l): PlanLot[] => {
      const clock = lotClock(ctx, l);
      if (!clock || clock.hours <= 0) return [];
      const useBy = Math.floor((clock.hours + hourOfDay(ctx) - EVENING_HOUR) / 24);
      return [
        lot(
          { id: l.id, crop: l.cropId as string, grade: l.grade as Grade, kg: l.onHand / 1000, avail: 0, useBy },
          ask.horizon,
        ),
      ];
    });
  const life = new Map<string, number>();
  const coming = ask.expected.flatMap((e) => {
    const crop = ctx.place.crops.find((c) => c.id === e.cropId);
    const kept = crop ? 100 - crop.soldPercent - crop.eatenPercent - crop.cullPercent : 0;
    if (!crop || kept <= 0 || e.day >= ask.horizon) return [];
    return (['perfect', 'blemished'] as const).flatMap((grade): PlanLot[] => {
      const kg = Math.round(e.kg * kept * 10 * GRADE_SHARE[grade]) / 1000;
      const key = `${crop.foodId} ${grade}`;
      if (!life.has(key)) life.set(key, expectedDays(ctx, crop.foodId, grade));
      return kg < LEAST_EXPECTED_KG
        ? []
        : [
            lot(
              {
                id: `expected:${crop.id}:${e.day}:${grade}`,
                crop: crop.id,
                grade,
                kg,
                avail: e.day,
                useBy: e.day + (life.get(key) as number),
              },
              ask.horizon,
            ),
          ];
    });
  });
  return [...there, ...coming];
}

/** Grades of fruit not picked yet; the little that comes in soft is counted with the blemished. Estimate. */
const GRADE_SHARE = { perfect: 0.45, blemished: 0.55 };
/** Less than this of a kind and grade on one picking is not planned for. */
const LEAST_EXPECTED_KG = 0.2;

/** Hours and parts since midnight at the place. */
export function hourOfDay(ctx: Context): number {
  const [h, m] = new Intl.DateTimeFormat('en-GB', {
    timeZone: ctx.place.timeZone,
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  })
    .format(ctx.now)
    .split(':');
  return Number(h) + Number(m) / 60;
}

function lot(
  l: { id: string; crop: string; grade: Grade; kg: number; avail: number; useBy: number },
  horizon: number,
): PlanLot {
  const useBy = Math.max(l.avail, l.useBy);
  const softFrom = l.grade === 'soft' ? l.avail : Math.max(l.avail, Math.ceil(l.avail + (useBy - l.avail) * SOFT_FROM));
  return {
    ...l,
    grade: l.grade as PlanLot['grade'],
    kg: Math.round(l.kg * 1000) / 1000,
    // Beyond the plan's sight all days are alike: lots differing only there are one class to the solver.
    useBy: Math.min(useBy, horizon + FAR_DAYS),
    ...(softFrom < horizon ? { softFrom } : {}),
    lossPerDay: TRIM_PER_DAY,
  };
}

function expectedDays(ctx: Context, foodId: string, grade: Grade): number {
  const room = ctx.place.rooms.find((r) => r.kind === 'ambient');
  const clock = lotClock(ctx, { foodId, grade, roomId: room?.id ?? null, since: ctx.now.toISOString() } as HeldLot);
  return clock ? Math.floor(clock.hours / 24) : 0;
}

interface Making {
  crops: readonly { id: string; foodId: string }[];
  kitchen: Kitchen;
  used: ReadonlyMap<string, number>;
  /** Recipes a person has asked for by name; they stay in whatever else is left out. */
  pinned: readonly string[];
  without: readonly string[];
}

/** Recipes whose fruit is there and which the gate lets out by some way, at this kitchen's altitude: the household's own lines first. */
function recipesFor(ctx: Context, m: Making): RecipePlan[] {
  const uses = (r: Recipe) => m.used.get(r.id) ?? 0;
  const open = RECIPES.filter((r) => !m.without.includes(r.id))
    .map((recipe) => ({ recipe, crops: cropsFor(recipe, m.crops, feet(m.kitchen.altitudeM)) }))
    .filter((x) => x.crops.length > 0);
  const alike = (a: Recipe, b: Recipe) => a.kind === b.kind && a.fruits[0]?.foodIds[0] === b.fruits[0]?.foodIds[0];
  return open
    .filter(
      (x) =>
        m.used.has(x.recipe.id) ||
        m.pinned.includes(x.recipe.id) ||
        !open.some((o) => m.used.has(o.recipe.id) && alike(o.recipe, x.recipe)),
    )
    .sort(
      (a, b) =>
        Number(m.pinned.includes(b.recipe.id)) - Number(m.pinned.includes(a.recipe.id)) ||
        uses(b.recipe) - uses(a.recipe),
    )
    .slice(0, MOST_RECIPES)
    .map((x) => planRecipe(x.recipe, x.crops, m.kitchen, ctx.place.jarKinds))
    .filter((r): r is RecipePlan => r !== null && r.recipe.fruit.length > 0);
}
/** So many recipes at most, the household's own lines first: a larger model is slower and says no more. */
const MOST_RECIPES = 36;

/** The crops a recipe may take here: its one needed fruit, each food asked of the gate by itself. None where it needs two. */
function cropsFor<C extends { foodId: string }>(recipe: Recipe, crops: readonly C[], altitudeFt: number): C[] {
  const needed = recipe.fruits.filter((p) => p.share.low > 0);
  if (needed.length !== 1) return [];
  return crops.filter((c) => needed[0]?.foodIds.includes(c.foodId) && mayBeMade(recipe, c.foodId, altitudeFt));
}

function mayBeMade(recipe: Recipe, foodId: string, altitudeFt: number): boolean {
  if (placeOf(recipe.kind) !== 'shelf') return true;
  if (!recipe.process || recipe.jarSizes.length === 0) return false;
  const verdict = storageClass({
    recipe,
    fruit: [{ foodId, grams: 1000, grade: 'perfect', groundFall: false }],
    jar: { size: recipe.jarSizes[0] as JarSize, madeForCanning: true },
    altitudeFt,
    method: 'boiling-water',
    asWritten: true,
    acidDoseGiven: true,
  });
  return verdict.process !== null && (verdict.shelf || verdict.needs.length > 0);
}

const onHandOf = (held: readonly HeldLot[], recipeId: string): number =>
  held.filter((l) => l.recipeId === recipeId && l.unit !== 'g' && l.kind !== 'batch').reduce((n, l) => n + l.onHand, 0);

const PER_HALF_PINT_L = 0.2366;
/** Jars with the room they take, counted in half-pints' room so that shelves add up. */
function jarsOf(ctx: Context, kitchen: Kitchen): PlanInstance['jars'] {
  const room = ctx.place.rooms.find((r) => r.kind === 'shelf');
  const size = { widthMm: room?.widthMm ?? 900, depthMm: room?.depthMm ?? 320, clearMm: room?.clearMm ?? 230 };
  const half = ctx.place.jarKinds.find((k) => k.code === 'HP');
  const holdsHalf = half ? shelfHolds(size, half) : 1;
  return ctx.place.jarKinds
    .filter((k) => k.canning)
    .map((k) => ({
      id: k.code,
      name: k.label,
      litres: k.fillMl / 1000,
      uses: [
        { material: `jar-${k.code}`, each: 1 },
        { material: 'lid-regular', each: 1 },
      ],
      perLoad: Math.max(1, ...kitchen.canners.map((c) => c.loads[k.code] ?? 0)),
      storeLitres: PER_HALF_PINT_L * (holdsHalf / Math.max(1, shelfHolds(size, k))),
    }));
}

/**
 * Supplies on hand and what can be bought on Saturdays; prices are starting figures (estimate). An empty jar in the cupboard is
 * worth little, for most come back; a lid is used up and is worth what the next one costs.
 */
function supplies(ctx: Context, held: readonly HeldLot[], horizon: number): PlanInstance['materials'] {
  const shopDays = Array.from({ length: horizon }, (_, d) => d).filter(
    (d) => d > 0 && weekday(addDays(ctx.today, d)) === SATURDAY,
  );
  const sum = (fits: (l: HeldLot) => boolean) => held.filter(fits).reduce((n, l) => n + l.onHand, 0);
  const item = (id: string) => sum((l) => l.item === id && (l.kind === 'supply' || l.kind === 'lids'));
  const powder = sum((l) => l.item === 'apple-powder' && l.details.state === 'dry');
  return [
    {
      id: 'sugar',
      name: 'sugar',
      unit: 'kg',
      stock: item('sugar') / 1000,
      price: 1.3,
      shopDays,
      maxBuy: 10,
      keepValue: 1,
      carryMax: 20,
    },
    {
      id: 'lid-regular',
      name: 'lids',
      unit: 'lid',
      stock: item('lid-regular'),
      price: 0.35,
      shopDays,
      maxBuy: 24,
      keepValue: 0.25,
      carryMax: 150,
    },
    ...ctx.place.jarKinds
      .filter((k) => k.canning)
      .map((k) => ({
        id: `jar-${k.code}`,
        name: `${k.label} jars`,
        unit: 'jar',
        stock: sum((l) => l.kind === 'empties' && l.item === k.code),
        price: 1.1,
        shopDays,
        maxBuy: 24,
        keepValue: 0.2,
        carryMax: 60,
      })),
    { id: 'apple-powder', name: 'home apple powder', unit: 'g', stock: powder, keepValue: 0.004, carryMax: 1500 },
    {
      id: 'pectin-powder',
      name: 'bought pectin',
      unit: 'g',
      stock: item('pectin-powder'),
      price: 0.09,
      shopDays,
      maxBuy: 200,
    },
    {
      id: 'lemon-juice',
      name: 'bottled lemon juice',
      unit: 'ml',
      stock: item('lemon-juice'),
      price: 0.006,
      shopDays,
      maxBuy: 2000,
      keepValue: 0.003,
      carryMax: 2000,
    },
    {
      id: 'citric-acid',
      name: 'citric acid',
      unit: 'g',
      stock: item('citric-acid'),
      price: 0.02,
      shopDays,
      maxBuy: 200,
    },
  ];
}

/**
 * Where fruit may go besides the pan. The stall has had its share of the picking already, so what is left over fetches little on
 * a Saturday: less than keeping fruit that keeps. A neighbour takes a bucket tonight or at the weekend, not every day. Estimates.
 */
function outletsOf(ctx: Context, crops: readonly { id: string }[], horizon: number): PlanInstance['outlets'] {
  const saturdays = Array.from({ length: horizon }, (_, d) => d).filter(
    (d) => weekday(addDays(ctx.today, d)) === SATURDAY,
  );
  const tonightOrWeekend = [...new Set([0, ...saturdays])];
  return crops.flatMap((c) => [
    {
      id: `give:${c.id}`,
      name: 'give away',
      kind: 'give' as const,
      crop: c.id,
      grades: ['perfect', 'blemished'] as const,
      days: tonightOrWeekend,
      maxKg: 3,
      value: 0.2,
    },
    {
      id: `sell:${c.id}`,
      name: 'sell at the stall',
      kind: 'sell' as const,
      crop: c.id,
      grades: ['perfect'] as const,
      days: saturdays,
      maxKg: 8,
      value: 0.8,
    },
  ]);
}

/** The hours, burners, canner loads and trays of a day. Loads are reckoned from the canners' own heat-up and reload times. */
function dayOf(ctx: Context, kitchen: Kitchen, d: number, ask: PlanAsk): PlanDay {
  const w = weekday(addDays(ctx.today, d));
  const people = ctx.place.people
    .map((p) => ({ id: p.code, hours: (p.minutes[w] ?? 0) / 60 }))
    .filter((p) => p.hours > 0);
  const told = d === 0 && ask.hoursToday != null ? ask.hoursToday : null;
  const active = told ?? people.reduce((h, p) => h + p.hours, 0);
  const open = told ?? Math.max(0, ...people.map((p) => p.hours));
  const dryer = kitchen.dryers[0];
  const freezers = ctx.place.rooms.filter((r) => r.kind === 'freezer').reduce((l, r) => l + (r.litres ?? 0), 0);
  return {
    active,
    overtime: active > 0 ? 1 : 0,
    burner: open * kitchen.burners.filter((b) => !b.outdoors).length,
    cannerLoads: kitchen.canners.reduce((n, c) => n + loadsIn(open * 60, c.heatUpS / 60, c.reheatS / 60), 0),
    dryer: dryer ? (dryer.trays * dryer.trayCm2) / 10_000 : 0,
    freezeKg: freezers * FREEZE_KG_PER_LITRE,
    vesselH: Object.fromEntries([...kitchen.pans.map((p) => [p.code, open]), ['table', open], ['press', open]]),
    ...(told === null && people.length > 0 ? { people } : {}),
  };
}

/** Loads of about ten minutes' process and five of rest that one canner gets through in an evening. */
const loadsIn = (minutes: number, heatUp: number, reload: number): number =>
  minutes < heatUp + 15 ? 0 : 1 + Math.floor((minutes - heatUp - 15) / (15 + reload));

/** Free litres by place: shelves in half-pints' room, cold boxes by their usable share less what stands in them. */
function storageOf(ctx: Context, held: readonly HeldLot[], horizon: number): PlanInstance['storage'] {
  const kinds = new Map(ctx.place.jarKinds.map((k) => [k.code, k]));
  const shelf = ctx.place.rooms.find((r) => r.kind === 'shelf');
  const half = kinds.get('HP');
  const size = { widthMm: shelf?.widthMm ?? 900, depthMm: shelf?.depthMm ?? 320, clearMm: shelf?.clearMm ?? 230 };
  const taken = shelf
    ? shelfTaken(
        held.filter((l) => l.kind === 'jars'),
        size,
        kinds,
      )
    : new Map<string, number>();
  const shelves = shelf ? addressesOf(shelf) : [];
  const free = half
    ? shelves.reduce((n, a) => n + Math.max(0, 1 - (taken.get(a) ?? 0)), 0) * shelfHolds(size, half) * PER_HALF_PINT_L
    : 0;
  const cold = (kind: 'freezer' | 'fridge') => {
    const rooms = ctx.place.rooms.filter((r) => r.kind === kind);
    const litres = rooms.reduce((l, r) => l + (r.litres ?? 0), 0) * USABLE;
    const filled = held
      .filter((l) => rooms.some((r) => r.id === l.roomId))
      .reduce(
        (l, x) => l + (x.unit === 'g' ? x.onHand / 1000 : x.onHand * ((kinds.get(x.item ?? '')?.fillMl ?? 500) / 1000)),
        0,
      );
    return Math.max(0, litres - filled);
  };
  const flat = (litres: number) => Array.from({ length: horizon }, () => Math.round(litres * 100) / 100);
  return [
    { place: 'shelf', free: flat(free) },
    { place: 'fridge', free: flat(cold('fridge')) },
    { place: 'freezer', free: flat(cold('freezer')) },
  ];
}
