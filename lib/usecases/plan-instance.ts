/** One snapshot of the place as the plan's data: real lots and their clocks, what is still to be picked, and every limit. */
import type { Grade, HeldLot } from '#lib/ledger/lot.ts';
import { shelfHolds, shelfTaken } from '#lib/ledger/shelf-room.ts';
import { storageClass } from '#lib/batch/gate.ts';
import { RECIPES } from '#lib/reference/recipes/recipe-book.ts';
import type { Recipe } from '#lib/reference/recipes/recipe.ts';
import type { JarSize } from '#lib/reference/jar-sizes.ts';
import type { FormerPlan, PlanDay, PlanInstance, PlanLot, PlanPin } from '#lib/plan/instance.ts';
import { loadLots } from '#lib/store/ledger-store.ts';
import { type Kitchen, mainKitchen } from '#lib/store/place.ts';
import { feet } from '#lib/units/convert.ts';
import { addDays, weekday } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { addressesOf } from './read-pantry.ts';
import { lotClock } from './read-today.ts';
import { ownPectin, placeOf, planRecipe, type RecipePlan } from './plan-recipes.ts';
import { usedLastYear, wantOf } from './plan-wants.ts';

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
  const fruit = fruitLots(ctx, held, ask);
  const cropIds = new Set(fruit.map((l) => l.crop));
  const crops = ctx.place.crops.filter((c) => cropIds.has(c.id));
  const used = await usedLastYear(ctx, lots);
  const recipes = recipesFor(ctx, crops, kitchen, used);
  const supply = supplies(ctx, held, ask.horizon);
  return {
    firstDay: ctx.today,
    horizon: ask.horizon,
    crops: crops.map((c) => ({ id: c.id, name: c.label, pectin: ownPectin(c.foodId), carryValue: 0.6, wasteCost: 0 })),
    lots: fruit,
    recipes: recipes.map((r) => r.recipe),
    products: recipes.map((r) => wantOf({ recipeId: r.recipe.id, name: r.recipe.name ?? r.recipe.id, kind: r.kind, place: r.place, unitLitres: r.unitLitres, used: used.get(r.recipe.id), onHand: onHandOf(held, r.recipe.id) })),
    vessels: [...kitchen.pans.filter((p) => p.maxFillPercent !== null).map((p) => ({ id: p.code, name: p.label, count: 1 })), { id: 'table', name: 'Table and trays', count: 2 }, { id: 'press', name: 'Mill and press', count: 1 }],
    jars: jarsOf(ctx, kitchen),
    materials: supply,
    leftovers: [{ id: 'apple-peel-core', name: 'Apple peel and cores', dryDays: 2, dryYield: 196, m2PerKg: 0.25, becomes: 'apple-powder' }],
    pectinSources: [{ material: 'apple-powder', strength: 5.5 / 150, maxPerKg: 60 }, { material: 'pectin-powder', strength: 0.5, maxPerKg: 30 }],
    acidSources: [],
    outlets: outletsOf(ctx, crops, ask.horizon),
    days: Array.from({ length: ask.horizon }, (_, d) => dayOf(ctx, kitchen, d, ask)),
    storage: storageOf(ctx, held, ask.horizon),
    weights: { labour: 3, overtime: 5, burner: 0.3, waste: 1, overflow: 3, shortage: 60, underfill: 1.5, tieBreak: 0.002 },
    variety: { min: Math.min(4, crops.length), penalty: 2 },
    sugarMaterial: 'sugar',
    ...(ask.pins ? { pins: ask.pins } : {}),
    ...(ask.former ? { former: ask.former } : {}),
  };
}

/** Fruit on hand by its own clock, and what is still to be picked; culls, windfalls and locked lots stay out. */
function fruitLots(ctx: Context, held: readonly HeldLot[], ask: PlanAsk): PlanLot[] {
  const there = held
    .filter((l) => l.kind === 'fruit' && l.cropId && l.grade !== 'cull' && !l.groundFall && (l.lockedUntil ?? '') <= ctx.today)
    .flatMap((l): PlanLot[] => {
      const clock = lotClock(ctx, l);
      if (!clock || clock.hours <= 0) return [];
      return [lot(l.id, l.cropId as string, l.grade as Grade, l.onHand / 1000, 0, Math.floor((clock.hours + hourOfDay(ctx)) / 24))];
    });
  const coming = ask.expected.flatMap((e) => {
    const crop = ctx.place.crops.find((c) => c.id === e.cropId);
    const kept = crop ? 100 - crop.soldPercent - crop.eatenPercent - crop.cullPercent : 0;
    if (!crop || kept <= 0 || e.day >= ask.horizon) return [];
    return (['perfect', 'blemished', 'soft'] as const).flatMap((grade): PlanLot[] => {
      const kg = e.kg * (kept / 100) * GRADE_SHARE[grade];
      const life = expectedDays(ctx, crop.foodId, grade);
      return kg < 0.05 ? [] : [lot(`expected:${crop.id}:${e.day}:${grade}`, crop.id, grade, kg, e.day, e.day + life)];
    });
  });
  return [...there, ...coming];
}

/** Grades of fruit not picked yet. Estimate, until the place's own pickings say otherwise. */
const GRADE_SHARE = { perfect: 0.45, blemished: 0.45, soft: 0.1 };
const hourOfDay = (ctx: Context): number => ctx.now.getUTCHours();

const lot = (id: string, crop: string, grade: Grade, kg: number, avail: number, useBy: number): PlanLot => ({
  id,
  crop,
  grade: grade as PlanLot['grade'],
  kg: Math.round(kg * 1000) / 1000,
  avail,
  useBy: Math.max(avail, useBy),
  softFrom: grade === 'soft' ? avail : Math.max(avail, Math.ceil(avail + (useBy - avail) * 0.8)),
  lossPerDay: 0.02,
});

function expectedDays(ctx: Context, foodId: string, grade: Grade): number {
  const room = ctx.place.rooms.find((r) => r.kind === 'ambient');
  const clock = lotClock(ctx, { foodId, grade, roomId: room?.id ?? null, since: ctx.now.toISOString() } as HeldLot);
  return clock ? Math.floor(clock.hours / 24) : 0;
}

/** Recipes whose fruit is there and which the gate lets out by some way, at this kitchen's altitude. */
function recipesFor(ctx: Context, crops: readonly { id: string; foodId: string }[], kitchen: Kitchen, used: Map<string, number>): RecipePlan[] {
  const allowed = RECIPES.filter((r) => mayBeMade(r, crops, feet(kitchen.altitudeM)))
    .sort((a, b) => (used.get(b.id) ?? 0) - (used.get(a.id) ?? 0))
    .filter((r, _, all) => used.has(r.id) || all.filter((o) => used.has(o.id) && o.kind === r.kind && o.fruits[0]?.foodIds[0] === r.fruits[0]?.foodIds[0]).length === 0);
  return allowed
    .slice(0, MOST_RECIPES)
    .map((r) => planRecipe(r, crops, kitchen, ctx.place.jarKinds))
    .filter((r): r is RecipePlan => r !== null && r.recipe.fruit.length > 0);
}
/** So many recipes at most, the household's own lines first: a larger model is slower and says no more. */
const MOST_RECIPES = 36;

function mayBeMade(recipe: Recipe, crops: readonly { foodId: string }[], altitudeFt: number): boolean {
  const needed = recipe.fruits.filter((p) => p.share.low > 0);
  if (needed.length === 0 || !needed.every((p) => crops.some((c) => p.foodIds.includes(c.foodId)))) return false;
  if (placeOf(recipe.kind) !== 'shelf') return true;
  if (!recipe.process || recipe.jarSizes.length === 0) return false;
  const foodId = needed[0]?.foodIds.find((id) => crops.some((c) => c.foodId === id)) as string;
  const verdict = storageClass({
    recipe,
    fruit: [{ foodId, grams: 1000, grade: 'perfect', groundFall: false }],
    jar: { size: recipe.jarSizes[0] as JarSize, madeForCanning: true },
    altitudeFt,
    method: 'boiling-water',
    asWritten: true,
    acidDoseGiven: true,
  });
  return verdict.process !== null;
}

const onHandOf = (held: readonly HeldLot[], recipeId: string): number => held.filter((l) => l.recipeId === recipeId && l.unit !== 'g' && l.kind !== 'batch').reduce((n, l) => n + l.onHand, 0);

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
      uses: [{ material: `jar-${k.code}`, each: 1 }, { material: 'lid-regular', each: 1 }],
      perLoad: Math.max(1, ...kitchen.canners.map((c) => c.loads[k.code] ?? 0)),
      storeLitres: PER_HALF_PINT_L * (holdsHalf / Math.max(1, shelfHolds(size, k))),
    }));
}

/** Supplies on hand and what can be bought on Saturdays; prices are starting figures (estimate). */
function supplies(ctx: Context, held: readonly HeldLot[], horizon: number): PlanInstance['materials'] {
  const shopDays = Array.from({ length: horizon }, (_, d) => d).filter((d) => d > 0 && weekday(addDays(ctx.today, d)) === SATURDAY);
  const sum = (fits: (l: HeldLot) => boolean) => held.filter(fits).reduce((n, l) => n + l.onHand, 0);
  const item = (id: string) => sum((l) => l.item === id && (l.kind === 'supply' || l.kind === 'lids'));
  const powder = sum((l) => l.item === 'apple-powder' && l.details.state === 'dry');
  return [
    { id: 'sugar', name: 'sugar', unit: 'kg', stock: item('sugar') / 1000, price: 1.3, shopDays, maxBuy: 10, keepValue: 1, carryMax: 20 },
    { id: 'lid-regular', name: 'lids', unit: 'lid', stock: item('lid-regular'), price: 0.35, shopDays, maxBuy: 24, keepValue: 0.25, carryMax: 150 },
    ...ctx.place.jarKinds.filter((k) => k.canning).map((k) => ({ id: `jar-${k.code}`, name: `${k.label} jars`, unit: 'jar', stock: sum((l) => l.kind === 'empties' && l.item === k.code), price: 1.1, shopDays, maxBuy: 24, keepValue: 0.6, carryMax: 200 })),
    { id: 'apple-powder', name: 'home apple powder', unit: 'g', stock: powder, keepValue: 0.004, carryMax: 1500 },
    { id: 'pectin-powder', name: 'bought pectin', unit: 'g', stock: item('pectin-powder'), price: 0.09, shopDays, maxBuy: 200 },
    { id: 'lemon-juice', name: 'bottled lemon juice', unit: 'ml', stock: item('lemon-juice'), price: 0.006, shopDays, maxBuy: 2000, keepValue: 0.003, carryMax: 2000 },
    { id: 'citric-acid', name: 'citric acid', unit: 'g', stock: item('citric-acid'), price: 0.02, shopDays, maxBuy: 200 },
  ];
}

/** Where fruit may go besides the pan: given away any day, sold cheaply on stall Saturdays, culls never. */
function outletsOf(ctx: Context, crops: readonly { id: string }[], horizon: number): PlanInstance['outlets'] {
  const days = Array.from({ length: horizon }, (_, d) => d);
  const stall = days.filter((d) => weekday(addDays(ctx.today, d)) === SATURDAY);
  return crops.flatMap((c) => [
    { id: `give:${c.id}`, name: 'give away', kind: 'give' as const, crop: c.id, grades: ['perfect', 'blemished'] as const, days, maxKg: 2, value: 0.4 },
    { id: `sell:${c.id}`, name: 'sell at the stall', kind: 'sell' as const, crop: c.id, grades: ['perfect'] as const, days: stall, maxKg: 8, value: 1.2 },
  ]);
}

/** The hours, burners, canner loads and trays of a day. Loads are reckoned from the canners' own heat-up and reload times. */
function dayOf(ctx: Context, kitchen: Kitchen, d: number, ask: PlanAsk): PlanDay {
  const w = weekday(addDays(ctx.today, d));
  const people = ctx.place.people.map((p) => ({ id: p.code, hours: (p.minutes[w] ?? 0) / 60 })).filter((p) => p.hours > 0);
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
const loadsIn = (minutes: number, heatUp: number, reload: number): number => (minutes < heatUp + 15 ? 0 : 1 + Math.floor((minutes - heatUp - 15) / (15 + reload)));

/** Free litres by place: shelves in half-pints' room, cold boxes by their usable share less what stands in them. */
function storageOf(ctx: Context, held: readonly HeldLot[], horizon: number): PlanInstance['storage'] {
  const kinds = new Map(ctx.place.jarKinds.map((k) => [k.code, k]));
  const shelf = ctx.place.rooms.find((r) => r.kind === 'shelf');
  const half = kinds.get('HP');
  const size = { widthMm: shelf?.widthMm ?? 900, depthMm: shelf?.depthMm ?? 320, clearMm: shelf?.clearMm ?? 230 };
  const taken = shelf ? shelfTaken(held.filter((l) => l.kind === 'jars'), size, kinds) : new Map<string, number>();
  const shelves = shelf ? addressesOf(shelf) : [];
  const free = half ? shelves.reduce((n, a) => n + Math.max(0, 1 - (taken.get(a) ?? 0)), 0) * shelfHolds(size, half) * PER_HALF_PINT_L : 0;
  const cold = (kind: 'freezer' | 'fridge') => {
    const rooms = ctx.place.rooms.filter((r) => r.kind === kind);
    const litres = rooms.reduce((l, r) => l + (r.litres ?? 0), 0) * USABLE;
    const filled = held.filter((l) => rooms.some((r) => r.id === l.roomId)).reduce((l, x) => l + (x.unit === 'g' ? x.onHand / 1000 : x.onHand * ((kinds.get(x.item ?? '')?.fillMl ?? 500) / 1000)), 0);
    return Math.max(0, litres - filled);
  };
  const flat = (litres: number) => Array.from({ length: horizon }, () => Math.round(litres * 100) / 100);
  return [
    { place: 'shelf', free: flat(free) },
    { place: 'fridge', free: flat(cold('fridge')) },
    { place: 'freezer', free: flat(cold('freezer')) },
  ];
}
