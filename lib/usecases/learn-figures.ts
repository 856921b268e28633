/** The figures learnt from own batches: what a new sheet may take, and the table of the page that shows them. */
import { drawOldest } from '#lib/ledger/acts/draw-oldest.ts';
import { isRefusal } from '#lib/ledger/entry.ts';
import { POWDER_STRENGTH } from '#lib/reference/pectin-sources.ts';
import { type FigurePrior, type Learnt, learntFigure, type Observed } from '#lib/science/learn-factor.ts';
import { powderStrength, powderStrengths } from '#lib/science/learn-powder.ts';
import { INVERSION_FACTOR, knownPan, LOSSES, UNKNOWN_PAN } from '#lib/science/learn-priors.ts';
import type { Db, Tx } from '#lib/store/database/open-database.ts';
import { loadLots } from '#lib/store/ledger-store.ts';
import type { Kitchen, Pan } from '#lib/store/place.ts';
import type { Context } from './context.ts';
import { type BatchTaught, learnRecords } from './learn-records.ts';
import { localClock } from './local-clock.ts';

export interface LearntFigures {
  /** Of this pan at a full boil; null until a batch in it was weighed twice. */
  evapGPerMin: number | null;
  /** Film and skimmings of a batch; null until one was weighed. */
  lossG: number | null;
  /** Of the apple powder that would be drawn next; null until a plate was read on a batch with any. Not for citrus powder. */
  powderSugarPerG: number | null;
}

/** Middle values for the next sheet; null where no batch has taught anything and the sheet's own figure stands. */
export async function learntFigures(
  ctx: Context,
  kitchen: Kitchen,
  pan: Pan | null,
  db: Db | Tx = ctx.db,
): Promise<LearntFigures> {
  const { batches } = await learnRecords(ctx, db);
  const taught = (l: Learnt): number | null => (l.n > 0 ? l.middle : null);
  return {
    evapGPerMin: pan ? taught(ofPan(batches, kitchen, pan)) : null,
    lossG: taught(learntFigure(LOSSES, seen(batches, 'loss'))),
    powderSugarPerG: await nextPowder(ctx, batches, db),
  };
}

export interface LearntRow {
  id: string;
  what: string;
  unit: string;
  digits: number;
  learnt: Learnt;
  /** What stood before the first batch, with its band. */
  before: Learnt;
  method: string;
  /** Where the figure goes. */
  use: string;
  codes: string[];
}

export interface LearntView {
  /** The place's own day and time from which batches count; null when nothing was ever forgotten. */
  since: string | null;
  rows: LearntRow[];
}

export async function readLearnt(ctx: Context): Promise<LearntView> {
  const { since, batches } = await learnRecords(ctx);
  const pans = ctx.place.kitchens.flatMap((kitchen) =>
    kitchen.pans.filter((p) => p.maxFillPercent !== null).map((pan) => ({ kitchen, pan })),
  );
  const codesOf = (key: 'loss' | 'inversion') => batches.filter((b) => b[key] !== null).map((b) => b.code);
  return {
    since: since && Object.values(localClock(since, ctx.place.timeZone)).join(' '),
    rows: [
      ...pans.map(({ kitchen, pan }): LearntRow => {
        const inPan = batches.filter((b) => isIn(b, kitchen, pan));
        return {
          id: `pan-${kitchen.code}-${pan.code}`,
          what: `Boils off: ${pan.label}, ${kitchen.label.toLowerCase()}`,
          unit: 'g/min',
          digits: 0,
          learnt: ofPan(batches, kitchen, pan),
          before: learntFigure(panPrior(pan), []),
          method: `Slope through the pan weights logged at the stove, each taken to 10 g. Before any batch: ${
            pan.evapGPerMin === null ? '16 to 42 g/min over the burners tried on paper' : 'the figure of the pan, ±30 %'
          } (estimate). Batches differ by 10 % (estimate, pooled with what is seen).`,
          use: 'Clock of the sheet',
          codes: inPan.filter((b) => b.evaporation).map((b) => b.code),
        };
      }),
      {
        id: 'losses',
        what: 'Stuck and skimmed, a batch',
        unit: 'g',
        digits: 0,
        learnt: learntFigure(LOSSES, seen(batches, 'loss')),
        before: learntFigure(LOSSES, []),
        method:
          'Skimmings and film as weighed at the filling; 0 g counts as not weighed. Before any batch: film 60 to 150 g and skimmings 0.5 to 2 % (estimate). Batches differ by 35 % (estimate, pooled with what is seen).',
        use: 'Jar count of the sheet',
        codes: codesOf('loss'),
      },
      {
        id: 'inversion',
        what: 'Inversion, times the rate equation',
        unit: '×',
        digits: 2,
        learnt: learntFigure(INVERSION_FACTOR, seen(batches, 'inversion')),
        before: learntFigure(INVERSION_FACTOR, []),
        method:
          'From °Bx and temperature read at the finish, the day’s boiling water, a measured pH and the minutes since the first reading at the boil: how much sugar must have split, over what the rate equation says. 0.1 K and 0.3 °Bx leave ±5 % of the sugar. Before any batch: 0.3 to 1.0 (estimate).',
        use: 'Shown only: the pan weight decides the finish',
        codes: codesOf('inversion'),
      },
      ...powderRows(batches),
    ],
  };
}

const POWDER_RANGE = (POWDER_STRENGTH.find((p) => p.id === 'apple-powder') as (typeof POWDER_STRENGTH)[number])
  .sugarPerG;
const panPrior = (pan: Pan): FigurePrior => (pan.evapGPerMin === null ? UNKNOWN_PAN : knownPan(pan.evapGPerMin));
const isIn = (b: BatchTaught, kitchen: Kitchen, pan: Pan): boolean =>
  b.kitchenId === kitchen.id && b.panCode === pan.code;

const ofPan = (batches: readonly BatchTaught[], kitchen: Kitchen, pan: Pan): Learnt =>
  learntFigure(
    panPrior(pan),
    seen(
      batches.filter((b) => isIn(b, kitchen, pan)),
      'evaporation',
    ),
  );
const UNTRIED = '';
/** Each lot of apple powder a plate was read on, and one nobody has tried, which starts from the others. */
function powderLots(batches: readonly BatchTaught[]): Map<string, Learnt> {
  const tried = batches.filter((b) => b.plate && b.powderLot);
  const codes = [...new Set(tried.map((b) => b.powderLot as string))].sort();
  const plates = codes.map((code) => tried.filter((b) => b.powderLot === code).flatMap((b) => b.plate ?? []));
  const strengths = powderStrengths(POWDER_RANGE, [...plates, []]);
  return new Map([...codes, UNTRIED].map((code, i) => [code, strengths[i] as Learnt]));
}

/** Strength of the lot that is drawn first: the oldest that is dry. */
async function nextPowder(ctx: Context, batches: readonly BatchTaught[], db: Db | Tx): Promise<number | null> {
  const strengths = powderLots(batches);
  if (strengths.size === 1) return null;
  const held = await loadLots(db, ctx.place.id, { kinds: ['set-aside'], item: 'apple-powder' });
  const draws = drawOldest(
    held.filter((l) => l.details.state === 'dry'),
    1,
    'apple powder',
  );
  if (isRefusal(draws)) return null;
  const code = held.find((l) => l.id === draws[0]?.lotId)?.code ?? UNTRIED;
  return (strengths.get(code) ?? strengths.get(UNTRIED))?.middle ?? null;
}

const powderRows = (batches: readonly BatchTaught[]): LearntRow[] =>
  [...powderLots(batches)].map(([code, learnt]) => ({
    id: code ? `apple-powder-${code}` : 'apple-powder',
    what: code ? `Apple powder ${code}, g sugar a gram` : 'Apple powder nobody has tried, g sugar a gram',
    unit: 'g/g',
    digits: 1,
    learnt,
    before: powderStrength(POWDER_RANGE, []),
    method:
      'From the last cold plate of each batch with this lot (runs, thickens, set), on a grid over the strength and over ±40 % in the fruit’s own pectin; lots of one household share half of their spread (estimate). Before any batch: 5.5, 3 to 9 (computed from one published analysis and estimates).',
    use: 'Set of the sheet, still a first guess',
    codes: batches.filter((b) => b.plate && b.powderLot === code).map((b) => b.code),
  }));

const seen = (batches: readonly BatchTaught[], key: 'evaporation' | 'loss' | 'inversion'): Observed[] =>
  batches.flatMap((b) => b[key] ?? []);
