/** The figures learnt from own batches: what a new sheet may take, and the table of the page that shows them. */
import type { HomePectinLot } from '#lib/batch/home-pectin.ts';
import { type HeldLot, isReady } from '#lib/ledger/lot.ts';
import { type FigurePrior, type Learnt, learntFigure, type Observed } from '#lib/science/learn-factor.ts';
import { powderStrength } from '#lib/science/learn-powder.ts';
import { INVERSION_FACTOR, knownPan, LOSSES, UNKNOWN_PAN } from '#lib/science/learn-priors.ts';
import type { Db, Tx } from '#lib/store/database/open-database.ts';
import { loadLots } from '#lib/store/ledger-store.ts';
import type { Kitchen, Pan } from '#lib/store/place.ts';
import type { Context } from './context.ts';
import { type BatchTaught, learnRecords } from './learn-records.ts';
import { localClock } from './local-clock.ts';
import { homePectinInLine, POWDER_RANGE, powderStrengthsOf } from './strength-of-lots.ts';

export interface LearntFigures {
  /** Of this pan at a full boil; null until a batch in it was weighed twice. */
  evapGPerMin: number | null;
  /** Film and skimmings of a batch; null until one was weighed. */
  lossG: number | null;
  /** Home powder and stock in line for a dose, oldest first, each with its strength as known. */
  homePectin: HomePectinLot[];
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
    homePectin: await inLine(ctx, batches, db),
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
      ...powderRows(batches, await loadLots(ctx.db, ctx.place.id, { kinds: ['set-aside'], emptied: true })),
    ],
  };
}

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
async function inLine(ctx: Context, batches: readonly BatchTaught[], db: Db | Tx): Promise<HomePectinLot[]> {
  const lots = await loadLots(db, ctx.place.id, { kinds: ['set-aside'], emptied: true });
  return homePectinInLine(
    lots.filter((l) => l.onHand > 0 && isReady(l)),
    powderStrengthsOf(batches, lots),
  );
}

const powderRows = (batches: readonly BatchTaught[], lots: readonly HeldLot[]): LearntRow[] =>
  [...powderStrengthsOf(batches, lots)].map(([code, { learnt, batches: codes }]) => ({
    id: code ? `apple-powder-${code}` : 'apple-powder',
    what: code ? `Apple powder ${code}, g sugar a gram` : 'Apple powder nobody has tried, g sugar a gram',
    unit: 'g/g',
    digits: 1,
    learnt,
    before: powderStrength(POWDER_RANGE, []),
    method:
      'From the last cold plate of each batch with this lot (runs, thickens, set), the set reported of its jars before it, and from alcohol tests and cup trials of the lot, on a grid over the strength and over ±40 % in the fruit’s own pectin; lots of one household share half of their spread (estimate). Before any batch: 5.5, 3 to 9 (computed from one published analysis and estimates).',
    use: 'Set of the sheet, still a first guess',
    codes,
  }));

const seen = (batches: readonly BatchTaught[], key: 'evaporation' | 'loss' | 'inversion'): Observed[] =>
  batches.flatMap((b) => b[key] ?? []);
