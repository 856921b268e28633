/** The sheet a batch record keeps. */
import type { FrozenSheet } from '#lib/batch/frozen-sheet.ts';
import type { BatchRecord } from '#lib/ledger/batch-record.ts';

export type { FrozenSheet } from '#lib/batch/frozen-sheet.ts';

export const sheetOf = (b: BatchRecord): FrozenSheet => b.result as unknown as FrozenSheet;
