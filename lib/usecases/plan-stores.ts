/** Jars, supplies and room of a plan, from what the ledger says is on hand. */
import type { HeldLot } from '#lib/ledger/lot.ts';
import { shelfHolds, shelfTaken } from '#lib/ledger/shelf-room.ts';
import type { PlanInstance } from '#lib/plan/instance.ts';
import type { Kitchen } from '#lib/store/place.ts';
import { addDays, weekday } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { addressesOf } from './read-pantry.ts';

export const SATURDAY = 5;
/** Usable share of a cold box. From memory. */
const USABLE = 0.65;

const PER_HALF_PINT_L = 0.2366;
/** Jars with the room they take, counted in half-pints' room so that shelves add up. */
export function jarsOf(ctx: Context, kitchen: Kitchen): PlanInstance['jars'] {
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
export function supplies(ctx: Context, held: readonly HeldLot[], horizon: number): PlanInstance['materials'] {
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
      maxBuy: 60,
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

/** Litres of room a metre of the place's shelf holds, in half-pints' room. */
export function shelfMetreLitres(ctx: Context): number {
  const room = ctx.place.rooms.find((r) => r.kind === 'shelf');
  const half = ctx.place.jarKinds.find((k) => k.code === 'HP');
  const metre = { widthMm: 1000, depthMm: room?.depthMm ?? 320, clearMm: room?.clearMm ?? 230 };
  return half ? shelfHolds(metre, half) * PER_HALF_PINT_L : 0;
}

/** Free litres by place: shelves in half-pints' room, cold boxes by their usable share less what stands in them. */
export function storageOf(ctx: Context, held: readonly HeldLot[], horizon: number): PlanInstance['storage'] {
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
