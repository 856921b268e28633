/** A picking weighed in at the scale: the fruit enters the ledger by grade and its clocks start. */

import { pickFruit } from '#lib/ledger/acts/pick-fruit.ts';
import type { Act, Entry, Refusal } from '#lib/ledger/entry.ts';
import { GRADES, type Grade } from '#lib/ledger/lot.ts';
import { foodCode, harvestCode } from '#lib/ledger/lot-code.ts';
import type { Tx } from '#lib/store/database/open-database.ts';
import { loadLots, type Written, writeAct } from '#lib/store/ledger-store.ts';
import { type Crop, roomOfKind } from '#lib/store/place.ts';
import { bothMasses } from '#lib/units/format.ts';
import { addDays, daysBetween, isPlainDate, longDate, type PlainDate } from '#lib/units/plain-date.ts';
import { actOf } from './act-of.ts';
import type { Context } from './context.ts';

export interface HarvestReading {
  grossG: number;
  tareG: number;
  containerId: string;
  containerCount: number;
  text: string;
  unit: 'kg' | 'lb';
}

export interface HarvestInput {
  id: string;
  rowId: string;
  day: string;
  /** ISO instant of the act as the device says; the place's own instant when missing. */
  at: string | null;
  readings: HarvestReading[];
  grades: Partial<Record<Grade, number>>;
  groundFall: boolean;
  /** Why nothing was picked ("nothing ripe"): a look is a record too. Null where fruit was weighed. */
  nothing: string | null;
  person: string | null;
  device: string | null;
}

export interface HarvestDone {
  code: string;
  netG: number;
  said: string;
  flags: string[];
}

/** Rows are recorded as "row crop": a row may hold more than one crop. */
export const rowIdOf = (row: string, cropCode: string): string => `${row}|${cropCode}`;

/** Records a picking; refused only when it cannot be true, with the numbers. A doubtful weight is saved and flagged. */
export async function recordHarvest(ctx: Context, input: HarvestInput): Promise<Written<HarvestDone>> {
  const harvest = harvestOf(ctx, input);
  if ('refused' in harvest) return harvest;
  return writeAct(ctx.db, ctx.place.id, harvest.act, ctx.enteredAt, harvest.make);
}

/** The picking as an act, with what it writes; or why it cannot be. */
export function harvestOf(
  ctx: Context,
  input: HarvestInput,
): { act: Act; make: (tx: Tx) => Promise<{ entry: Entry; tell: HarvestDone }> } | Refusal {
  const [row, cropCode] = input.rowId.split('|') as [string, string | undefined];
  const crop = ctx.place.crops.find((c) => c.code === cropCode && c.plantings.some((p) => p.row === row));
  if (!crop) return { refused: `there is no row "${input.rowId}" here` };
  const day = checkedDay(input.day, ctx.today);
  if (typeof day !== 'string') return day;
  const netG = input.nothing ? 0 : checkedNet(ctx, input.readings, input.grades);
  if (typeof netG !== 'number') return netG;
  const usualG = usualPickingG(crop);
  const flags = netG > 3 * usualG ? [`more than three times the usual ${bothMasses(usualG)} of a picking`] : [];
  const payload = {
    rowId: input.rowId,
    cropId: crop.id,
    readings: input.readings,
    grades: input.grades,
    groundFall: input.groundFall,
    nothing: input.nothing,
  };
  const act = actOf(ctx, input.id, 'harvest', payload, {
    day,
    at: input.at ?? instantOn(day, ctx),
    person: input.person,
    device: input.device,
  });
  const make = async (tx: Tx) => {
    if (input.nothing) {
      const said = `Looked at ${row}, ${crop.label.toLowerCase()}: ${input.nothing}.`;
      return { entry: { act, lots: [], movements: [], changes: [] }, tell: { code: '', netG: 0, flags: [], said } };
    }
    const taken = new Set(
      (await loadLots(tx, ctx.place.id, { kinds: ['fruit'], emptied: true, madeFrom: day })).map(
        (l) => l.details.harvest,
      ),
    );
    let number = 1;
    while (taken.has(harvestCode(day, row, foodCode(crop.foodId), number))) number++;
    const entry = pickFruit({
      act,
      crop,
      row,
      number,
      gradeG: input.grades,
      groundFall: input.groundFall,
      roomId: roomOfKind(ctx.place, 'ambient')?.id ?? null,
      flags,
      lockedUntil: null,
      details: { readings: input.readings, plantings: crop.plantings.filter((p) => p.row === row).map((p) => p.code) },
    });
    const code = String(entry.lots[0]?.details.harvest ?? '');
    return {
      entry,
      tell: { code, netG, flags, said: `Recorded ${bothMasses(netG)} of ${crop.label.toLowerCase()} as ${code}.` },
    };
  };
  return { act, make };
}

/** A late entry keeps its own day; its instant is taken as the evening of that day. */
export const instantOn = (day: PlainDate, ctx: Context): string =>
  day === ctx.today ? ctx.now.toISOString() : `${day}T18:00:00.000Z`;

/** The day as typed, or why it cannot be: no act lies more than a day ahead (another time zone). */
export function checkedDay(text: string, today: PlainDate): PlainDate | Refusal {
  if (!isPlainDate(text)) return { refused: `"${text}" is not a day of the calendar; write it as year-month-day` };
  const ahead = daysBetween(today, text);
  if (ahead <= 1) return text;
  const lastYear = `${Number(text.slice(0, 4)) - 1}${text.slice(4)}`;
  const meant = isPlainDate(lastYear) && lastYear <= today ? `; did you mean ${longDate(lastYear)}?` : '';
  const far = ahead < 14 ? `${ahead} days` : `${Math.floor(ahead / 7)} weeks`;
  return { refused: `that is ${far} ahead${meant}` };
}

function checkedNet(
  ctx: Context,
  readings: HarvestReading[],
  grades: Partial<Record<Grade, number>>,
): number | Refusal {
  if (readings.length === 0) return { refused: 'no weight was given' };
  for (const r of readings) {
    if (r.grossG > r.tareG) continue;
    const kg = (g: number) => (g / 1000).toFixed(2);
    const container = ctx.place.containers.find((c) => c.id === r.containerId)?.label.toLowerCase() ?? 'container';
    const vessel = container.split(' ').at(-1);
    if (r.grossG === r.tareG) return { refused: `nothing in the ${vessel}: ${kg(r.grossG)} = ${kg(r.tareG)}` };
    return { refused: `gross less than the ${vessel}: ${kg(r.grossG)} < ${kg(r.tareG)}` };
  }
  const net = readings.reduce((g, r) => g + r.grossG - r.tareG, 0);
  const graded = GRADES.reduce((g, grade) => g + (grades[grade] ?? 0), 0);
  if (GRADES.some((g) => (grades[g] ?? 0) < 0)) return { refused: 'a grade is below zero' };
  if (graded !== net)
    return {
      refused: `the grades add up to ${bothMasses(graded)}, the scale to ${bothMasses(net)}: ${Math.abs(graded - net)} g ${graded > net ? 'over' : 'short'}`,
    };
  return net;
}

/** A usual picking: the crop's year over as many pickings as its window has, at one every two days. Estimate, until own pickings say. */
export function usualPickingG(crop: Pick<Crop, 'count' | 'gPerUnit' | 'windowFrom' | 'windowTo'>): number {
  const days = daysBetween(`2025-${crop.windowFrom}` as PlainDate, `2025-${crop.windowTo}` as PlainDate) + 1;
  return Math.max(500, Math.round((crop.count * crop.gPerUnit) / Math.max(1, days / 2)));
}

/** In season within a fortnight either side of its window: its rows come first on the list. */
export function inSeason(crop: Pick<Crop, 'windowFrom' | 'windowTo'>, day: PlainDate): boolean {
  const year = day.slice(0, 4);
  return (
    day >= addDays(`${year}-${crop.windowFrom}` as PlainDate, -10) &&
    day <= addDays(`${year}-${crop.windowTo}` as PlainDate, 10)
  );
}
