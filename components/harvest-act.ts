/** From the pad to a record: what cannot be true is refused with the numbers; what is doubtful is asked about and kept. */
import { kilograms, poundsText } from '#lib/units/format.ts';
import { allReadings, type Grade, gradeSplit, netGrams, type PadRow, type PadState } from './harvest-pad-state.ts';
import { type MassUnit, netOfReading, type PadContainer, type Reading, typedGrams } from './harvest-weights.ts';

/** What is handed to `onRecord`: one picking of one row, weighed in the shed. */
export type HarvestAct = {
  readonly id: string;
  readonly rowId: string;
  readonly day: string;
  readonly readings: readonly (Reading & { readonly grossG: number; readonly tareG: number })[];
  readonly netG: number;
  readonly grades: Readonly<Record<Grade, number>>;
  readonly groundFall: boolean;
};
export type PadResult = { ok: true; act: HarvestAct } | { ok: false; reason: string };

export type PadFrame = { readonly id: string; readonly day: string; readonly containers: readonly PadContainer[] };

/** The act, or why it cannot be true: no row, no weight, containers heavier than the scale, grades that do not add up. */
export function harvestAct(state: PadState, { id, day, containers }: PadFrame): PadResult {
  if (state.rowId === null) return { ok: false, reason: 'Choose the row first.' };
  const readings = allReadings(state);
  if (readings.length === 0) return { ok: false, reason: 'Type what the scale says.' };
  const light = readings.find((r) => netOfReading(r, containers) <= 0);
  if (light) return { ok: false, reason: tooLight(light, containers) };
  const netG = readings.reduce((sum, r) => sum + netOfReading(r, containers), 0);
  const { grams, over } = gradeSplit(state, netG);
  if (over > 0)
    return { ok: false, reason: `The grades add up to ${kilograms(over)} more than the ${kilograms(netG)} weighed.` };
  if (over < 0) return { ok: false, reason: `${kilograms(-over)} of the ${kilograms(netG)} weighed has no grade yet.` };
  const weighed = readings.map((r) => ({
    ...r,
    grossG: typedGrams(r.text, r.unit) ?? 0,
    tareG: (containers.find((c) => c.id === r.containerId)?.tareG ?? 0) * r.containerCount,
  }));
  return {
    ok: true,
    act: { id, rowId: state.rowId, day, readings: weighed, netG, grades: grams, groundFall: state.groundFall },
  };
}

/** "Gross less than the bucket: 0.50 < 0.62 kg." */
function tooLight(r: Reading, containers: readonly PadContainer[]): string {
  const container = containers.find((c) => c.id === r.containerId);
  const tare = (container?.tareG ?? 0) * r.containerCount;
  const gross = typedGrams(r.text, r.unit) ?? 0;
  const name = container?.label.toLowerCase().split(' ').at(-1) ?? 'container';
  return `Gross less than the ${name}${r.containerCount === 1 ? '' : 's'}: ${(gross / 1000).toFixed(2)} < ${kilograms(tare)}. Another container?`;
}

/** How far from the usual a picking may be before it is asked about, as a factor up or down (common practice of this program). */
const DOUBT_FACTOR = 3;
export type WeightDoubt = {
  readonly usualKg: number;
  readonly asKgG: number;
  readonly asLbG: number;
  readonly otherUnitFits: boolean;
};

/**
 * A weight far from what the row usually gives, with both readings of the same digits; null when there is nothing to ask.
 * Doubtful weights are saved all the same.
 */
export function weightDoubt(
  state: PadState,
  row: PadRow | null,
  containers: readonly PadContainer[],
): WeightDoubt | null {
  const readings = allReadings(state);
  if (!row?.usualKg || readings.length === 0) return null;
  const inUnit = (unit: MassUnit) => readings.reduce((s, r) => s + netOfReading({ ...r, unit }, containers), 0);
  const fits = (g: number) => g <= usualG * DOUBT_FACTOR && g >= usualG / DOUBT_FACTOR;
  const usualG = row.usualKg * 1000;
  const net = netGrams(state, containers);
  const other = inUnit(state.unit === 'kg' ? 'lb' : 'kg');
  const otherUnitFits = !fits(net) && fits(other);
  if (net <= usualG * DOUBT_FACTOR && !otherUnitFits) return null;
  return { usualKg: row.usualKg, asKgG: inUnit('kg'), asLbG: inUnit('lb'), otherUnitFits };
}

/** Wet screens tap twice: the same tap within 700 ms is the same tap. */
const GHOST_TAP_MS = 700;
export const isGhostTap = (previousMs: number | null, nowMs: number): boolean =>
  previousMs !== null && nowMs - previousMs < GHOST_TAP_MS;

/** "Record 13.74 kg · 30.3 lb". */
export const recordLabel = (net: number): string =>
  net > 0 ? `Record ${kilograms(net)} · ${poundsText(net)}` : 'Record';
