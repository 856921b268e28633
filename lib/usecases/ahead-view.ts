/** A sheet thought ahead as plain values: what goes in, when to stop, where it goes, what it costs, and what differs from as written. */
import type { BatchSheet } from '#lib/batch/batch-sheet.ts';
import type { Figure } from '#lib/batch/figure.ts';
import { labelledDose } from '#lib/batch/household.ts';
import { fruitOf } from '#lib/reference/fruits.ts';
import type { Place } from '#lib/store/place.ts';
import { counted, mass } from '#lib/units/format.ts';
import { type CookPictures, cookPictures } from './cook-pictures.ts';
import { type LabelledFigure, type ShownFigure, shown, shownWith } from './shown-figure.ts';

export interface AheadView extends CookPictures {
  /** Fruit as weighed, before it is prepared. */
  fruit: { name: string; grams: number }[];
  pans: number;
  pansBecause: string | null;
  doses: LabelledFigure[];
  finish: LabelledFigure[];
  jars: LabelledFigure[];
  goes: string;
  reasons: string[];
  /** When a meter is wanted. */
  ph: string;
  set: { outlook: string; ratio: ShownFigure | null; reasons: string[] } | null;
  cost: { total: string; perJar: string | null; unpriced: string[] } | null;
  /** Reserved names the composition allows. */
  names: string[];
  changes: { what: string; was: string; now: string }[];
}

/** `asWritten`: the same fruit by the recipe as written; null when nothing was exchanged. */
export function aheadView(
  place: Place,
  { now, asWritten }: { now: BatchSheet; asWritten: BatchSheet | null },
): AheadView {
  const pan = now.pans[0];
  const some = (label: string, f: Figure | null | undefined) => (f ? [{ label, figure: shown(f) }] : []);
  return {
    fruit: now.prepared.map((p) => ({ name: fruitOf(p.lot.foodId).name, grams: p.lot.grams })),
    pans: Math.max(1, now.pans.length),
    pansBecause: now.split?.reason ?? null,
    doses: pan?.doses.map((d) => shownWith(labelledDose(d))) ?? [],
    finish: [
      ...some('Pan weight', pan?.balance.finalG),
      ...some('Refractometer', pan?.balance.brix),
      ...some('Temperature', now.temperature?.stopC),
      ...some('Clock, at full boil', pan?.boilMin),
    ],
    jars: [
      ...some(now.jar.madeForCanning ? 'Jars' : 'Packs', now.jars),
      ...some('Process at a full boil', now.process?.minutes),
      ...some('Boil the empty jars', now.process?.steriliseMin),
      ...some('Canner time', now.clock?.minutes),
    ],
    goes: goesOf(now),
    reasons: [...now.storage.reasons],
    ph: phOf(now),
    set: now.set && {
      outlook: now.set.outlook,
      ratio: now.set.ratio && shown(now.set.ratio),
      reasons: [...now.set.reasons],
    },
    cost: costOf(place, now),
    names: [...(now.names?.allowed ?? [])],
    changes: asWritten ? differences(compared(place, asWritten), compared(place, now)) : [],
    ...cookPictures(now),
  };
}

/** The few figures people compare, in words. */
function compared(place: Place, s: BatchSheet): Map<string, string> {
  const pan = s.pans[0];
  const cost = costOf(place, s);
  const band = s.set?.ratio?.band;
  return new Map([
    ...(pan?.doses.map((d): [string, string] => [d.name, mass(d.grams.value)]) ?? []),
    ...(pan ? [['pan weight to stop at', mass(pan.balance.finalG.value)] as const] : []),
    ...(pan?.boilMin ? [['at a full boil', `${Math.round(pan.boilMin.value)} min`] as const] : []),
    ['jars', counted(s.jars.value, 'jar')],
    ['where it goes', goesOf(s)],
    [
      'set by the tables',
      s.set
        ? `${s.set.outlook}${band ? `, ${band.low.toFixed(1)} to ${band.high.toFixed(1)} of the pectin needed` : ''}`
        : 'not reckoned: a bought pectin’s own leaflet decides',
    ],
    ['who may have it', s.householdOnly ? 'the household and gifts' : 'sold as tested, by the local rules'],
    ...(cost ? [['bought goods', cost.total] as const] : []),
  ]);
}

const differences = (was: ReadonlyMap<string, string>, now: ReadonlyMap<string, string>): AheadView['changes'] =>
  [...new Set([...was.keys(), ...now.keys()])]
    .map((what) => ({ what, was: was.get(what) ?? 'none', now: now.get(what) ?? 'none' }))
    .filter((c) => c.was !== c.now);

const NEED: Readonly<Record<string, string>> = {
  'ph-reading': 'a calibrated pH reading',
  'acid-dose': 'the tested acid dose',
};

function goesOf({ storage }: BatchSheet): string {
  const minutes = storage.process ? `, ${storage.process.minutes} min in the canner` : '';
  if (storage.shelf) return `shelf${minutes}`;
  if (storage.needs.length > 0)
    return `shelf only with ${storage.needs.map((n) => NEED[n] ?? n).join(' and ')}${minutes}`;
  return storage.ways.join(' or ') || 'no published way to keep it';
}

function phOf({ storage }: BatchSheet): string {
  if (storage.needs.includes('ph-reading'))
    return 'A meter is needed: read a cooled, blended jar, with both buffers read beside it. Above 4.6 the jars are frozen.';
  if (storage.process === null) return 'No reading opens the shelf for this: it is kept cold or dry.';
  return 'No reading is asked for: it stands on published acidity. A pH reckoned from tables is never a ground.';
}

function costOf(place: Place, s: BatchSheet): AheadView['cost'] {
  if (!s.cost) return null;
  const money = (hundredths: number): string =>
    `${place.settings.prices?.currency ?? ''} ${(hundredths / 100).toFixed(2)}`.trim();
  return {
    total: money(s.cost.total.value),
    perJar: s.jars.value > 0 ? money(s.cost.total.value / s.jars.value) : null,
    unpriced: [...s.cost.unpriced],
  };
}
