/** Pressing day: what so much fruit gives by the press, what a canner needs for its quarts, and what is refused. */

import { type Figure, figure, input } from '#lib/batch/figure.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
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
import { parseNumber } from '#lib/units/parse-number.ts';
import { celsius } from '#lib/units/quantity.ts';
import type { Context } from './context.ts';
import { trimOfRings, trimText } from './learn-trim.ts';
import { CITRUS, isApple, notForFood } from './set-aside-makes.ts';
import { type LabelledFigure, shown } from './shown-figure.ts';

export interface PressView {
  fruit: { id: string; code: string; label: string; grade: string; grams: number; refused: string | null }[];
  /** Those of the fruit that may be cut to rings or slices, and those that have zest. */
  apples: PressView['fruit'];
  citrus: PressView['fruit'];
  /** Trim of apples cut to rings, as published and as weighed here. */
  ringTrim: string;
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
    /** The same, each with what it rests on. */
    figures: LabelledFigure[];
  } | null;
}

export async function readPress(
  ctx: Context,
  q: { lot?: string | undefined; kg?: string | undefined },
): Promise<PressView> {
  const held = await loadLots(ctx.db, ctx.place.id, { kinds: ['fruit'] });
  const lots = held.filter((l) => l.onHand >= 1000);
  const chosen = lots.find((l) => l.id === q.lot);
  const typed = parseNumber(q.kg ?? '');
  const kg = typed.ok ? typed.value : 0;
  const shown = lots.map(fruitShown);
  return {
    fruit: shown,
    apples: shown.filter((f, i) => f.refused === null && APPLES.includes(lots[i]?.foodId ?? '')),
    citrus: held
      .filter((l) => CITRUS.includes(l.foodId ?? ''))
      .map(fruitShown)
      .filter((f) => f.refused === null),
    ringTrim: trimText(await trimOfRings(ctx)),
    mayKeepPomace: isApple(chosen?.foodId ?? null),
    expected: chosen?.foodId && kg > 0 && !notForFood([chosen]) ? pressed(ctx, chosen.foodId, kg) : null,
  };
}

const fruitShown = (l: HeldLot): PressView['fruit'][number] => ({
  id: l.id,
  code: l.code,
  label: l.label,
  grade: l.grade ?? '',
  grams: l.onHand,
  refused: notForFood([l]),
});

const APPLES: readonly string[] = ['apple-dessert', 'apple-cooking', 'pear'];

/** Juice by the share of the fruit's weight, litres at the density of its usual Brix, pomace the rest but the loss. */
export function pressed(ctx: Context, foodId: string, kg: number): NonNullable<PressView['expected']> {
  const brix = fruitOf(foodId).solublePct.typ;
  const kgPerL = sucroseDensity(brix, celsius(20)) / 1000;
  const quarts = (share: number) => Math.floor((share * kg) / kgPerL / (ML_PER_US_QUART / 1000));
  const typ = quarts(PRESS_JUICE.typ);
  const expected = {
    kg,
    juiceKg: { low: PRESS_JUICE.low * kg, typ: PRESS_JUICE.typ * kg, high: PRESS_JUICE.high * kg },
    litres: (PRESS_JUICE.typ * kg) / kgPerL,
    brix,
    quarts: { low: quarts(PRESS_JUICE.low), typ, high: quarts(PRESS_JUICE.high) },
    pomaceKg: kg * (1 - PRESS_JUICE.typ - PRESS_LOSS),
    process: canning(ctx, foodId, typ),
  };
  return { ...expected, figures: figuresOf(expected, kgPerL) };
}

type Expected = Omit<NonNullable<PressView['expected']>, 'figures'>;

function figuresOf(e: Expected, kgPerL: number): LabelledFigure[] {
  const fruit = input('fruit in the press', e.kg, 'kg');
  const figures: [string, Figure][] = [
    [
      'Juice',
      figure({
        value: e.juiceKg.typ,
        unit: 'kg',
        band: { low: e.juiceKg.low, high: e.juiceKg.high },
        formula: 'fruit × the share a home rack press runs off',
        inputs: [fruit, input('share', `${PRESS_JUICE.typ} (${PRESS_JUICE.low} fair to ${PRESS_JUICE.high} good)`)],
        source: PRESS_JUICE.source,
        status: PRESS_JUICE.status,
      }),
    ],
    [
      'Litres',
      figure({
        value: e.litres,
        unit: 'L',
        formula: 'juice ÷ density of a sugar solution of its °Bx at 20 °C',
        inputs: [
          input('juice', e.juiceKg.typ, 'kg'),
          input('usual °Bx of the fruit, from its table', e.brix),
          input('density', kgPerL, 'kg/L'),
        ],
      }),
    ],
    [
      'Quarts',
      figure({
        value: e.quarts.typ,
        unit: '',
        band: { low: e.quarts.low, high: e.quarts.high },
        formula: 'litres ÷ 0.946353 L, whole quarts',
        inputs: [input('juice', e.litres, 'L')],
      }),
    ],
    [
      'Pomace',
      figure({
        value: e.pomaceKg,
        unit: 'kg',
        formula: 'fruit - juice - what stays on cloth and racks',
        inputs: [fruit, input('juice', e.juiceKg.typ, 'kg'), input('on cloth and racks', PRESS_LOSS * e.kg, 'kg')],
        source: 'ESTIMATE',
        status: 'estimate',
      }),
    ],
  ];
  return figures.map(([label, f]) => ({ label, figure: shown(f) }));
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
