/** One snapshot of the place as the plan's data: real lots and their clocks, what is still to be picked, and every limit. */

import type { HeldLot } from '#lib/ledger/lot.ts';
import type { FormerPlan, PlanDay, PlanInstance, PlanPin } from '#lib/plan/instance.ts';
import { loadLots } from '#lib/store/ledger-store.ts';
import { type Kitchen, mainKitchen } from '#lib/store/place.ts';
import { addDays, weekday } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { type FruitAsk, planLots } from './plan-lots.ts';
import { recipesFor } from './plan-recipe-choice.ts';
import { ownPectin } from './plan-recipes.ts';
import { jarsOf, SATURDAY, storageOf, supplies } from './plan-stores.ts';
import { WEEKS_A_YEAR, wantedInAYear, wantOf } from './plan-wants.ts';
import { FIRST_YEAR_PER_WEEK } from './season-use.ts';

export interface PlanAsk extends FruitAsk {
  pins?: readonly PlanPin[];
  former?: FormerPlan;
  /** Overrides of today's free hours, as the person says. */
  hoursToday?: number | null;
  /** Lids counted tonight, in place of what the book says. */
  lidsToday?: number | null;
  /** Recipes the person does not want this time. */
  without?: readonly string[];
  /** Recipes to take in whatever else is left out. */
  also?: readonly string[];
}

/** kg a litre freezer freezes in a day: 2 lb a cubic foot (Michigan State Univ. Extension 01600508, lower figure). */
const FREEZE_KG_PER_LITRE = (2 * 0.45359237) / 28.316846592;

export async function planInstance(ctx: Context, ask: PlanAsk): Promise<PlanInstance> {
  const kitchen = mainKitchen(ctx.place);
  if (!kitchen) throw new RangeError('this place has no kitchen yet');
  const [held, used] = await Promise.all([loadLots(ctx.db, ctx.place.id), wantedInAYear(ctx)]);
  const fruit = planLots(ctx, held, ask);
  const cropIds = new Set(fruit.map((l) => l.crop));
  const crops = ctx.place.crops.filter((c) => cropIds.has(c.id));
  const recipes = recipesFor(ctx, {
    crops,
    kitchen,
    used,
    pinned: [...(ask.pins ?? []).map((p) => p.recipe), ...(ask.also ?? [])],
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
        // Before anything left the shelf no line is newer than another.
        used: used.get(r.recipe.id) ?? (used.size === 0 ? FIRST_YEAR_PER_WEEK * WEEKS_A_YEAR : undefined),
        onHand: onHandOf(held, r.recipe.id),
      }),
    ),
    vessels: [
      ...kitchen.pans.filter((p) => p.maxFillPercent !== null).map((p) => ({ id: p.code, name: p.label, count: 1 })),
      { id: 'table', name: 'table and trays', count: 2 },
      { id: 'press', name: 'mill and press', count: 1 },
    ],
    jars: jarsOf(ctx, kitchen),
    materials: supplies(ctx, held, ask.horizon).map((m) =>
      m.id === 'lid-regular' && ask.lidsToday != null ? { ...m, stock: ask.lidsToday } : m,
    ),
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

const onHandOf = (held: readonly HeldLot[], recipeId: string): number =>
  held.filter((l) => l.recipeId === recipeId && l.unit !== 'g' && l.kind !== 'batch').reduce((n, l) => n + l.onHand, 0);

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
      maxKg: 4,
      value: 0.5,
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
