/** The set-asides of the last year as one picture: what came off, what was kept, what it became, and what it stood in for. */
import { allPectinReplaced, type PectinUsed, pectinReplaced } from '#lib/batch/pectin-replaced.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import type { MassFlow } from '#lib/ledger/mass-flow.ts';
import { type SetAsideSort, setAsideFlow } from '#lib/ledger/set-aside-flow.ts';
import { POWDER_STRENGTH } from '#lib/reference/pectin-sources.ts';
import { SET_ASIDE_MATERIALS, type SetAsideMaterial } from '#lib/reference/set-aside-materials.ts';
import { SOURCES } from '#lib/reference/sources.ts';
import { counted, mass } from '#lib/units/format.ts';
import { longDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { type LearntView, readLearnt } from './learn-figures.ts';
import { seasonSnapshot } from './season-snapshot.ts';
import { type ShownFigure, shown } from './shown-figure.ts';
import { clotOf } from './strength-of-lots.ts';

export interface SetAsideSeason {
  answer: string;
  sub: string;
  flow: MassFlow;
  cameOffG: number;
  keptG: number;
  fromCompostG: number;
  /** Grams of bought pectin of grade 150 not needed; null where no powder or tested stock was used. */
  pectin: { typ: number; low: number; high: number } | null;
  used: { code: string; label: string; usedG: number; figure: ShownFigure | null; strength: string }[];
}

export async function readSetAsideSeason(ctx: Context): Promise<SetAsideSeason> {
  const [season, learnt] = await Promise.all([seasonSnapshot(ctx), readLearnt(ctx)]);
  const found = setAsideFlow(season.movements, season.lots, sortOf);
  const used = season.lots.flatMap((lot) => {
    const grams = found.intoBatchesG.get(lot.id);
    const one = grams ? usedAs(lot, grams, learnt) : null;
    return one ? [{ lot, ...one }] : [];
  });
  const pectin = allPectinReplaced(used.map((u) => u.used));
  return {
    answer: answerOf(found.fromCompostG, pectin),
    sub: `From ${longDate(season.recordedFrom)} to ${longDate(season.today)}, added up from the ledger.`,
    flow: found.flow,
    cameOffG: found.cameOffG,
    keptG: found.keptG,
    fromCompostG: found.fromCompostG,
    pectin,
    used: used.map(({ lot, used: u, strength }) => {
      const figure = pectinReplaced(u);
      return { code: lot.code, label: lot.label, usedG: u.grams, strength, figure: figure && shown(figure) };
    }),
  };
}

function answerOf(keptG: number, pectin: SetAsideSeason['pectin']): string {
  if (keptG === 0 && !pectin) return 'Nothing was set aside in the last year';
  const kept = `${whole(keptG)} kept from the compost`;
  return pectin ? `${kept}, ${whole(pectin.typ)} of bought pectin not needed` : kept;
}
/** A mass that does not break at the end of a line. */
const whole = (g: number): string => mass(g).replace(' ', '\u00a0');

const NOW: Readonly<Record<string, string>> = {
  'apple-powder': 'powder',
  'citrus-rind': 'dried rind',
  'dried-apple': 'dried fruit',
};

const SWEET: Readonly<Record<string, string>> = { candied: 'candied', 'in sugar': 'in sugar', working: 'vinegar' };

/** What a lot was and is, by its material and state; old lots carry their stock's name alone. */
export function sortOf(lot: HeldLot): SetAsideSort {
  if (lot.item === 'pectin-stock') return { material: null, now: { id: 'stock', label: 'pectin stock' }, trim: false };
  if (lot.item === 'blend') return { material: null, now: { id: 'blend', label: 'blends' }, trim: false };
  const material = materialOf(lot);
  return {
    material: material ? { id: material.id, label: material.name.toLowerCase() } : { id: 'other', label: 'other trim' },
    now: nowOf(lot, material),
    trim: !material?.cut,
  };
}

const materialOf = (lot: HeldLot): SetAsideMaterial | undefined =>
  SET_ASIDE_MATERIALS.find((m) => m.id === lot.details.material) ??
  SET_ASIDE_MATERIALS.find((m) => m.driedItem === lot.item);

function nowOf(lot: HeldLot, material: SetAsideMaterial | undefined): SetAsideSort['now'] {
  const { state } = lot.details;
  if (state === 'frozen') return { id: 'frozen', label: 'frozen' };
  if (state === 'fresh') return { id: 'fresh', label: 'fresh' };
  if (typeof state === 'string' && SWEET[state]) return { id: state, label: SWEET[state] };
  if (state === 'drying' || state === 'conditioning') return { id: 'drying', label: 'drying' };
  const label = NOW[lot.item ?? ''] ?? material?.driedName.toLowerCase() ?? 'dried';
  return { id: label, label };
}

/** Powder and stock replace bought pectin; rind and fruit do not. */
function usedAs(lot: HeldLot, grams: number, learnt: LearntView): { used: PectinUsed; strength: string } | null {
  if (lot.item === 'pectin-stock') {
    const clot = clotOf(lot);
    return {
      used: { kind: 'stock', code: lot.code, grams, clot },
      strength: clot ? `${clot} by its alcohol test` : 'untested: not counted',
    };
  }
  const row = POWDER_STRENGTH.find((r) => r.id === lot.item);
  if (!row) return null;
  const own = learnt.rows.find((r) => r.id === `${lot.item}-${lot.code}`)?.learnt;
  const sugarPerG = own ? { low: own.low, typ: own.middle, high: own.high } : row.sugarPerG;
  const band = `${sugarPerG.typ.toFixed(1)} g sugar a gram (${sugarPerG.low.toFixed(1)} to ${sugarPerG.high.toFixed(1)})`;
  return {
    used: { kind: 'powder', code: lot.code, grams, sugarPerG },
    strength: own
      ? `${band}, ${own.n > 0 ? `learnt from ${counted(own.n, 'batch', 'batches')}` : 'by its tests'}`
      : `${band}: ${row.status}, ${('also' in row ? row.also : [row.source]).map((s) => SOURCES[s].title).join('; ')}`,
  };
}
