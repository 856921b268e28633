/** What dryer, oven, windowsill and hanging up would each take of a fresh set-aside, so that the person can choose. */
import type { SetAsideMaterial } from '#lib/reference/set-aside-materials.ts';
import { dryerStartOf } from '#lib/science/dryer-start.ts';
import { dryingEnd } from '#lib/science/drying-posterior.ts';
import { type DryingWay, dryingGuess, isRoomAir, mouldLooms } from '#lib/science/drying-way.ts';
import { type EquilibriumStop, equilibriumStop } from '#lib/science/equilibrium-stop.ts';
import { celsius } from '#lib/units/quantity.ts';

export interface RoomAir {
  celsius: number;
  humidityPct: number;
}

export interface DryingShown {
  way: DryingWay;
  title: string;
  /** "4 to 10 h", or why it never gets there. */
  hours: string;
  /** "yes", or what the air of the room reaches at best. */
  gets: string;
  never: boolean;
}

/** Printed setting of an oven for drying, °C (NDSU: 140-145 °F, door ajar). */
export const OVEN_C = 60;
const USUAL_ROOM: RoomAir = { celsius: 20, humidityPct: 60 };

/** Air as asked for, where it is air of a room; else a usual one. */
export function roomAsked(q: { roomC?: string | undefined; humidity?: string | undefined }): RoomAir {
  const within = (text: string | undefined, low: number, high: number, usual: number) => {
    const n = Number((text ?? '').trim().replace(',', '.'));
    return text?.trim() && n >= low && n <= high ? n : usual;
  };
  return {
    celsius: within(q.roomC, 5, 40, USUAL_ROOM.celsius),
    humidityPct: within(q.humidity, 5, 95, USUAL_ROOM.humidityPct),
  };
}

export function dryingsOf(
  material: SetAsideMaterial,
  freshG: number,
  { dryerC, room }: { dryerC: number; room: RoomAir },
): DryingShown[] {
  const inRoom = `${room.celsius} °C, ${room.humidityPct} %`;
  const one = (way: DryingWay, title: string, t: number) => shownFor(material, freshG, { way, title, t, room });
  return [
    one('dryer', `Dryer, ${dryerC} °C`, dryerC),
    one('oven', `Oven, ${OVEN_C} °C, door ajar`, OVEN_C),
    one('windowsill', `Windowsill, ${inRoom}`, room.celsius),
    ...(material.hangs ? [one('hung', `Hung up, ${inRoom}`, room.celsius)] : []),
  ];
}

function shownFor(
  material: SetAsideMaterial,
  freshG: number,
  { way, title, t, room }: { way: DryingWay; title: string; t: number; room: RoomAir },
): DryingShown {
  const air = { t: celsius(t), humidity: room.humidityPct / 100, food: material.isotherm };
  const { w0, wt } = material;
  const guess = dryingGuess(dryerStartOf(material.dryer), { way, ...air });
  const end = dryingEnd({ freshG, w0, wt, prior: guess.rate, leftX: guess.leftX, weighings: [] });
  const stop = isRoomAir(way) ? equilibriumStop({ ...air, target: wt }) : null;
  const never = !end || stop?.reaches === 'no';
  const mould = isRoomAir(way) && mouldLooms(guess, { w0, t: air.t }) ? ' Look for mould from the second day on.' : '';
  return {
    way,
    title,
    never,
    hours: end && !never ? span(end.p10, end.p90) : 'does not get there',
    gets: stop ? `${stopsAt(stop)}${mould}` : `${points(wt)} %`,
  };
}

/** "this air stops at 15.9 % water (12.9 to 18.9): …". */
export function stopsAt({ stopsAt: { typ, low, high }, reaches }: EquilibriumStop): string {
  const at = `this air stops at ${points(typ)} % water (${points(low)} to ${points(high)})`;
  if (reaches === 'no') return `${at} and does not get it dry enough to store: finish it in the dryer or the oven`;
  return reaches === 'doubtful' ? `${at}: doubtful, so weigh it and finish it in the dryer` : at;
}
const points = (share: number): string => String(Math.round(1000 * share) / 10);

const TWO_DAYS_H = 48;
function span(low: number, high: number): string {
  if (high <= TWO_DAYS_H) return `${Math.max(1, Math.round(low))} to ${Math.max(1, Math.round(high))} h`;
  const days = (h: number) => (h / 24).toFixed(h < 240 ? 1 : 0);
  return `${days(low)} to ${days(high)} days`;
}
