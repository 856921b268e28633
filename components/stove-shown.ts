/** What the stove page is handed: plain values. */
import type { BatchSheetShown, BatchShown } from './batch-shown.ts';
import type { FormAction } from './form-action.ts';

export type PanShown = {
  code: string;
  label: string;
  phase: 'heat' | 'boil' | 'fill' | 'canner' | 'processing' | 'done';
  boiledMs: number | null;
  endsInMs: number | null;
};
export type StoveProps = {
  view: {
    batch: Pick<BatchShown, 'boil' | 'foodId' | 'readings' | 'sharing' | 'trim'>;
    sheet: BatchSheetShown;
    pan: PanShown;
    steps: readonly { text: string; caution: string | null }[];
    others: readonly PanShown[];
  };
  actions: {
    boils: FormAction;
    setTest: FormAction;
    stop: FormAction;
    read: FormAction;
    fill: FormAction;
    process: FormAction;
  };
  ids: readonly string[];
  /** Milliseconds since 1970 when the page was made; clocks run relative to it. */
  renderedAt: number;
  said?: string;
  refused?: string;
};
