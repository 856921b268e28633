/**
 * A set-aside on its way: on the trays, weighed, off the trays into the conditioning jar, shaken, back to the dryer when drops
 * show, and dry; or frozen, to the hens, to the compost. What it loses on the trays is vapour, so its mass is always whole.
 */
import { type Act, childId, type Entry, type Refusal } from '#lib/ledger/entry.ts';
import { type HeldLot, type Lot, newLot } from '#lib/ledger/lot.ts';
import { moveGrams } from '#lib/ledger/movement.ts';
import { CONDITIONING, DRIED_FRUIT_RANGE, driedMonths } from '#lib/reference/dried-storage.ts';
import { type SetAsideMaterial, setAsideMaterial } from '#lib/reference/set-aside-materials.ts';
import type { DryingWay } from '#lib/science/drying-way.ts';
import type { Tx } from '#lib/store/database/open-database.ts';
import type { Written } from '#lib/store/ledger-store.ts';
import { roomOfKind } from '#lib/store/place.ts';
import { kilograms } from '#lib/units/format.ts';
import { addDays, daysBetween, type PlainDate, plainDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { type DryingDetails, dryingDetails, dryingOf } from './drying-of.ts';
import { changed, freeSetAsideCode, type OnLot, step, type Told } from './set-aside-step.ts';

export interface DryInput extends OnLot {
  trays: number;
  /** Hundredths of a °C: of the dryer or oven; in room air, of the room. */
  centiC: number;
  /** The dryer where nothing is said. */
  way?: DryingWay;
  humidityPct?: number;
  seedsOut: boolean;
  waxed: boolean;
}

export const startDrying = (ctx: Context, input: DryInput): Promise<Written<Told>> =>
  step(ctx, input, 'dry', (lot, act) => {
    if (lot.details.state !== 'fresh') return { refused: `${lot.code} is ${lot.details.state}, not fresh` };
    if (typeof lot.details.material !== 'string') return { refused: `what ${lot.code} is made of is not on record` };
    const material = setAsideMaterial(lot.details.material);
    if (material.seeds && !input.seedsOut)
      return { refused: 'take the seeds out first: they are not ground with the rest' };
    if (material.rind && input.waxed) return { refused: 'waxed or treated rind is not kept for food: compost it' };
    const drying: DryingDetails = {
      startedAt: act.at,
      startG: lot.onHand,
      trays: input.trays,
      centiC: input.centiC,
      ...(input.way ? { way: input.way } : {}),
      ...(input.humidityPct === undefined ? {} : { humidityPct: input.humidityPct }),
      weighings: [],
    };
    if (input.way === 'hung' && !material.hangs)
      return { refused: `${material.name.toLowerCase()} cannot be hung: trays or a windowsill` };
    const details = { state: 'drying', drying, seedsOut: input.seedsOut, waxed: input.waxed };
    const now = dryingOf({ details: { ...lot.details, ...details } });
    return {
      entry: changed(act, lot, { details }),
      tell: { said: `${kilograms(lot.onHand)} is ${now?.where ?? 'drying'}.` },
    };
  });

export interface MoveInput extends OnLot {
  way: 'dryer' | 'oven';
  trays: number;
  centiC: number;
}

/** What the room's air does not finish goes on in a dryer or oven: its target stays, its hours begin again. */
export const moveDrying = (ctx: Context, input: MoveInput): Promise<Written<Told>> =>
  step(ctx, input, 'move', (lot, act) => {
    const now = dryingOf(lot);
    const before = dryingDetails(lot);
    if (!now || !before) return { refused: `${lot.code} is not drying` };
    const drying: DryingDetails = {
      startedAt: act.at,
      startG: now.lastG,
      trays: input.trays,
      centiC: input.centiC,
      way: input.way,
      weighings: [],
      targetG: now.targetG,
    };
    return {
      entry: changed(act, lot, { details: { drying } }),
      tell: { said: `${kilograms(now.lastG)} goes on in the ${input.way}.` },
    };
  });

export interface WeighInput extends OnLot {
  grams: number;
  /** Take it off the trays at this weight. */
  out: boolean;
}

/** A set-aside may come off a hair above its target: the scale and the first moisture are no better. Rule of this project. */
const NEAR_TARGET = 1.03;
/** What stood in damp air may weigh a little more than before: it is taken as no lighter. Rule of this project. */
const DAMP = 1.02;

export const weighDrying = (ctx: Context, input: WeighInput): Promise<Written<Told>> =>
  step(ctx, input, 'weigh', (lot, act) => {
    const drying = dryingDetails(lot);
    if (!drying) return { refused: `${lot.code} is not on the trays` };
    const last = drying.weighings.at(-1)?.grams ?? drying.startG;
    if (input.grams > last * DAMP)
      return { refused: `${input.grams} g is more than the ${last} g of the last weighing: drying only takes away` };
    const grams = Math.min(input.grams, last);
    const weighed = { ...drying, weighings: [...drying.weighings, { at: act.at, grams }] };
    const now = dryingOf({ details: { ...lot.details, drying: weighed } });
    const target = now?.targetG ?? grams;
    const kg = (g: number) => `${(g / 1000).toFixed(2)} kg`;
    const short = `${kg(grams - target)} of water still to go: target ${kg(target)}`;
    const lightEnough = Math.max(target * NEAR_TARGET, now?.targetBand?.high ?? 0);
    if (!input.out || grams > lightEnough) {
      const said =
        grams > target
          ? `${short}.${input.out ? ' It stays on the trays; conditioning does not start.' : ''}`
          : 'Light enough: take it off the trays.';
      return { entry: changed(act, lot, { details: { drying: weighed } }), tell: { said } };
    }
    const lost = lot.onHand - grams;
    const movements = lost > 0 ? [moveGrams({ lot: lot.id }, { sink: 'vapour' }, lost)] : [];
    const details = { state: 'conditioning', drying: weighed, conditioning: { since: act.day, shaken: [] } };
    return {
      entry: changed(act, lot, { details, bestBefore: null }, movements),
      tell: {
        said: `${kg(grams)} is in its jar, two thirds full.${grams > target * NEAR_TARGET ? ` It is more than the ${kg(target)} reckoned, inside the band of its fresh moisture (${kg(now?.targetBand?.low ?? 0)} to ${kg(lightEnough)}): the drops on the glass will tell.` : ''} Shake it every day for ${CONDITIONING.days} days.`,
      },
    };
  });

export interface Conditioning {
  since: PlainDate;
  shaken: PlainDate[];
}
export const conditioningOf = (lot: Pick<HeldLot, 'details'>): Conditioning | null =>
  lot.details.state === 'conditioning' ? (lot.details.conditioning as Conditioning) : null;

export const shakeJar = (ctx: Context, input: OnLot & { drops: boolean }): Promise<Written<Told>> =>
  step(ctx, input, 'shake', (lot, act) => {
    const jar = conditioningOf(lot);
    if (!jar) return { refused: `${lot.code} is not in a conditioning jar` };
    if (input.drops) {
      const before = lot.details.drying as DryingDetails;
      const targetG = dryingOf({ details: { ...lot.details, state: 'drying' } })?.targetG ?? lot.onHand;
      const drying: DryingDetails = { ...before, startedAt: act.at, startG: lot.onHand, weighings: [], targetG };
      const details = { state: 'drying', drying };
      return {
        entry: changed(act, lot, { details }),
        tell: { said: 'Drops on the glass: it is back on the trays, and its days of conditioning begin again.' },
      };
    }
    const shaken = [...new Set([...jar.shaken, act.day])];
    return {
      entry: changed(act, lot, { details: { conditioning: { ...jar, shaken } } }),
      tell: { said: `Shaken, day ${daysBetween(jar.since, act.day)} of ${CONDITIONING.days}.` },
    };
  });

/** Peel, core, pomace and rind keep 6 to 12 months by estimate: 6 is shown. Fruit by the temperature of its store. */
const PEEL_DAYS = 183;

export const endConditioning = (ctx: Context, input: OnLot): Promise<Written<Told>> =>
  step(ctx, input, 'ready', (lot, act) => {
    const jar = conditioningOf(lot);
    if (!jar) return { refused: `${lot.code} is not in a conditioning jar` };
    const days = daysBetween(plainDate(jar.since), act.day);
    if (days < CONDITIONING.low)
      return {
        refused: `${days} days in the jar; it takes ${CONDITIONING.low} at least, ${CONDITIONING.days} as a rule`,
      };
    const material = setAsideMaterial(String(lot.details.material));
    const cupboard = roomOfKind(ctx.place, 'dry');
    const keeps = keepsDays(material, cupboard?.highC ?? 21);
    const label = typeof lot.details.named === 'string' ? `Dried ${lot.details.named}` : material.driedName;
    return {
      entry: changed(act, lot, {
        item: material.driedItem,
        label,
        roomId: cupboard?.id ?? lot.roomId,
        bestBefore: addDays(act.day, keeps),
        ...(jar.shaken.length === 0 ? { flags: [...lot.flags, 'never shaken while it was conditioned'] } : {}),
        details: { state: 'dry', strength: lot.details.strength ?? 'untested' },
      }),
      tell: {
        said: `${label}: ${lot.onHand} g, ready. Keep it airtight, dark and dry.${jar.shaken.length === 0 ? ' It was never shaken: look for drops once more.' : ''}`,
      },
    };
  });

/** Herbs by their own months, fruit by the temperature of its store, 4 months where that is too warm for the table. */
function keepsDays(material: SetAsideMaterial, storeC: number): number {
  if (material.wt <= 0.1 && !material.hangs) return PEEL_DAYS;
  const months = driedMonths(material.hangs ? 'herb' : 'fruit', storeC);
  return Math.round((months.ok ? months.end : DRIED_FRUIT_RANGE.low) * 30.4);
}

export type WayOut = 'freeze' | 'hens' | 'compost' | 'stock';
export interface WayInput extends OnLot {
  way: WayOut;
  /** Of pectin stock: water put in and stock strained off, grams. */
  waterG: number | null;
  stockG: number | null;
}

export const takeWayOut = (ctx: Context, input: WayInput): Promise<Written<Told>> =>
  step(ctx, input, input.way, async (lot, act, tx) => {
    if (input.way === 'hens' || input.way === 'compost') {
      const entry = {
        act,
        lots: [],
        movements: [moveGrams({ lot: lot.id }, { sink: input.way }, lot.onHand)],
        changes: [],
      };
      return { entry, tell: { said: `${kilograms(lot.onHand)} went to the ${input.way}.` } };
    }
    if (lot.groundFall || lot.grade === 'cull') return { refused: `${lot.code} is not kept for food: hens or compost` };
    if (lot.details.state !== 'fresh') return { refused: `${lot.code} is ${lot.details.state}, not fresh` };
    if (input.way === 'freeze') {
      const room = roomOfKind(ctx.place, 'freezer');
      return {
        entry: changed(act, lot, {
          roomId: room?.id ?? lot.roomId,
          bestBefore: addDays(act.day, 243),
          details: { state: 'frozen' },
        }),
        tell: { said: `${kilograms(lot.onHand)} is in the freezer.` },
      };
    }
    return boilStock(ctx, tx, { lot, act, input });
  });

async function boilStock(
  ctx: Context,
  tx: Tx,
  { lot, act, input }: { lot: HeldLot; act: Act; input: WayInput },
): Promise<{ entry: Entry; tell: Told } | Refusal> {
  const { waterG, stockG } = input;
  if (!waterG || !stockG) return { refused: 'how much water went in and how much stock ran off is missing' };
  if (stockG > lot.onHand + waterG)
    return {
      refused: `${stockG} g of stock from ${lot.onHand} g and ${waterG} g of water: ${stockG - lot.onHand - waterG} g too much`,
    };
  const made = await pectinStock(ctx, tx, act, lot);
  const pulp = lot.onHand + waterG - stockG;
  return {
    entry: {
      act,
      lots: [made],
      movements: [
        moveGrams({ sink: 'tap' }, { lot: lot.id }, waterG),
        moveGrams({ lot: lot.id }, { lot: made.id }, stockG),
        ...(pulp > 0 ? [moveGrams({ lot: lot.id }, { sink: 'compost' as const }, pulp)] : []),
      ],
      changes: [],
    },
    tell: { said: `${kilograms(stockG)} of pectin stock as ${made.code}, in the freezer.` },
  };
}

async function pectinStock(ctx: Context, tx: Tx, act: Act, from: HeldLot): Promise<Lot> {
  return newLot({
    id: childId(act.id, 'stock'),
    code: await freeSetAsideCode(ctx, tx, act.day, 'STK'),
    kind: 'set-aside',
    label: 'Pectin stock',
    unit: 'g',
    item: 'pectin-stock',
    foodId: from.foodId,
    grade: from.grade,
    parentActId: act.id,
    madeOn: act.day,
    since: act.at,
    roomId: roomOfKind(ctx.place, 'freezer')?.id ?? null,
    bestBefore: addDays(act.day, 243),
    details: { material: from.details.material, state: 'frozen', strength: 'untested' },
  });
}
