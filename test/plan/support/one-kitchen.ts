/** A one-day kitchen where nothing binds: 10 kg of plums make 10 L of jam at 10 a litre. Each test then tightens one thing. */
import type { PlanDay, PlanInstance, PlanRecipe } from '#lib/plan/instance.ts';

export interface KitchenChange {
  recipe?: Partial<PlanRecipe>;
  mode?: Partial<PlanRecipe['modes'][number]>;
  day?: Partial<PlanDay>;
  lot?: Partial<PlanInstance['lots'][number]>;
  instance?: Partial<PlanInstance>;
  days?: readonly Partial<PlanDay>[];
}

export function oneKitchen(change: KitchenChange = {}): PlanInstance {
  const day: PlanDay = { active: 9, overtime: 0, burner: 99, cannerLoads: 99, dryer: 99, ...change.day };
  const days = (change.days ?? [{}]).map((d) => ({ ...day, ...d }));
  const mode = { id: 'usual', vessel: 'pan', minKg: 1, maxKg: 10, activeH: 1, burnerH: 0, vesselH: 0, ...change.mode };
  return {
    horizon: days.length,
    crops: [{ id: 'plum' }, { id: 'crab' }],
    lots: [{ id: 'a', crop: 'plum', grade: 'perfect', kg: 10, avail: 0, useBy: 0, ...change.lot }],
    recipes: [
      {
        id: 'jam',
        product: 'jam',
        fruit: [{ crop: 'plum', grades: ['perfect', 'blemished', 'soft'] }],
        yieldPerKg: 1,
        maxBatchesPerDay: 5,
        modes: [mode],
        ...change.recipe,
      },
    ],
    products: [{ id: 'jam', place: 'shelf', segments: [{ litres: 1000, value: 10 }] }],
    vessels: [{ id: 'pan', count: 9 }],
    jars: [
      {
        id: 'litre',
        litres: 1,
        uses: [
          { material: 'jar', each: 1 },
          { material: 'lid', each: 1 },
          { material: 'band', each: 1 },
        ],
        perLoad: 4,
      },
    ],
    materials: [
      { id: 'jar', stock: 99 },
      { id: 'lid', name: 'lids', stock: 99 },
      { id: 'band', stock: 99 },
      { id: 'sugar', stock: 99 },
      { id: 'pectin', stock: 0 },
      { id: 'lemon', stock: 0 },
      { id: 'powder', stock: 0 },
    ],
    leftovers: [],
    pectinSources: [{ material: 'pectin', strength: 1 }],
    acidSources: [{ material: 'lemon', strength: 1 }],
    outlets: [],
    days,
    storage: [
      { place: 'shelf', free: days.map(() => 1000) },
      { place: 'fridge', free: days.map(() => 1000) },
      { place: 'freezer', free: days.map(() => 1000) },
    ],
    weights: { labour: 0, overtime: 0, burner: 0, waste: 0, overflow: 100, shortage: 100, underfill: 100 },
    sugarMaterial: 'sugar',
    ...change.instance,
  };
}

/** The kitchen's materials with some of them replaced. */
export const withMaterial = (...changed: PlanInstance['materials'][number][]): PlanInstance['materials'] => [
  ...oneKitchen().materials.filter((m) => !changed.some((c) => c.id === m.id)),
  ...changed,
];
