/** A batch lights its burner: what was weighed leaves its lots and stands in the pan. */
import type { BatchRecord } from '../batch-record.ts';
import { type Act, childId, type Entry } from '../entry.ts';
import { newLot } from '../lot.ts';
import { type Movement, moveGrams } from '../movement.ts';

export interface Draw {
  lotId: string;
  /** In the lot's own unit. */
  qty: number;
  /** Mass, whole grams. */
  grams: number;
}

export interface BatchStart {
  act: Act;
  batch: BatchRecord;
  draws: Draw[];
  waterG: number;
  household: boolean;
}

/** The lot that stands for what is in the pan. */
export const panLotId = (batchId: string): string => `${batchId}.pan`;

export function startBatch(s: BatchStart): Entry {
  const pan = newLot({
    id: panLotId(s.batch.id),
    code: `${s.batch.code}/pan`,
    kind: 'batch',
    label: s.batch.label,
    unit: 'g',
    recipeId: s.batch.recipeId,
    batchId: s.batch.id,
    parentActId: s.act.id,
    madeOn: s.act.day,
    since: s.act.at,
    household: s.household,
  });
  const into = { lot: pan.id };
  const movements: Movement[] = s.draws
    .filter((d) => d.qty > 0)
    .map((d) => ({ from: { lot: d.lotId }, to: into, qty: d.qty, grams: d.grams, piece: null }));
  if (s.waterG > 0) movements.push(moveGrams({ sink: 'tap' }, into, s.waterG));
  return { act: s.act, lots: [pan], movements, changes: [], batches: [s.batch] };
}

export const jarLotId = (batchId: string, jarKind: string): string => childId(batchId, jarKind);
