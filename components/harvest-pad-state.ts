/**
 * The shed screen's memory as a pure function: what is tapped and typed at the scale, and what comes of it.
 * Taps and keys are counted apart, as in the budget of the shed: 4 taps and 4 keys for one bucket.
 */
import { type MassUnit, netOfReading, type PadContainer, type Reading, typedGrams } from './harvest-weights.ts';

export const GRADES = ['perfect', 'blemished', 'soft', 'cull'] as const;
export type Grade = (typeof GRADES)[number];
export type PadRow = {
  readonly id: string;
  readonly label: string;
  readonly cropId: string;
  readonly cropLabel: string;
  /** What this row usually gives at one picking in this week; null when it is not known. */
  readonly usualKg: number | null;
  readonly usualContainer: string | null;
  /** Its fruit ripens about now; others stand behind "other rows". Left out: yes. */
  readonly inSeason?: boolean;
};
type Typed = { readonly text: string; readonly unit: MassUnit };
export type PadState = {
  readonly rowId: string | null;
  readonly unit: MassUnit;
  /** Where digits go: the scale, or one of the grades. */
  readonly focus: 'gross' | Grade;
  readonly draft: string;
  readonly containerId: string;
  readonly containerCount: number;
  readonly readings: readonly Reading[];
  readonly gradeTexts: Partial<Readonly<Record<Grade, Typed>>>;
  /** The grade that takes what is left, when it was chosen by hand. */
  readonly restGrade: Grade | null;
  readonly groundFall: boolean;
};

/** Every act below is one tap, but `digit` and `backspace`, which are counted as keys of the pad. */
export type PadTap =
  | { readonly do: 'row'; readonly row: PadRow }
  | { readonly do: 'digit'; readonly key: string }
  | { readonly do: 'backspace' }
  | { readonly do: 'unit' }
  | { readonly do: 'all-in-unit'; readonly unit: MassUnit }
  | { readonly do: 'next-bucket' }
  | { readonly do: 'remove-reading'; readonly index: number }
  | { readonly do: 'container'; readonly id: string }
  | { readonly do: 'container-count'; readonly count: number }
  | { readonly do: 'focus'; readonly on: 'gross' | Grade }
  | { readonly do: 'rest'; readonly grade: Grade }
  | { readonly do: 'clear-grades' }
  | { readonly do: 'ground-fall' }
  | { readonly do: 'recorded' }
  | { readonly do: 'restore'; readonly state: PadState };

/** An empty pad; `containerId` is the one used last, or the first of the list. */
export const emptyPad = (containerId: string, unit: MassUnit = 'kg'): PadState => ({
  rowId: null,
  unit,
  focus: 'gross',
  draft: '',
  containerId,
  containerCount: 1,
  readings: [],
  gradeTexts: {},
  restGrade: null,
  groundFall: false,
});

const MOST_DIGITS = 6;
const typed = (text: string, key: string): string => {
  if (key === '.') return text.includes('.') ? text : `${text || '0'}.`;
  return text.replace('.', '').length >= MOST_DIGITS ? text : `${text === '0' ? '' : text}${key}`;
};

/** The pad after one tap or key. */
export function afterTap(state: PadState, tap: PadTap): PadState {
  switch (tap.do) {
    case 'row':
      return {
        ...state,
        rowId: tap.row.id,
        focus: 'gross',
        containerId: state.readings.length === 0 ? (tap.row.usualContainer ?? state.containerId) : state.containerId,
      };
    case 'digit':
      return withText(state, (text) => typed(text, tap.key));
    case 'backspace':
      return withText(state, (text) => text.slice(0, -1));
    case 'unit':
      return withUnit(state, state.unit === 'kg' ? 'lb' : 'kg');
    case 'all-in-unit':
      return { ...state, unit: tap.unit, readings: state.readings.map((r) => ({ ...r, unit: tap.unit })) };
    case 'next-bucket':
      return { ...keptDraft(state), focus: 'gross' };
    case 'remove-reading':
      return { ...state, readings: state.readings.filter((_, i) => i !== tap.index) };
    case 'container':
      return { ...state, containerId: tap.id, focus: 'gross' };
    case 'container-count':
      return { ...state, containerCount: Math.min(99, Math.max(1, Math.round(tap.count))) };
    case 'focus':
      return { ...(tap.on === 'gross' ? state : keptDraft(state)), focus: tap.on };
    case 'rest': {
      const { [tap.grade]: _, ...others } = state.gradeTexts;
      return { ...keptDraft(state), restGrade: tap.grade, gradeTexts: others, focus: 'gross' };
    }
    case 'clear-grades':
      return { ...state, gradeTexts: {}, restGrade: null, focus: 'gross' };
    case 'ground-fall':
      return { ...state, groundFall: !state.groundFall };
    case 'recorded':
      return emptyPad(state.containerId, state.unit);
    case 'restore':
      return tap.state;
  }
}

function withText(state: PadState, change: (text: string) => string): PadState {
  if (state.focus === 'gross') return { ...state, draft: change(state.draft) };
  const grade = state.focus;
  const text = change(state.gradeTexts[grade]?.text ?? '');
  const { [grade]: _, ...others } = state.gradeTexts;
  return {
    ...state,
    gradeTexts: text === '' ? others : { ...others, [grade]: { text, unit: state.unit } },
    restGrade: state.restGrade === grade ? null : state.restGrade,
  };
}

/** The unit key belongs to the number being typed: its digits stay and are read in the other unit. */
function withUnit(state: PadState, unit: MassUnit): PadState {
  const grade = state.focus;
  if (grade === 'gross' || !state.gradeTexts[grade]) return { ...state, unit };
  return { ...state, unit, gradeTexts: { ...state.gradeTexts, [grade]: { text: state.gradeTexts[grade].text, unit } } };
}

/** What stands on the scale goes to the list of readings (nothing happens when nothing is typed). */
function keptDraft(state: PadState): PadState {
  if (draftGrams(state) === null) return state;
  return { ...state, readings: [...state.readings, draftReading(state)], draft: '', containerCount: 1 };
}

const draftReading = (state: PadState): Reading => ({
  text: state.draft,
  unit: state.unit,
  containerId: state.containerId,
  containerCount: state.containerCount,
});

const draftGrams = (state: PadState): number | null =>
  state.draft === '' ? null : typedGrams(state.draft, state.unit);

/** All readings, the one being typed included. */
export const allReadings = (state: PadState): Reading[] =>
  draftGrams(state) === null ? [...state.readings] : [...state.readings, draftReading(state)];

/** Net of the bucket on the scale; null when nothing is typed. */
export function lastBucketNet(state: PadState, containers: readonly PadContainer[]): number | null {
  return draftGrams(state) === null ? null : netOfReading(draftReading(state), containers);
}

export const netGrams = (state: PadState, containers: readonly PadContainer[]): number =>
  allReadings(state).reduce((sum, r) => sum + netOfReading(r, containers), 0);

/** The grade that takes the rest: the one chosen by hand, else the first (best) one nothing was typed for; null when all are typed. */
export const restGradeOf = (state: PadState): Grade | null =>
  state.restGrade ?? GRADES.find((g) => state.gradeTexts[g] === undefined) ?? null;

/** Grams by grade, adding up to the net whenever a grade takes the rest; `over` is what was typed beyond the net. */
export function gradeSplit(
  state: PadState,
  net: number,
): { grams: Record<Grade, number>; rest: Grade | null; over: number } {
  const grams: Record<Grade, number> = { perfect: 0, blemished: 0, soft: 0, cull: 0 };
  for (const g of GRADES) {
    const entry = state.gradeTexts[g];
    if (entry) grams[g] = typedGrams(entry.text, entry.unit) ?? 0;
  }
  const rest = restGradeOf(state);
  const sum = GRADES.reduce((s, g) => s + grams[g], 0);
  if (rest) grams[rest] += Math.max(0, net - sum);
  return { grams, rest, over: rest ? Math.max(0, sum - net) : sum - net };
}
