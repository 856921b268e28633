/**
 * At the stove: it boils, a set test, off the heat; and what the stove page shows. Every clock is an instant on record, so a
 * reload, a dark screen or a restart changes none of them.
 */
import type { BatchRecord, ReadingRecord } from '#lib/ledger/batch-record.ts';
import { childId } from '#lib/ledger/entry.ts';
import { loadBatches } from '#lib/store/batch-store.ts';
import type { Written } from '#lib/store/ledger-store.ts';
import { actOf } from './act-of.ts';
import { nothingMoved, onBatch, type Told } from './batch-flow.ts';
import type { Context } from './context.ts';
import { type FrozenSheet, sheetOf } from './frozen-sheet.ts';
import { type BatchView, readBatch, type ShownSheet } from './read-batches.ts';

export interface StoveMark {
  id: string;
  code: string;
}

/** The hard boil begins: its clock counts from here. */
export const startBoil = (ctx: Context, input: StoveMark): Promise<Written<Told>> =>
  mark(ctx, input, (sheet, at) =>
    sheet.boilStartedAt
      ? `${input.code} boils already`
      : { change: { boilStartedAt: at }, said: 'It boils: the clock runs.' },
  );

/** Off the heat. */
export const stopBoil = (ctx: Context, input: StoveMark): Promise<Written<Told>> =>
  mark(ctx, input, (sheet, at) => {
    if (!sheet.boilStartedAt) return `${input.code} has not boiled yet`;
    if (sheet.boilStoppedAt) return `${input.code} is off the heat already`;
    const minutes = Math.round((Date.parse(at) - Date.parse(sheet.boilStartedAt)) / 60_000);
    return { change: { boilStoppedAt: at }, said: `Off the heat after ${minutes} min of boil.` };
  });

const mark = (
  ctx: Context,
  input: StoveMark,
  make: (sheet: FrozenSheet, at: string) => { change: Partial<FrozenSheet>; said: string } | string,
): Promise<Written<Told>> =>
  onBatch(ctx, input.id, input.code, ['cooking'], async (_tx, batch) => {
    const act = actOf(ctx, input.id, 'process', { ...input });
    const made = make(sheetOf(batch), act.at);
    if (typeof made === 'string') return { refused: made };
    return {
      entry: {
        ...nothingMoved(act),
        batchChanges: [
          {
            batchId: batch.id,
            result: { ...batch.result, ...made.change },
            addLog: [{ at: act.at, what: made.said.replace(/\.$/, '') }],
          },
        ],
      },
      tell: { said: made.said },
    };
  });

export interface SetTestInput extends StoveMark {
  /** 0 runs, 1 thickens, 2 set. */
  result: number;
  /** °C, as read with the test; null when the thermometer was not looked at. */
  tempC: number | null;
}

const PLATE = ['runs off the plate', 'thickens', 'set'] as const;

/** What the cold plate showed, with its time and the temperature: one tap. */
export const logSetTest = (ctx: Context, input: SetTestInput): Promise<Written<Told>> =>
  onBatch(ctx, input.id, input.code, ['cooking'], async (_tx, batch) => {
    const act = actOf(ctx, input.id, 'process', { ...input });
    const row = (kind: 'set-test' | 'temperature', value: number, unit: ReadingRecord['unit']): ReadingRecord => ({
      id: childId(act.id, kind),
      batchId: batch.id,
      kitchenId: null,
      kind,
      day: act.day,
      at: act.at,
      value: Math.round(value * 100),
      unit,
      instrument: null,
      note: null,
    });
    const at = input.tempC === null ? '' : ` at ${input.tempC} °C`;
    const what = `set test: ${PLATE[input.result]}${at}`;
    return {
      entry: {
        ...nothingMoved(act),
        readings: [
          row('set-test', input.result, 'set'),
          ...(input.tempC === null ? [] : [row('temperature', input.tempC, '°C')]),
        ],
        batchChanges: [{ batchId: batch.id, addLog: [{ at: act.at, what }] }],
      },
      tell: { said: `Logged ${what}.` },
    };
  });

export type StovePhase = 'heat' | 'boil' | 'fill' | 'canner' | 'processing' | 'done';

export interface PanClock {
  code: string;
  label: string;
  phase: StovePhase;
  /** Milliseconds since it boils, or boiled when it was taken off; null before. */
  boiledMs: number | null;
  /** To the expected end of the boil, or to the end of the process; null where nothing runs. Below zero when it is past. */
  endsInMs: number | null;
}

export interface StoveView {
  batch: BatchView;
  sheet: ShownSheet;
  pan: PanClock;
  /** Of the phase. */
  steps: { text: string; caution: string | null }[];
  /** The other pans and canner loads. */
  others: PanClock[];
}

/** Null where there is no such batch, or it was not begun on a sheet. */
export async function readStove(ctx: Context, code: string): Promise<StoveView | null> {
  const batch = await readBatch(ctx, code);
  if (!batch?.sheet) return null;
  const going = await loadBatches(ctx.db, ctx.place.id, { states: ['cooking', 'filled'] });
  const own = going.find((b) => b.code === batch.code);
  const pan: PanClock = own
    ? clockOf(ctx, own)
    : { code: batch.code, label: batch.label, phase: 'done', boiledMs: null, endsInMs: null };
  const rest = batch.boil?.rest.at(-1);
  return {
    batch,
    sheet: batch.sheet,
    pan:
      pan.phase === 'boil' && rest && pan.boiledMs !== null
        ? { ...pan, endsInMs: rest.minute * 60_000 - pan.boiledMs }
        : pan,
    steps: stepsOf(batch.sheet, pan.phase),
    others: going.filter((b) => b.code !== batch.code && b.formulaVersion !== 'season').map((b) => clockOf(ctx, b)),
  };
}

function clockOf(ctx: Context, b: BatchRecord): PanClock {
  const sheet = sheetOf(b);
  const since = (iso: string) => ctx.now.getTime() - Date.parse(iso);
  const phase = phaseOf(b, sheet);
  const boiledMs = sheet.boilStartedAt
    ? since(sheet.boilStartedAt) - (sheet.boilStoppedAt ? since(sheet.boilStoppedAt) : 0)
    : null;
  const endsInMs =
    phase === 'boil' && sheet.boilMin && boiledMs !== null
      ? sheet.boilMin * 60_000 - boiledMs
      : phase === 'processing' && sheet.processMin && sheet.boilingAt
        ? sheet.processMin * 60_000 - since(sheet.boilingAt)
        : null;
  return { code: b.code, label: b.label, phase, boiledMs, endsInMs };
}

function phaseOf(b: BatchRecord, sheet: FrozenSheet): StovePhase {
  if (b.state === 'cooking') return sheet.boilStoppedAt ? 'fill' : sheet.boilStartedAt ? 'boil' : 'heat';
  if (b.state === 'filled') return sheet.boilingAt ? 'processing' : 'canner';
  return 'done';
}

const PARTS: Record<StovePhase, readonly string[]> = {
  heat: ['prepare', 'draw juice', 'cook'],
  boil: ['finish'],
  fill: ['fill'],
  canner: ['process'],
  processing: ['cool'],
  done: ['store', 'set aside'],
};

/** Sheets kept before their steps named their part are shown whole. */
const stepsOf = (sheet: Pick<FrozenSheet, 'steps'>, phase: StovePhase): StoveView['steps'] =>
  sheet.steps.filter((s) => s.part === undefined || PARTS[phase].includes(s.part));
