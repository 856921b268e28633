/** The shed screen's own view: rows with what they usually give, containers with tare, and what came in today. */
import { correctionsAmong, loadActs } from '#lib/store/act-store.ts';
import { addDays, type PlainDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { inSeason, rowIdOf, usualPickingG } from './record-harvest.ts';

export interface HarvestView {
  /** Before the household's night ends (04:00) a picking still counts as yesterday's. */
  day: PlainDate;
  rows: {
    id: string;
    label: string;
    cropId: string;
    cropLabel: string;
    usualKg: number;
    usualContainer: string | null;
    inSeason: boolean;
  }[];
  containers: { id: string; label: string; tareG: number }[];
  pickings: { id: string; at: string; what: string; grams: number; code: string; byPerson: string | null }[];
  pickedG: number;
}

export async function readHarvest(ctx: Context): Promise<HarvestView> {
  const all = await loadActs(ctx.db, ctx.place.id, { kinds: ['harvest'], from: ctx.today, to: ctx.today });
  const back = await correctionsAmong(
    ctx.db,
    ctx.place.id,
    all.map((a) => a.id),
  );
  const acts = all.filter((a) => !back.has(a.id));
  const rows = ctx.place.crops.flatMap((crop) =>
    [...new Set(crop.plantings.map((p) => p.row))].map((row) => ({
      id: rowIdOf(row, crop.code),
      label: row,
      cropId: crop.foodId,
      cropLabel: crop.label,
      usualKg: Math.round(usualPickingG(crop) / 100) / 10,
      usualContainer: null,
      inSeason: inSeason(crop, ctx.today),
    })),
  );
  const pickings = acts.map((a) => ({
    id: a.id,
    at: a.at,
    what: ctx.place.crops.find((c) => c.id === a.payload.cropId || c.code === a.payload.crop)?.label ?? 'Fruit',
    grams: a.movements
      .filter((m) => 'sink' in m.from && m.from.sink === 'harvest')
      .reduce((g, m) => g + (m.grams ?? 0), 0),
    code: `${String(a.payload.rowId ?? a.payload.row ?? '').split('|')[0]}`,
    byPerson: a.person,
  }));
  return {
    day: pickingDay(ctx),
    rows: rows.sort((a, b) => Number(b.inSeason) - Number(a.inSeason)),
    containers: ctx.place.containers.map(({ id, label, tareG }) => ({ id, label, tareG })),
    pickings,
    pickedG: pickings.reduce((g, p) => g + p.grams, 0),
  };
}

/** The day a picking weighed in now belongs to. */
export function pickingDay(ctx: Context): PlainDate {
  const time = new Intl.DateTimeFormat('en-GB', {
    timeZone: ctx.place.timeZone,
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  }).format(ctx.now);
  return time < ctx.place.settings.dayEndsAt ? addDays(ctx.today, -1) : ctx.today;
}
