/** The figures a batch keeps: computed once when it is lit, shown at the stove, never computed again. */
import type { Labelled } from './figure.ts';
import type { StepPart } from './instructions.ts';

export interface FrozenSheet {
  rawG: number;
  preparedG: number;
  trimG: number;
  doses: { name: string; grams: number }[];
  mixG: number;
  finalG: number | null;
  boilOffG: number | null;
  boilMin: number | null;
  brix: number | null;
  stopC: number | null;
  waterC: number | null;
  jars: number;
  jarG: number | null;
  partialG: number;
  jarKind: string | null;
  jarLabel: string | null;
  shelf: boolean;
  /** What alone still stands between it and the shelf. */
  needs: string[];
  processMin: number | null;
  sterile: boolean;
  headspaceIn: number | null;
  headspaceMm: number | null;
  reasons: string[];
  cautions: string[];
  ways: string[];
  household: boolean;
  /** `part` is missing in sheets kept before it was. */
  steps: { part?: StepPart; text: string; caution: string | null }[];
  source: string;
  /** Its figures with what each rests on; a batch entered without a sheet has none. */
  figures?: Labelled[];
  /** Instants at the stove; missing until then. */
  boilStartedAt?: string;
  boilStoppedAt?: string;
  /** When the canner boiled again. */
  boilingAt?: string;
}
