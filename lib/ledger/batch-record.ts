/** A batch as it is kept: what went in and what was computed are frozen with the formula version that computed it. */
import type { PlainDate } from '#lib/units/plain-date.ts';

export type BatchState = 'cooking' | 'filled' | 'cooling' | 'jarred' | 'taken back';

export interface BatchRecord {
  id: string;
  code: string;
  recipeId: string;
  label: string;
  kitchenId: string;
  panCode: string | null;
  state: BatchState;
  day: PlainDate;
  startedAt: string | null;
  filledAt: string | null;
  outAt: string | null;
  formulaVersion: string;
  inputs: Record<string, unknown>;
  result: Record<string, unknown>;
  log: LogLine[];
}

/** One line of the batch's own log, in words and with its instant. */
export interface LogLine {
  at: string;
  what: string;
}

export type BatchChange = { batchId: string; addLog?: LogLine[] } & Partial<
  Pick<BatchRecord, 'state' | 'startedAt' | 'filledAt' | 'outAt' | 'result'>
>;

/** Instrument of a set reading taken at the cold jar, not at the plate. */
export const JAR_SET = 'jar';

export interface ReadingRecord {
  id: string;
  batchId: string | null;
  kitchenId: string | null;
  kind: 'water' | 'temperature' | 'weight' | 'brix' | 'set-test' | 'ph';
  day: PlainDate;
  at: string;
  /** In hundredths of the unit, whole. */
  value: number;
  unit: '°C' | 'kg' | '°Bx' | 'pH' | 'set';
  instrument: string | null;
  note: string | null;
}
