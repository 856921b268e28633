/** A batch of the season's script: inputs drawn oldest first, jars filled, and on the next morning sealed and shelved. */

import { drawOldest } from '#lib/ledger/acts/draw-oldest.ts';
import { type Filling, fillJars } from '#lib/ledger/acts/fill-jars.ts';
import { startBatch } from '#lib/ledger/acts/start-batch.ts';
import type { BatchRecord } from '#lib/ledger/batch-record.ts';
import { type Entry, isRefusal, type Refusal } from '#lib/ledger/entry.ts';
import { type Grade, type HeldLot, newLot, worstGrade } from '#lib/ledger/lot.ts';
import { batchCode, setAsideCode } from '#lib/ledger/lot-code.ts';
import { addressFor, type ShelfJar, shelfTaken } from '#lib/ledger/shelf-room.ts';
import { addDays, type PlainDate } from '#lib/units/plain-date.ts';
import { demoId } from './demo-ids.ts';
import {
  DEMO_LINES,
  DEMO_PH,
  type DemoLine,
  foodOfLine,
  isForHousehold,
  isGlass,
  isShelved,
  lotKindOf,
} from './lines.ts';
import type { SeasonEvent } from './season-events.ts';
import { held, type SeasonState, seasonAct, write } from './season-state.ts';
import { WRENLATCH } from './wrenlatch.ts';

type Make = Extract<SeasonEvent, { what: 'make' }>;
type Draws = { lotId: string; count: number }[];

/** True when made (or stood down); false when its fruit or supplies are not there and it may still wait. */
export function playMake(s: SeasonState, e: Make, day: PlainDate, shrink: boolean): boolean {
  const { line } = e;
  if ([day, e.day].some((d) => s.personsBatches.has(`${d} ${line.recipeId}`))) return true;
  const fruit = fruitLots(s, line, day);
  let jars = e.jars;
  if (shrink) jars = Math.min(jars, Math.floor(fruit.reduce((g, l) => g + l.onHand, 0) / line.fruitG));
  if (jars <= 0) return shrink;
  const found = gather(s, line, jars, fruit, e.powderG);
  if (isRefusal(found)) return shrink;
  const batchId = demoId(s.placeId, 'batch', e.key);
  const batch = batchRecord(s, e, batchId, batchOf(s, line, day), day, jars);
  const start = startBatch({
    act: seasonAct(s, `${e.key}-start`, 'start-batch', day, '18:30', { recipe: line.recipeId }),
    batch,
    draws: found.food.map((d) => ({ lotId: d.lotId, qty: d.count, grams: d.count })),
    waterG: line.waterG * jars,
    household: isForHousehold(line),
  });
  if (!write(s, start)) return false;
  const inG = found.food.reduce((g, d) => g + d.count, 0) + line.waterG * jars;
  const filling = fillJars(fillingOf(s, e, batch, day, jars, inG, found));
  if (isRefusal(filling)) throw new RangeError(`demo season: ${filling.refused}`);
  write(s, {
    ...filling,
    readings: phReading(line, batchId, day),
    batchChanges: [
      { batchId, state: isShelved(line) ? 'cooling' : 'jarred', filledAt: filling.act.at, outAt: filling.act.at },
    ],
  });
  for (const lot of filling.lots)
    if (lot.unit !== 'g')
      s.pieces.set(
        lot.id,
        Array.from({ length: jars }, (_, i) => i + 1),
      );
  return true;
}

const phReading = (line: DemoLine, batchId: string, day: PlainDate): NonNullable<Entry['readings']> => {
  const pH = DEMO_PH[line.code];
  if (pH === undefined) return [];
  return [
    {
      id: `${batchId}:ph`,
      batchId,
      kitchenId: null,
      kind: 'ph',
      day,
      at: `${day}T21:00:00.000Z`,
      value: Math.round(pH * 100),
      unit: 'pH',
      instrument: 'pH meter, 2-point',
      note: null,
    },
  ];
};

const fruitLots = (s: SeasonState, line: DemoLine, day: PlainDate): HeldLot[] =>
  line.crops.flatMap((c) =>
    softFirst(
      held(
        s,
        (l) =>
          l.kind === 'fruit' &&
          l.grade !== 'cull' &&
          !l.groundFall &&
          (l.lockedUntil ?? '') <= day &&
          (l.cropId === demoId(s.placeId, 'crop', c) || l.item === c),
      ),
    ),
  );

/** Soft fruit is cooked first, then by age. */
const softFirst = (lots: HeldLot[]): HeldLot[] => [
  ...lots.filter((l) => l.grade === 'soft'),
  ...lots.filter((l) => l.grade !== 'soft'),
];

interface Gathered {
  food: Draws;
  /** The worst of the fruit. */
  grade: Grade;
  lids: Draws;
  empties: Draws;
}

/** What the batch draws from the stores, or the refusal that names what is short. Crops are drawn in the line's own order. */
function gather(s: SeasonState, line: DemoLine, jars: number, fruit: HeldLot[], powderG: number): Gathered | Refusal {
  const inOrder: Draws = [];
  let left = jars * line.fruitG;
  for (const lot of fruit) {
    const count = Math.min(left, lot.onHand);
    if (count > 0) inOrder.push({ lotId: lot.id, count });
    left -= count;
  }
  if (left > 0) return { refused: `${left} g of fruit short for ${line.label}` };
  const sugar =
    line.sugarG > 0
      ? drawOldest(
          held(s, (l) => l.item === 'sugar'),
          jars * line.sugarG,
          'sugar',
        )
      : [];
  if (isRefusal(sugar)) return sugar;
  const powder =
    powderG > 0
      ? drawOldest(
          held(s, (l) => l.item === 'apple-powder' && l.details.state === 'dry'),
          powderG,
          'apple powder',
        )
      : [];
  const almonds = line.almondsG
    ? drawOldest(
        held(s, (l) => l.item === 'almonds'),
        jars * line.almondsG,
        'almonds',
      )
    : [];
  if (isRefusal(almonds)) return almonds;
  const glass = isGlass(line);
  const lids = glass
    ? drawOldest(
        held(s, (l) => l.item === 'lid-regular'),
        jars,
        'lids',
      )
    : [];
  if (isRefusal(lids)) return lids;
  const empties = glass
    ? drawOldest(
        held(s, (l) => l.kind === 'empties' && l.item === line.jar),
        jars,
        'empty jars',
      )
    : [];
  if (isRefusal(empties)) return empties;
  const grade = worstGrade(fruit.filter((l) => inOrder.some((d) => d.lotId === l.id)).map((l) => l.grade ?? 'perfect'));
  return { grade, food: [...inOrder, ...sugar, ...almonds, ...(isRefusal(powder) ? [] : powder)], lids, empties };
}

const batchOf = (s: SeasonState, line: DemoLine, day: PlainDate): string => {
  const codes = new Set([...s.book.lots.values()].map((l) => l.code));
  let n = 0;
  while (codes.has(batchCode(day, line.code, n)) || codes.has(`${batchCode(day, line.code, n)}/pan`)) n++;
  return batchCode(day, line.code, n);
};

const batchRecord = (s: SeasonState, e: Make, id: string, code: string, day: PlainDate, jars: number): BatchRecord => ({
  id,
  code,
  recipeId: e.line.recipeId,
  label: e.line.label,
  kitchenId: demoId(s.placeId, 'kitchen', 'home'),
  panCode: 'pan-10',
  state: 'cooking',
  day,
  startedAt: `${day}T18:30:00.000Z`,
  filledAt: null,
  outAt: null,
  formulaVersion: 'season',
  inputs: { jars, fruitG: jars * e.line.fruitG, sugarG: jars * e.line.sugarG, waterG: jars * e.line.waterG },
  result: {},
  log: [{ at: `${day}T18:30:00.000Z`, what: 'from the season’s records' }],
});

function fillingOf(
  s: SeasonState,
  e: Make,
  batch: BatchRecord,
  day: PlainDate,
  jars: number,
  panG: number,
  found: Gathered,
): Filling {
  const { line } = e;
  const trimG = Math.round((jars * line.fruitG * line.trimPercent) / 100);
  const glass = isGlass(line);
  const act = seasonAct(s, `${e.key}-fill`, 'fill', day, '20:30', { jars });
  const kept = e.keepTrim
    ? newLot({
        id: demoId(s.placeId, 'lot', `${e.key}-trim`),
        code: setAsideCode(day, 'APC', 1),
        kind: 'set-aside',
        label: 'Dried apple peel and core powder',
        unit: 'g',
        item: 'apple-powder',
        foodId: 'apple-dessert',
        grade: 'blemished',
        roomId: demoId(s.placeId, 'room', 'dry-cupboard'),
        parentActId: act.id,
        madeOn: day,
        since: act.at,
        bestBefore: addDays(day, 365),
        details: { strength: 'untested', seedsOut: true, state: 'fresh' },
      })
    : null;
  return {
    act,
    batch: { id: batch.id, code: batch.code, label: line.label, recipeId: line.recipeId },
    panG,
    jars: [{ kind: line.jar, unit: glass ? 'jar' : 'pack', count: jars, netGEach: line.netG }],
    lotKind: lotKindOf(line),
    foodId: foodOfLine(line),
    grade: lotKindOf(line) === 'frozen' && line.sugarG === 0 ? found.grade : null,
    partialG: 0,
    partialUseBy: null,
    losses: kept ? {} : { trim: trimG },
    ...(kept ? { keptTrim: { lot: kept, grams: trimG } } : {}),
    lids: found.lids,
    empties: found.empties,
    bestBefore: addDays(day, 365),
    roomId: demoId(s.placeId, 'room', isShelved(line) ? 'stillroom' : (line.shelves[0] as string)),
    fridgeRoomId: null,
    household: isForHousehold(line),
    process: isShelved(line) ? 'as tested' : null,
    details: {},
  };
}

const STILLROOM = WRENLATCH.rooms[0];
const SHELF = { widthMm: STILLROOM.widthMm, depthMm: STILLROOM.depthMm, clearMm: STILLROOM.clearMm };
const KINDS = new Map<string, ShelfJar>(WRENLATCH.jarKinds.filter((k) => k.canning).map((k) => [k.code, k]));
const SHELVES = [1, 2, 3, 4].flatMap((b) => [1, 2, 3, 4, 5].map((n) => `B${b}-S${n}`));

/** The morning after: the script's jars are checked, found sealed, and go to the shelf of their line. */
export function shelveMade(s: SeasonState, day: PlainDate): void {
  const own = `${s.placeId}:season:`;
  for (const lot of held(
    s,
    (l) => l.kind === 'jars' && l.seal === 'waiting' && l.madeOn < day && l.parentActId.startsWith(own),
  )) {
    const jar = KINDS.get(lot.item ?? '');
    if (!jar) continue;
    const taken = shelfTaken(
      held(s, (l) => l.kind === 'jars'),
      SHELF,
      KINDS,
    );
    const address = addressFor(lot.onHand, jar, lineOf(lot)?.shelves ?? [], SHELVES, taken, SHELF);
    write(s, {
      act: seasonAct(s, `${lot.code}-shelve`, 'shelve', day, '07:30', { address }),
      lots: [],
      movements: [],
      changes: [{ lotId: lot.id, seal: 'sealed', address }],
      batchChanges: lot.batchId ? [{ batchId: lot.batchId, state: 'jarred' }] : [],
    });
  }
}

const lineOf = (lot: HeldLot): DemoLine | undefined => LINES.get(lot.label);
const LINES = new Map(DEMO_LINES.map((l) => [l.label, l]));
