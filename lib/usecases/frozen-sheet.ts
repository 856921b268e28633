/** The sheet a batch record keeps. */
import type { FrozenSheet } from '#lib/batch/frozen-sheet.ts';
import type { BatchRecord } from '#lib/ledger/batch-record.ts';

export type { FrozenSheet } from '#lib/batch/frozen-sheet.ts';

export const sheetOf = (b: BatchRecord): FrozenSheet => b.result as unknown as FrozenSheet;

/** The batch in whose pan the jars were cooked: its own, or the one they came from when they were processed again. */
export const panBatchId = (b: Pick<BatchRecord, 'id' | 'inputs'>): string =>
  typeof b.inputs.cookedIn === 'string' ? b.inputs.cookedIn : b.id;
