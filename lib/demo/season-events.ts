/** The year 2025 at Wrenlatch as a list of things that happened, each with its day and a key of its own. */
import { addDays, daysFrom, laterOf, type PlainDate, plainDate, weekday } from '#lib/units/plain-date.ts';
import { DEMO_LINES, type DemoLine, isGlass, madeInYear } from './lines.ts';
import { type DayPick, dailyPicks } from './picking.ts';
import { DEMO_CROPS, type DemoCrop, ROWS, TREES } from './wrenlatch.ts';

export type Use = 'eaten' | 'given' | 'sold' | 'spoiled';
export interface Supply {
  item: string;
  what: string;
  label: string;
  kind: 'supply' | 'empties' | 'lids' | 'fruit';
  unit: 'g' | 'ml' | 'lid' | 'jar';
  qty: number;
  foodId?: string;
  flags?: string[];
}

export type SeasonEvent = { key: string; day: PlainDate } & (
  | { what: 'receive'; supply: Supply }
  | { what: 'pick'; crop: DemoCrop; row: string; pick: DayPick }
  | { what: 'make'; line: DemoLine; jars: number; powderG: number; keepTrim: boolean }
  | { what: 'use'; line: DemoLine; use: Use }
  | { what: 'jars-back'; jarKind: string; count: number }
  | { what: 'dry-rind' }
  | { what: 'pectin-stock' }
  | { what: 'dried'; grams: number }
  | { what: 'powder-jam' | 'powder-jam-set' }
);

const on = (monthDay: string, year = 2025): PlainDate => plainDate(`${year}-${monthDay}`);
const ORDER = [
  'receive',
  'pick',
  'jars-back',
  'pectin-stock',
  'dry-rind',
  'dried',
  'make',
  'powder-jam',
  'powder-jam-set',
  'use',
];

/** All events from 1 January 2025 to 19 January 2026, in the order they happen. */
export function seasonEvents(): SeasonEvent[] {
  const events: SeasonEvent[] = [
    ...receipts(),
    ...pickings(),
    ...makings(),
    ...DEMO_LINES.flatMap(uses),
    ...jarsBack(),
    ...setAsides(),
  ];
  return events.sort(
    (a, b) => a.day.localeCompare(b.day) || ORDER.indexOf(a.what) - ORDER.indexOf(b.what) || a.key.localeCompare(b.key),
  );
}

/** On hand on 15 January 2026 (demo values): what the receipts are reckoned back from. */
export const AT_END = {
  sugarG: 18_000,
  lids: 148,
  empties: { Q4: 44, HP: 214, PT: 96, QT: 38 } as Record<string, number>,
};
export const OPENING_SUGAR_G = 20_000;
export const OPENING_LIDS = 240;

const sugarUsedG = () => DEMO_LINES.reduce((g, l) => g + madeInYear(l) * l.sugarG, 0);
const glassMade = (jar?: string) =>
  DEMO_LINES.filter((l) => isGlass(l) && (!jar || l.jar === jar)).reduce((n, l) => n + madeInYear(l), 0);
const backFromOthers = (jar: string) =>
  Math.round(DEMO_LINES.filter((l) => l.jar === jar).reduce((n, l) => n + 0.4 * l.given + 0.15 * l.sold, 0));
/** Empty jars there on 1 January 2025, so that the year ends as it did. */
export const openingEmpties = (jar: string): number =>
  (AT_END.empties[jar] ?? 0) +
  glassMade(jar) -
  backFromOthers(jar) -
  DEMO_LINES.filter((l) => l.jar === jar).reduce((n, l) => n + l.eaten, 0);

function receipts(): SeasonEvent[] {
  const sugar = (day: string, qty: number): SeasonEvent => ({
    key: `receive-sugar-${day}`,
    day: on(day),
    what: 'receive',
    supply: { item: 'sugar', what: 'SUG', label: 'Sugar', kind: 'supply', unit: 'g', qty },
  });
  const lids = (day: string, qty: number): SeasonEvent => ({
    key: `receive-lids-${day}`,
    day: on(day),
    what: 'receive',
    supply: { item: 'lid-regular', what: 'LID', label: 'Lids, regular', kind: 'lids', unit: 'lid', qty },
  });
  const fruit = (item: string, what: string, label: string, qty: number): SeasonEvent => ({
    key: `receive-${item}`,
    day: on('01-24'),
    what: 'receive',
    supply: { item, what, label, kind: 'fruit', unit: 'g', qty, foodId: item },
  });
  const sugarLast = AT_END.sugarG + sugarUsedG() - OPENING_SUGAR_G - 75_000;
  const lidsLast = AT_END.lids + glassMade() - OPENING_LIDS - 204;
  return [
    fruit('orange-seville', 'ORA', 'Bitter marmalade oranges', 10_000),
    fruit('lemon-whole', 'LEM', 'Lemons', 3_000),
    sugar('06-29', 75_000),
    sugar('09-27', sugarLast),
    lids('06-20', 204),
    lids('09-15', lidsLast),
  ];
}

/** Rows a crop stands in, in walking order. */
export const rowsOfCrop = (code: string): string[] => [
  ...new Set([
    ...TREES.filter((t) => t[3] === code).map((t) => t[0]),
    ...ROWS.filter((r) => r[1] === code).map((r) => r[0]),
  ]),
];

const pickings = (): SeasonEvent[] =>
  DEMO_CROPS.flatMap((crop) =>
    dailyPicks(crop, 2025)
      .filter((p) => p.grams > 0)
      .map((pick, i): SeasonEvent => {
        const rows = rowsOfCrop(crop.code);
        return {
          key: `pick-${crop.code}-${pick.day}`,
          day: pick.day,
          what: 'pick',
          crop,
          row: rows[i % rows.length] as string,
          pick,
        };
      }),
  );

/** Powder of the autumn before, used up by two batches. */
const POWDER: Record<string, number> = { 'TAY 07-30': 120, 'PGC 09-20': 180 };
const KEEP_TRIM = new Set(['APS 09-27']);

const makings = (): SeasonEvent[] =>
  DEMO_LINES.flatMap((line) =>
    line.makes.map(([day, jars]): SeasonEvent => {
      const id = `${line.code} ${day}`;
      return {
        key: `make-${line.code}-${day}`,
        day: on(day),
        what: 'make',
        line,
        jars,
        powderG: POWDER[id] ?? 0,
        keepTrim: KEEP_TRIM.has(id),
      };
    }),
  );

/** Jars go evenly over the days they can: sold on stall Saturdays (14 March to 20 December), given mostly in December. */
function uses(line: DemoLine): SeasonEvent[] {
  const first = line.makes[0]?.[0] as string;
  const from = line.openFrom ? on(line.openFrom) : addDays(on(first), 10);
  const last = plainDate('2026-01-12');
  const early = { eaten: Math.min(line.carry, line.eaten), given: 0, sold: 0 };
  const days = (a: PlainDate, b: PlainDate) => daysFrom(a, b);
  const stall = days(laterOf(from, on('03-15')), on('12-20')).filter((d) => weekday(d) === 5);
  const gifts = days(laterOf(from, on('12-01')), on('12-24'));
  const spread = (use: Use, n: number, among: PlainDate[]): SeasonEvent[] =>
    Array.from({ length: n }, (_, i): SeasonEvent => {
      const day = among[Math.min(among.length - 1, Math.floor(((i + 0.5) * among.length) / n))] as PlainDate;
      return { key: `use-${line.code}-${use}-${day}-${i}`, day, what: 'use', line, use };
    });
  return [
    ...spread('eaten', early.eaten, days(on('01-06'), addDays(on(first), -1))),
    ...spread('eaten', line.eaten - early.eaten, days(from, last)),
    ...spread('sold', line.sold, stall),
    ...spread('given', line.given, gifts),
    ...spread('spoiled', line.spoiled, days(on('11-10'), on('12-05'))),
  ];
}

const jarsBack = (): SeasonEvent[] =>
  ['HP', 'Q4', 'PT', 'QT']
    .map(
      (jarKind): SeasonEvent => ({
        key: `back-${jarKind}`,
        day: on('12-28'),
        what: 'jars-back',
        jarKind,
        count: backFromOthers(jarKind),
      }),
    )
    .filter((e) => e.what !== 'jars-back' || e.count > 0);

const setAsides = (): SeasonEvent[] => [
  { key: 'dry-rind', day: on('02-08'), what: 'dry-rind' },
  { key: 'pectin-stock', day: on('08-28'), what: 'pectin-stock' },
  { key: 'powder-dry', day: on('09-30'), what: 'dried', grams: 1172 },
  { key: 'powder-jam', day: on('01-17', 2026), what: 'powder-jam' },
  { key: 'powder-jam-set', day: on('01-19', 2026), what: 'powder-jam-set' },
];
