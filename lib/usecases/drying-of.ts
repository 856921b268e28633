/**
 * The drying of one set-aside: what went on the trays, what it must weigh, the weighings, and when it is done by them.
 * Its target needs no kinetics (dry matter stays); the hours are the Page model learnt from the weighings.
 */
import type { HeldLot } from '#lib/ledger/lot.ts';
import { type SetAsideMaterial, setAsideMaterial } from '#lib/reference/set-aside-materials.ts';
import { dryerStartOf } from '#lib/science/dryer-start.ts';
import { type DryingEnd, dryingEnd } from '#lib/science/drying-posterior.ts';
import { driedMass } from '#lib/science/drying-target.ts';
import { type DryingWay, dryingGuess, isRoomAir } from '#lib/science/drying-way.ts';
import { type EquilibriumStop, equilibriumStop } from '#lib/science/equilibrium-stop.ts';
import { counted } from '#lib/units/format.ts';
import { celsius } from '#lib/units/quantity.ts';

/** Kept in the lot's details while it dries. */
export interface DryingDetails {
  /** ISO instant it went on the trays. */
  startedAt: string;
  startG: number;
  trays: number;
  /** Of the dryer or oven; in room air, of the room. */
  centiC: number;
  /** A dryer where nothing is said. */
  way?: DryingWay;
  /** Of the room's air, per cent; in room air only. */
  humidityPct?: number;
  weighings: { at: string; grams: number }[];
  /** Of a load that came back from the jar: what it must weigh, its dry matter being known from the first time. */
  targetG?: number;
}

export interface Drying {
  startG: number;
  targetG: number;
  /** What it may weigh when dry, by the fresh moistures that are met; null where its dry matter is known from before. */
  targetBand: { low: number; high: number } | null;
  /** "on 10 trays at 57 °C", "on the windowsill, 20 °C and 60 %". */
  where: string;
  roomAir: boolean;
  /** What the air of the room can reach at best; null in a heated dryer. */
  stop: EquilibriumStop | null;
  /** Hours since it went on the trays. */
  weighings: { hours: number; grams: number }[];
  lastG: number;
  /** Grams of water still to go; 0 or less when it is light enough. */
  toGoG: number;
  /** Hours from the start; a tenth, half and nine tenths of the outcomes are done. Null where the weight says it is dry and drops say it is not, or the air does not get it there. */
  end: DryingEnd | null;
  formula: string;
}

const HOUR_MS = 3_600_000;
/** Share of water below which a scale tells no difference: three points. Estimate, the spread of the isotherms. */
const LEAST_TO_DRY = 0.03;

export const dryingDetails = (lot: Pick<HeldLot, 'details'>): DryingDetails | null =>
  lot.details.state === 'drying' ? (lot.details.drying as DryingDetails) : null;

/** Dry weight at the highest and the lowest fresh moisture of the material, grams. */
export const driedBand = ({ w0Range, wt }: SetAsideMaterial, freshG: number): { low: number; high: number } => ({
  low: Math.round(driedMass({ freshG, w0: w0Range[1], wt })),
  high: Math.round(driedMass({ freshG, w0: w0Range[0], wt })),
});

/** Null for a lot that is not on the trays. */
export function dryingOf(lot: Pick<HeldLot, 'details'>): Drying | null {
  const d = dryingDetails(lot);
  if (!d || typeof lot.details.material !== 'string') return null;
  const material = setAsideMaterial(lot.details.material);
  const start = dryerStartOf(material.dryer);
  const targetG = d.targetG ?? driedMass({ freshG: d.startG, w0: material.w0, wt: material.wt });
  const w0 = d.targetG === undefined ? material.w0 : 1 - (d.targetG * (1 - material.wt)) / d.startG;
  const weighings = d.weighings.map((w) => ({
    hours: (Date.parse(w.at) - Date.parse(d.startedAt)) / HOUR_MS,
    grams: w.grams,
  }));
  const lastG = weighings.at(-1)?.grams ?? d.startG;
  const way = d.way ?? 'dryer';
  const air = { t: celsius(d.centiC / 100), humidity: (d.humidityPct ?? 0) / 100, food: material.isotherm };
  const { rate, leftX } = dryingGuess(start, { way, ...air });
  return {
    startG: d.startG,
    targetG,
    targetBand: d.targetG === undefined ? driedBand(material, d.startG) : null,
    where: whereIs(d),
    roomAir: isRoomAir(way),
    stop: isRoomAir(way) ? equilibriumStop({ ...air, target: material.wt }) : null,
    weighings,
    lastG,
    toGoG: lastG - targetG,
    end:
      w0 > material.wt + LEAST_TO_DRY
        ? dryingEnd({
            freshG: d.startG,
            w0,
            wt: material.wt,
            prior: rate,
            leftX,
            weighings: weighings.filter((w) => w.hours > 0 && w.grams <= d.startG),
          })
        : null,
    formula:
      d.targetG === undefined
        ? `${d.startG} g × (1 - ${material.w0}) / (1 - ${material.wt})`
        : 'the dry matter of the first load, at the same moisture',
  };
}

function whereIs({ way, trays, centiC, humidityPct }: DryingDetails): string {
  const t = `${centiC / 100} °C`;
  const room = `${t} and ${humidityPct ?? 0} %`;
  if (way === 'windowsill') return `on the windowsill, ${room}`;
  if (way === 'hung') return `hung up, ${room}`;
  return `on ${counted(trays, 'tray')}${way === 'oven' ? ' in the oven' : ''} at ${t}`;
}
