/** One bucket from the plain form: typed kilograms or pounds become the shed screen's own act. */

import { toGrams } from '#lib/forms/fields.ts';
import type { PlainHarvest } from '#lib/forms/plain-harvest.ts';
import type { Written } from '#lib/store/ledger-store.ts';
import type { Context } from './context.ts';
import { type HarvestDone, recordHarvest } from './record-harvest.ts';

export async function recordPlain(ctx: Context, f: PlainHarvest): Promise<Written<HarvestDone>> {
  const container = ctx.place.containers.find((c) => c.id === f.container);
  const grossG = toGrams(f.gross, f.unit);
  const tareG = (container?.tareG ?? 0) * f.containerCount;
  const g = (v: number | null) => (v === null ? 0 : toGrams(v, f.unit));
  const worse = { blemished: g(f['grade-blemished']), soft: g(f['grade-soft']), cull: g(f['grade-cull']) };
  const perfect = grossG - tareG - worse.blemished - worse.soft - worse.cull;
  return recordHarvest(ctx, {
    id: f.id,
    rowId: f.row,
    day: f.day,
    at: null,
    readings: [
      {
        grossG,
        tareG,
        containerId: f.container,
        containerCount: f.containerCount,
        text: String(f.gross),
        unit: f.unit,
      },
    ],
    grades: { perfect, ...worse },
    groundFall: f.groundFall,
    nothing: null,
    person: null,
    device: 'form',
  });
}
