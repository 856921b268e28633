/**
 * Invented seasons for trying the plan room: seeded, nothing in them is recipe data. `mini`: 6 days, 14 lots, 10 recipes.
 * `x1`: 14 days, 40 lots, 25 recipes. `tiny`: 3 days, 5 lots, 4 recipes, for many quick proofs.
 */
import type { PlanInstance, PlanLot, PlanProduct, PlanRecipe } from '#lib/plan/instance.ts';

export type Family = 'tiny' | 'mini' | 'x1';

const SIZES = {
  tiny: { days: 3, lots: 5, recipes: 4, crops: 3 },
  mini: { days: 6, lots: 14, recipes: 10, crops: 7 },
  x1: { days: 14, lots: 40, recipes: 25, crops: 12 },
};

/** A small seeded generator (mulberry32, public domain). */
export function seeded(seed: number): () => number {
  let a = (seed * 0x9e3779b1) >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = Math.imul(a ^ (a >>> 15), a | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

type Dice = {
  between(a: number, b: number): number;
  whole(a: number, b: number): number;
  chance(p: number): boolean;
  one<T>(list: readonly T[]): T;
};

function dice(seed: number): Dice {
  const next = seeded(seed);
  const between = (a: number, b: number) => Math.round((a + (b - a) * next()) * 1000) / 1000;
  return {
    between,
    whole: (a, b) => Math.floor(a + (b - a + 1) * next()),
    chance: (p) => next() < p,
    one: (list) => list[Math.floor(next() * list.length)] as (typeof list)[number],
  };
}

export function inventedSeason(seed: number, family: Family): PlanInstance {
  const d = dice(seed);
  const size = SIZES[family];
  const crops = Array.from({ length: size.crops }, (_, i) => ({
    id: `crop${i}`,
    pectin: d.between(1, 12),
    acid: d.between(2, 14),
    carryValue: d.between(0.2, 1.2),
    wasteCost: d.between(0, 0.3),
  }));
  const names = crops.map((c) => c.id);
  const kinds = ['jam', 'jelly', 'syrup', 'butter', 'leather', 'frozen'] as const;
  const recipes = Array.from({ length: size.recipes }, (_, i) =>
    inventedRecipe(d, i, kinds[i % kinds.length] as (typeof kinds)[number], names),
  );
  const scale = family === 'tiny' ? 0.6 : 1;
  return {
    horizon: size.days,
    crops,
    lots: Array.from({ length: size.lots }, (_, i) => inventedLot(d, i, names, size.days)),
    recipes,
    products: recipes.map((r) => inventedProduct(d, r)),
    vessels: [
      { id: 'pan', count: 2 },
      { id: 'big pan', count: 1 },
    ],
    jars: [
      { id: 'small', litres: 0.25, perLoad: 12 },
      { id: 'middle', litres: 0.5, perLoad: 8 },
    ].map((j) => ({
      ...j,
      uses: [
        { material: `jar ${j.id}`, each: 1 },
        { material: 'lid', each: 1 },
      ],
      storeLitres: j.litres * 1.2,
    })),
    materials: [
      {
        id: 'sugar',
        unit: 'kg',
        stock: d.between(2, 8),
        price: 1.25,
        shopDays: shopDays(size.days),
        keepValue: 1,
        carryMax: 6,
      },
      {
        id: 'jar small',
        stock: d.whole(10, 60),
        price: 0.9,
        shopDays: shopDays(size.days),
        keepValue: 0.6,
        carryMax: 40,
      },
      {
        id: 'jar middle',
        stock: d.whole(10, 60),
        price: 1.1,
        shopDays: shopDays(size.days),
        keepValue: 0.7,
        carryMax: 40,
        arrivals: [{ day: 1, amount: d.whole(0, 6) }],
      },
      {
        id: 'lid',
        stock: d.whole(20, 80),
        price: 0.25,
        shopDays: shopDays(size.days),
        maxBuy: 40,
        keepValue: 0.15,
        carryMax: 60,
      },
      { id: 'pectin', unit: 'g', stock: 10, price: 0.08, shopDays: shopDays(size.days), keepValue: 0.05, carryMax: 50 },
      { id: 'core powder', unit: 'g', stock: d.between(0, 80), keepValue: 0.004, carryMax: 300 },
      { id: 'lemon', unit: 'g', stock: 200, price: 0.01 },
    ],
    leftovers: [{ id: 'cores', dryDays: 2, dryYield: 100, m2PerKg: 0.5, becomes: 'core powder' }],
    pectinSources: [
      { material: 'pectin', strength: 1, maxPerKg: 12 },
      { material: 'core powder', strength: 0.12, maxPerKg: 40 },
    ],
    acidSources: [{ material: 'lemon', strength: 0.9, maxPerKg: 15 }],
    outlets: names.flatMap((c, i) => [
      {
        id: `eat ${c}`,
        kind: 'eat' as const,
        crop: c,
        grades: ['perfect' as const],
        days: Array.from({ length: size.days }, (_, t) => t),
        maxKg: 0.4,
        value: 2.2,
      },
      ...(i % 3 === 0
        ? [
            {
              id: `stall ${c}`,
              kind: 'sell' as const,
              crop: c,
              grades: ['perfect' as const],
              days: [size.days - 1],
              maxKg: 3,
              value: d.between(1, 2.5),
            },
          ]
        : []),
    ]),
    days: Array.from({ length: size.days }, (_, t) => inventedDay(d, t, scale)),
    storage: (['shelf', 'fridge', 'freezer'] as const).map((place) => ({
      place,
      free: Array.from({ length: size.days }, () => (place === 'shelf' ? 60 : place === 'fridge' ? 8 : 15) * scale),
    })),
    weights: {
      labour: 4,
      overtime: 4,
      burner: 0.4,
      waste: 0.4,
      overflow: 20,
      shortage: 60,
      underfill: 1.5,
      tieBreak: 0.002,
    },
    variety: { min: Math.ceil(size.recipes / 4), penalty: 4 },
    sugarMaterial: 'sugar',
  };
}

const shopDays = (days: number): number[] =>
  Array.from({ length: days }, (_, t) => t).filter((t) => t % 7 === 2 || t % 7 === 5);

function inventedLot(d: Dice, i: number, crops: readonly string[], horizon: number): PlanLot {
  const avail = d.chance(0.35) ? 0 : d.whole(0, horizon - 1);
  const keeps = d.chance(0.25) ? d.whole(8, 30) : d.whole(1, 5);
  const grade = d.chance(0.55) ? 'perfect' : d.chance(0.7) ? 'blemished' : 'soft';
  return {
    id: `lot${i}`,
    crop: d.one(crops),
    grade,
    kg: d.between(2, 9),
    avail,
    useBy: avail + keeps,
    softFrom: avail + Math.max(1, keeps - 1),
    lossPerDay: d.between(0, 0.05),
    waitCost: 0.01,
  };
}

function inventedRecipe(d: Dice, i: number, kind: string, crops: readonly string[]): PlanRecipe {
  const main = d.one(crops);
  const second = d.one(crops.filter((c) => c !== main));
  const grades = ['perfect', 'blemished', 'soft'] as const;
  const mixed = d.chance(0.3);
  const jarred = kind !== 'leather' && kind !== 'frozen';
  const least = d.between(1, 2);
  return {
    id: `recipe${i}`,
    product: `${kind}${i}`,
    fruit: mixed
      ? [
          { crop: main, grades, minShare: 0.6 },
          { crop: second, grades, maxShare: 0.4 },
        ]
      : [{ crop: main, grades }],
    softMax: d.between(0.1, 0.4),
    yieldPerKg: jarred ? d.between(0.6, 1.3) : d.between(0.3, 1),
    sugar: jarred ? d.between(0.3, 0.9) : 0,
    ...(kind === 'jam' || kind === 'jelly' ? { pectin: d.between(5, 10), acid: d.between(6, 10) } : {}),
    setupH: d.between(0.2, 0.6),
    maxBatchesPerDay: 3,
    modes: [
      {
        id: 'usual',
        vessel: d.chance(0.3) ? 'big pan' : 'pan',
        minKg: least,
        maxKg: least + d.between(1, 4),
        activeH: d.between(0.4, 1),
        activePerKg: d.between(0.02, 0.2),
        burnerH: kind === 'frozen' ? 0 : d.between(0.3, 0.8),
        vesselH: d.between(0.8, 2),
      },
    ],
    ...(jarred ? { jars: d.chance(0.5) ? ['small', 'middle'] : ['middle'] } : {}),
    ...(jarred && d.chance(0.7) ? { canner: { activeH: 0.1, burnerH: 0.5 } } : {}),
    ...(kind === 'leather' ? { dryer: { m2PerKg: 0.4, days: 2 } } : {}),
    ...(kind === 'frozen' ? { freezeKgPerKg: 1 } : {}),
    ...(kind !== 'frozen' ? { leftovers: [{ crop: main, leftover: 'cores', kgPerKg: d.between(0.05, 0.25) }] } : {}),
  };
}

function inventedProduct(d: Dice, r: PlanRecipe): PlanProduct {
  const first = d.between(9, 16);
  return {
    id: r.product,
    place: r.product.startsWith('frozen')
      ? 'freezer'
      : r.canner || r.product.startsWith('leather')
        ? 'shelf'
        : 'fridge',
    segments: [
      { litres: d.between(1, 3), value: first },
      { litres: 3, value: first * 0.6 },
      { litres: 5, value: first * 0.25 },
    ],
  };
}

function inventedDay(d: Dice, t: number, scale: number): PlanInstance['days'][number] {
  const weekend = t % 7 === 2 || t % 7 === 3;
  return {
    active: weekend ? d.between(5, 7) * scale : d.chance(0.25) ? 0 : d.between(1, 3) * scale,
    overtime: 1.5 * scale,
    burner: 8,
    cannerLoads: d.whole(3, 6),
    dryer: 2,
    freezeKg: 4,
    vesselH: { pan: 8, 'big pan': 8 },
  };
}
