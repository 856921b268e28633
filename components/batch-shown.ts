/** What the page of one batch is handed: plain values, shared by its card and the step that is due. */
import type { FormAction } from './form-action.ts';
import type { Shown } from './shown-figure.tsx';

export type BatchSheetShown = {
  rawG: number;
  preparedG: number;
  trimG: number;
  doses: readonly { name: string; grams: number }[];
  mixG: number;
  finalG: number | null;
  boilOffG: number | null;
  boilMin: number | null;
  brix: number | null;
  stopC: number | null;
  waterC: number | null;
  jars: number;
  partialG: number;
  jarLabel: string | null;
  shelf: boolean;
  processMin: number | null;
  sterile: boolean;
  headspaceIn: number | null;
  headspaceMm: number | null;
  reasons: readonly string[];
  ways: readonly string[];
  household: boolean;
  steps: readonly { text: string; caution: string | null }[];
  figures: readonly { label: string; figure: Shown }[];
};
export type BatchShown = {
  code: string;
  label: string;
  state: string;
  sheet: BatchSheetShown | null;
  inputs: readonly { code: string; grams: number }[];
  readings: readonly { at: string; kind: string; value: number; unit: string }[];
  boil: {
    curve: readonly { minute: number; kg: number }[];
    weighings: readonly { minute: number; kg: number }[];
    byTemperature: readonly { minute: number; kg: number }[];
    stopKg: number;
    ahead: { gPerMin: number; minutesLeft: number; by: 'weight' | 'temperature' } | null;
    rest: readonly { minute: number; kg: number }[];
  } | null;
  foodId: string;
  trim: string | null;
  log: readonly { at: string; time: string; what: string }[];
  ph: {
    may: boolean;
    wanted: boolean;
    tooHigh: boolean;
    hours: number | null;
    readings: readonly { at: string; read: string; pH: number; buffers: string | null; jar: string | null }[];
  };
  jars: readonly {
    code: string;
    onHand: number;
    kind: string;
    seal: string | null;
    process: string | null;
    address: string | null;
    hold: string | null;
    flags: readonly string[];
  }[];
  partial: { grams: number; useBy: string | null } | null;
  processEndsInMs: number | null;
  hoursOut: number | null;
  sealState: 'early' | 'due' | 'red' | 'locked' | null;
  address: { suggested: string; addresses: readonly string[] } | null;
  set: { said: string | null } | null;
  out: {
    pieces: readonly number[];
    why: 'unsealed' | 'process' | 'acid';
    ways: readonly ('fridge' | 'freezer' | 'process again' | 'discard')[];
    fridgeBy: string;
    processMin: number | null;
  } | null;
  unset: {
    stage: 'leave' | 'setting' | 'judge';
    judgedOn: string;
    said: number | null;
    reasons: readonly string[];
    pieces: readonly number[];
    atOnce: number;
    trial: string;
    remade: string;
    syrupDays: number;
  } | null;
  sharing: readonly { code: string; label: string }[];
};
export type BatchCardProps = {
  view: BatchShown;
  actions: {
    read: FormAction;
    fill: FormAction;
    process: FormAction;
    seal: FormAction;
    readPh: FormAction;
    set: FormAction;
    out: FormAction;
    deviate: FormAction;
    syrup: FormAction;
    again: FormAction;
  };
  ids: readonly string[];
  /** Milliseconds since 1970 when the page was made; timers end relative to it. */
  renderedAt: number;
};
