/** Pressing day: what so much fruit gives by the press, what a canner needs for its quarts, and what is refused. */

import { fruitOf } from '#lib/reference/fruits.ts';
import { jarSizeOf } from '#lib/reference/jar-sizes.ts';
import { neverShelfFor } from '#lib/reference/never-shelf.ts';
import { processAdmits } from '#lib/reference/process-admits.ts';
import { processTime } from '#lib/reference/process-times.ts';
import { PRESS_JUICE, PRESS_LOSS } from '#lib/reference/set-aside-materials.ts';
import { sucroseDensity } from '#lib/science/density.ts';
import { loadLots } from '#lib/store/ledger-store.ts';
import { mainKitchen } from '#lib/store/place.ts';
import { feet, ML_PER_US_QUART } from '#lib/units/convert.ts';
import { celsius } from '#lib/units/quantity.ts';
import type { Context } from './context.ts';
import { isApple, notForFood } from './set-aside-makes.ts';

export interface PressView {
  fruit: { id: string; code: string; label: string; grade: string; grams: number; refused: string | null }[];
  /** Those of the fruit that may be cut to rings. */
  apples: PressView['fruit'];
  mayKeepPomace: boolean;
  /** For the kilograms asked for; null while none are. */
  expected: {
    kg: number;
    juiceKg: { low: number; typ: number; high: number };
    litres: number;
    brix: number;
    quarts: { low: number; typ: number; high: number };
    pomaceKg: number;
    process: { minutes: number; loads: number; canner: string } | null;
  } | null;
}

export async function readPress(
  ctx: Context,
  q: { lot?: string | undefined; kg?: string | undefined },
): Promise<PressView> {
  const lots = (await loadLots(ctx.db, ctx.place.id, { kinds: ['fruit'] })).filter((l) => l.onHand >= 1000);
  const chosen = lots.find((l) => l.id === q.lot);
  const kg = Number((q.kg ?? '').replace(',', '.'));
  const shown = lots.map((l) => ({
    id: l.id,
    code: l.code,
    label: l.label,
    grade: l.grade ?? '',
    grams: l.onHand,
    refused: notForFood([l]),
  }));
  return {
    fruit: shown,
    apples: shown.filter((f, i) => f.refused === null && APPLES.includes(lots[i]?.foodId ?? '')),
    mayKeepPomace: isApple(chosen?.foodId ?? null),
    expected: chosen?.foodId && kg > 0 && !notForFood([chosen]) ? pressed(ctx, chosen.foodId, kg) : null,
  };
}

const APPLES: readonly string[] = ['apple-dessert', 'apple-cooking'];

/** Juice by the share of the fruit's weight, litres at the density of its usual Brix, pomace the rest but the loss. */
export function pressed(ctx: Context, foodId: string, kg: number): NonNullable<PressView['expected']> {
  const brix = fruitOf(foodId).solublePct.typ;
  const kgPerL = sucroseDensity(brix, celsius(20)) / 1000;
  const quarts = (share: number) => Math.floor((share * kg) / kgPerL / (ML_PER_US_QUART / 1000));
  const typ = quarts(PRESS_JUICE.typ);
  return {
    kg,
    juiceKg: { low: PRESS_JUICE.low * kg, typ: PRESS_JUICE.typ * kg, high: PRESS_JUICE.high * kg },
    litres: (PRESS_JUICE.typ * kg) / kgPerL,
    brix,
    quarts: { low: quarts(PRESS_JUICE.low), typ, high: quarts(PRESS_JUICE.high) },
    pomaceKg: kg * (1 - PRESS_JUICE.typ - PRESS_LOSS),
    process: canning(ctx, foodId, typ),
  };
}

function canning(
  ctx: Context,
  foodId: string,
  quarts: number,
): { minutes: number; loads: number; canner: string } | null {
  const kitchen = mainKitchen(ctx.place);
  const code = ctx.place.jarKinds.find((k) => k.size === 'quart')?.code;
  if (!kitchen || !code) return null;
  const time = processTime({
    product: 'apple-juice',
    pack: 'hot',
    jar: jarSizeOf('quart').size,
    altitudeFt: feet(kitchen.altitudeM),
    method: 'boiling-water',
  });
  const canner = [...kitchen.canners].sort((a, b) => (b.loads[code] ?? 0) - (a.loads[code] ?? 0))[0];
  const load = canner?.loads[code] ?? 0;
  // Minutes only where the row was printed for this very fruit and no list keeps its juice off the shelf.
  const printed =
    time.ok && processAdmits(time.row, foodId).ok && neverShelfFor(foodId, 'juice').length === 0 && isApple(foodId);
  return time.ok && printed && canner && load > 0
    ? { minutes: time.minutes, loads: Math.ceil(quarts / load), canner: canner.label }
    : null;
}
