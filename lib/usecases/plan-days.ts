/** A plan day by day: what to make of which fruit, in which jars, from when to when, and where the rest goes. */
import type { Booking } from '#lib/plan/day-book.ts';
import { type DaySchedule, daySchedule, type KitchenDay } from '#lib/plan/day-schedule.ts';
import type { PlanInstance } from '#lib/plan/instance.ts';
import type { KitchenSlot } from '#lib/plan/kitchen-slots.ts';
import { batchCount, type Plan } from '#lib/plan/plan.ts';
import { type Kitchen, mainKitchen } from '#lib/store/place.ts';
import { addDays, type PlainDate, weekday } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { type PlanAsked, planHref } from './plan-asked.ts';
import { lotsOfPans, type PanLot } from './plan-draws.ts';
import { hourOfDay } from './plan-lots.ts';
import { madeText, processText, winterText } from './plan-making.ts';
import { placeOf } from './plan-recipes.ts';
import { type Swap, slotsOf, swapsFor } from './plan-swaps.ts';
import { recipeHere } from './recipes-here.ts';

export interface PlanBatchView {
  id: string;
  recipe: string;
  title: string;
  kind: string;
  foodId: string;
  batches: number;
  kg: number;
  /** "2.04 kg crabapple". */
  fruit: { name: string; kg: number }[];
  /** "9 half-pint"; empty where it is not jarred. */
  jars: { label: string; count: number }[];
  /** Where it is not jarred: "about 1.20 kg frozen". */
  made: string;
  goes: 'shelf' | 'freezer' | 'fridge' | 'dry';
  /** "Processed 10 min: Small canner."; what of the day's freezing it takes; what it is enough for in winter. */
  notes: string[];
  sugarKg: number;
  /** Lots by code, of fruit that is there. */
  lots: { code: string; kg: number }[];
  /** kg of it that still hangs on the tree. */
  expectedKg: number;
  /** Minutes after midnight; null where no time was found for it. */
  start: number | null;
  finish: number | null;
  weighHref: string | null;
  keepHref: string | null;
  withoutHref: string;
  /** Other recipes of the same fruit in its place. */
  swaps: Swap[];
  kept: boolean;
}
export interface PlanDayView {
  day: PlainDate;
  today: boolean;
  hours: number;
  freeHours: number;
  batches: PlanBatchView[];
  /** Other things of the day in one line each: "Give away 2.0 kg crabapple". */
  also: string[];
  /** Titles of what found no time that evening, step by step. */
  noTime: string[];
  blocks: {
    id: string;
    trackIds: string[];
    start: number;
    finish: number;
    label: string;
    foodId: string;
    product: string;
  }[];
}
export interface PlanTrackView {
  id: string;
  label: string;
  kind: 'burner' | 'pan' | 'canner' | 'person';
}

/** When the kitchen is lit: evenings on working days, from ten at the weekend. Common practice; today not before now. */
const OPENS = { working: 18, weekend: 10 };
const WEEKEND_FROM = 5;

interface Shown {
  p: PlanInstance;
  plan: Plan;
  asked: PlanAsked;
  hours: readonly number[];
  lotCodes: ReadonlyMap<string, { code: string; grams: number }>;
}

export function planDays(ctx: Context, s: Shown): PlanDayView[] {
  const kitchen = mainKitchen(ctx.place) as Kitchen;
  const pans = lotsOfPans(s.p, s.plan);
  const slots = slotsOf(s.p);
  return s.p.days.flatMap((d, day) => {
    const batches = s.plan.cooked.filter((c) => c.day === day && batchCount(c) > 0);
    const also = alsoOf(s, day);
    if (batches.length === 0 && also.length === 0 && day > 0) return [];
    const book = daySchedule(s.p, s.plan, day, kitchenDay(ctx, kitchen, { p: s.p, day, from: s.asked.from }));
    const view = batchesOf(ctx, s, { day, pans, slots });
    return [
      {
        day: addDays(ctx.today, day),
        today: day === 0,
        hours: s.hours[day] ?? 0,
        freeHours: d.active,
        batches: view.map((v) => {
          const steps = book.steps.filter((x) => x.recipe === v.recipe);
          return {
            ...v,
            notes: notesOf(ctx, s, { kitchen, day, batch: v, steps }),
            start: steps.length > 0 ? minutes(Math.min(...steps.map((x) => x.fromH))) : null,
            finish: steps.length > 0 ? minutes(Math.max(...steps.map((x) => x.toH))) : null,
          };
        }),
        also,
        noTime: [...new Set(book.notPlaced.map((n) => titleOf(s.p, n.recipe)))],
        blocks: book.steps.flatMap(spansOf).map((x, i) => ({
          id: `${day}-${i}`,
          trackIds: x.resources,
          start: minutes(x.fromH),
          finish: minutes(x.toH),
          label: `${titleOf(s.p, x.recipe)}: ${x.step === 'can' ? 'canner' : x.step}`,
          foodId: foodOf(ctx, s.p, x.recipe),
          product: recipeHere(ctx.place, x.recipe)?.kind ?? 'jam',
        })),
      },
    ];
  });
}

/** A step takes hands, ring, vessel and canner for as long as each is needed: those taken equally long are drawn together. */
function spansOf({ step, recipe, bookings }: DaySchedule['steps'][number]) {
  const ends = [...new Set(bookings.map((b) => b.toH))].sort((a, b) => b - a);
  return ends.flatMap((toH) => {
    const here = bookings.filter((b) => b.toH === toH);
    const fromH = (here[0] as Booking).fromH;
    return toH > fromH ? [{ step, recipe, fromH, toH, resources: here.map((b) => b.resource) }] : [];
  });
}

const minutes = (hours: number): number => Math.round(hours * 60);
const titleOf = (p: PlanInstance, recipe: string): string => p.recipes.find((r) => r.id === recipe)?.name ?? recipe;
function foodOf(ctx: Context, p: PlanInstance, recipe: string): string {
  const crop = p.recipes.find((r) => r.id === recipe)?.fruit[0]?.crop;
  return ctx.place.crops.find((c) => c.id === crop)?.foodId ?? '';
}

function kitchenDay(
  ctx: Context,
  kitchen: Kitchen,
  at: { p: PlanInstance; day: number; from: number | null },
): KitchenDay {
  const { p, day } = at;
  const d = p.days[day];
  const usual = weekday(addDays(ctx.today, day)) >= WEEKEND_FROM ? OPENS.weekend : OPENS.working;
  const now = quarter(hourOfDay(ctx));
  const today = at.from !== null ? at.from / 60 : d?.people ? Math.max(usual, now) : now;
  const fromH = day > 0 ? usual : today;
  const people = d?.people ?? [{ id: 'you', hours: d?.active ?? 0 }];
  return {
    fromH: Math.min(23.5, fromH),
    toH: 24,
    rings: kitchen.burners.filter((b) => !b.outdoors).length,
    canners: kitchen.canners.map((c) => ({ holds: c.loads })),
    people: people.map((x, i) => ({ id: x.id, fromH, toH: 24, hours: x.hours + (i === 0 ? (d?.overtime ?? 0) : 0) })),
  };
}
const quarter = (h: number): number => Math.ceil(h * 4) / 4;

function batchesOf(
  ctx: Context,
  s: Shown,
  at: { day: number; pans: ReadonlyMap<string, PanLot[]>; slots: readonly KitchenSlot[] },
): PlanBatchView[] {
  const { day } = at;
  const date = addDays(ctx.today, day);
  const lines = s.plan.cooked.filter((c) => c.day === day && batchCount(c) > 0);
  return [...new Set(lines.map((c) => c.recipe))].map((id) => {
    const here = lines.filter((c) => c.recipe === id);
    const recipe = s.p.recipes.find((r) => r.id === id);
    const known = recipeHere(ctx.place, id);
    const kind = known?.kind ?? 'jam';
    const kg = here.reduce((n, c) => n + c.kg, 0);
    const batches = here.reduce((n, c) => n + batchCount(c), 0);
    const lots = at.pans.get(`${day}|${id}`) ?? [];
    const there = lots.filter((l) => s.lotCodes.has(l.lot));
    const kept = s.asked.keep.some((k) => k.recipe === id && k.day === date);
    const fruit = fruitOf(s, { day, id });
    const main = mainCrop(s, { day, id });
    return {
      id: `${date}-${id}`,
      recipe: id,
      title: titleOf(s.p, id),
      kind,
      foodId: foodOf(ctx, s.p, id),
      batches,
      kg,
      fruit,
      jars: s.plan.jars
        .filter((j) => j.day === day && j.recipe === id)
        .map((j) => ({ label: s.p.jars.find((z) => z.id === j.jar)?.name ?? j.jar, count: Math.round(j.count) }))
        .filter((j) => j.count > 0),
      made: known ? madeText(known, kg * (recipe?.yieldPerKg ?? 0)) : '',
      goes: placeOf(kind),
      notes: [],
      sugarKg: kg * (recipe?.sugar ?? 0),
      lots: there.map((l) => ({ code: s.lotCodes.get(l.lot)?.code ?? l.lot, kg: l.kg })),
      expectedKg: lots.reduce((n, l) => n + l.kg, 0) - there.reduce((n, l) => n + l.kg, 0),
      start: null,
      finish: null,
      weighHref: day === 0 ? weighHref(s, id, there) : null,
      keepHref: kept
        ? planHref({ ...s.asked, keep: s.asked.keep.filter((k) => !(k.recipe === id && k.day === date)) })
        : planHref({ ...s.asked, keep: [...s.asked.keep, { recipe: id, day: date, batches }] }),
      withoutHref: planHref({
        ...s.asked,
        keep: s.asked.keep.filter((k) => k.recipe !== id),
        without: [...s.asked.without, id],
      }),
      swaps: swapsFor(s.p, at.slots, { asked: s.asked, recipe: id, day, date, crop: main, kg }),
      kept,
    };
  });
}

function notesOf(
  ctx: Context,
  { p }: Shown,
  q: { kitchen: Kitchen; day: number; batch: PlanBatchView; steps: DaySchedule['steps'] },
): string[] {
  const { batch } = q;
  const recipe = recipeHere(ctx.place, batch.recipe);
  const jar = p.recipes.find((r) => r.id === batch.recipe)?.jars?.[0];
  const perDay = p.days[q.day]?.freezeKg ?? 0;
  return [
    recipe ? processText(ctx, { ...q, recipe, foodId: batch.foodId, jar }) : '',
    batch.goes === 'freezer' && perDay > 0 ? `The freezers freeze about ${perDay.toFixed(1)} kg in a day.` : '',
    winterText(ctx, p, batch),
  ].filter((t) => t !== '');
}

const mainCrop = (s: Shown, { day, id }: { day: number; id: string }): string =>
  s.plan.fruit
    .filter((f) => f.day === day && f.recipe === id)
    .reduce((best, f) => (f.kg > best.kg ? f : best), { crop: '', kg: 0 }).crop;

function fruitOf(s: Shown, { day, id }: { day: number; id: string }): { name: string; kg: number }[] {
  const by = new Map<string, number>();
  for (const f of s.plan.fruit) if (f.day === day && f.recipe === id) by.set(f.crop, (by.get(f.crop) ?? 0) + f.kg);
  return [...by.entries()]
    .map(([crop, kg]) => ({ name: s.p.crops.find((c) => c.id === crop)?.name ?? crop, kg }))
    .filter((f) => f.kg >= 0.005);
}

/** The new-batch page with recipe, lots and kilograms filled in; never more than a lot holds. */
function weighHref(s: Shown, recipe: string, lots: readonly PanLot[]): string | null {
  const drawn = lots
    .map((l) => ({ lot: l.lot, grams: Math.min(s.lotCodes.get(l.lot)?.grams ?? 0, Math.round(l.kg * 1000)) }))
    .filter((l) => l.grams > 0);
  if (drawn.length === 0) return null;
  return `/batches/new?${new URLSearchParams([
    ['recipe', recipe],
    ...drawn.flatMap((l): [string, string][] => [
      ['lot', l.lot],
      ['kg', (l.grams / 1000).toFixed(3)],
    ]),
  ])}`;
}

/** What else happens that day: fruit given and sold, peel dried, things bought. */
function alsoOf(s: Shown, day: number): string[] {
  const { p, plan } = s;
  const outlets = plan.outlets.filter((o) => o.day === day && o.kg >= 0.05);
  const verb = {
    give: 'Give away',
    sell: 'Sell at the stall',
    eat: 'Eat fresh',
    press: 'Press',
    compost: 'Compost',
  } as const;
  const out = (Object.keys(verb) as (keyof typeof verb)[]).flatMap((kind) => {
    const by = new Map<string, number>();
    for (const o of outlets) {
      const outlet = p.outlets.find((x) => x.id === o.outlet);
      if (outlet?.kind === kind) by.set(outlet.crop, (by.get(outlet.crop) ?? 0) + o.kg);
    }
    const list = [...by.entries()].map(
      ([crop, kg]) => `${kg.toFixed(1)} kg ${lower(p.crops.find((c) => c.id === crop)?.name ?? crop)}`,
    );
    return list.length > 0 ? [`${verb[kind]} ${list.join(', ')}.`] : [];
  });
  const dried = plan.dried
    .filter((d) => d.day === day && d.kg >= 0.05)
    .map((d) => {
      const leftover = p.leftovers.find((l) => l.id === d.leftover);
      return `Dry ${d.kg.toFixed(1)} kg ${leftover?.name ?? d.leftover}: about ${Math.round(d.kg * (leftover?.dryYield ?? 0))} g powder in ${leftover?.dryDays ?? 0} days.`;
    });
  const by = new Map<string, number>();
  for (const b of plan.bought) if (b.day === day) by.set(b.material, (by.get(b.material) ?? 0) + b.amount);
  const buys = [...by.entries()]
    .filter(([, n]) => n > 1e-6)
    .map(([id, n]) => {
      const m = p.materials.find((x) => x.id === id);
      return m?.unit === 'kg'
        ? `${n.toFixed(1)} kg ${m.name}`
        : m?.unit === 'g' || m?.unit === 'ml'
          ? `${Math.ceil(n)} ${m.unit} ${m.name}`
          : `${Math.ceil(n - 1e-6)} ${m?.name ?? id}`;
    });
  return [...out, ...dried, ...(buys.length > 0 ? [`Buy ${buys.join(', ')}.`] : [])];
}
const lower = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);

/** Names of what the day's steps take: rings, vessels, canners, people. */
export function planTracks(ctx: Context, p: PlanInstance): PlanTrackView[] {
  const kitchen = mainKitchen(ctx.place) as Kitchen;
  return [
    ...[...ctx.place.people.map((x) => ({ id: x.code, label: x.label })), { id: 'you', label: 'You' }].map(
      (x): PlanTrackView => ({ id: `person ${x.id}`, label: x.label, kind: 'person' }),
    ),
    ...kitchen.burners
      .filter((b) => !b.outdoors)
      .map((_, i): PlanTrackView => ({ id: `ring ${i + 1}`, label: `Ring ${i + 1}`, kind: 'burner' })),
    ...p.vessels.flatMap((v) =>
      Array.from(
        { length: v.count },
        (_, i): PlanTrackView => ({
          id: `vessel ${v.id} ${i + 1}`,
          label: v.count > 1 ? `${v.name ?? v.id} ${i + 1}` : (v.name ?? v.id),
          kind: 'pan',
        }),
      ),
    ),
    ...kitchen.canners.map((c, i): PlanTrackView => ({ id: `canner ${i + 1}`, label: c.label, kind: 'canner' })),
  ];
}
