/** The demo place: opened at a day, moved forward by playing its season on, or begun again. */
import { demoId, seasonActId } from '#lib/demo/demo-ids.ts';
import { playOpening } from '#lib/demo/play-opening.ts';
import { LONGEST_WAIT, playSeason } from '#lib/demo/play-season.ts';
import type { SeasonState } from '#lib/demo/season-state.ts';
import { DEMO_CROPS, ROWS, TREES, WRENLATCH } from '#lib/demo/wrenlatch.ts';
import { emptyBook } from '#lib/ledger/book.ts';
import { actIds, loadActs } from '#lib/store/act-store.ts';
import { loadBatches } from '#lib/store/batch-store.ts';
import type { Db, Tx } from '#lib/store/database/open-database.ts';
import { loadLots, piecesOf, writeEntries } from '#lib/store/ledger-store.ts';
import type { Planting } from '#lib/store/place.ts';
import { createPlace, lockPlace, type NewPlace, removePlace, setPlaceDay } from '#lib/store/place-store.ts';
import { addDays, type PlainDate, plainDate } from '#lib/units/plain-date.ts';
import { DEMO_MORNING } from './context.ts';

export const DEMO_PLACE = 'wrenlatch';
export const DEMO_FIRST_DAY = plainDate(WRENLATCH.firstDay);
export const DEMO_LAST_DAY = plainDate(WRENLATCH.lastDay);
export const DEMO_OPENING_DAY = plainDate(WRENLATCH.openingDay);

const TRANSACTION = { timeout: 120_000, maxWait: 30_000 };

/** Opens the demo at a day with everything that happened before it; what was there of the demo is taken away first. */
export async function openDemo(db: Db, day: PlainDate, enteredAt: Date, time: string = DEMO_MORNING): Promise<void> {
  const state = freshState();
  playOpening(state, DEMO_FIRST_DAY);
  playSeason(state, DEMO_FIRST_DAY, day);
  await db.$transaction(async (tx) => {
    await lockPlace(tx, DEMO_PLACE);
    await removePlace(tx, DEMO_PLACE);
    await createPlace(tx, demoPlace(day, { time, setAt: enteredAt.toISOString() }));
    await writeEntries(tx, DEMO_PLACE, state.written, state.book, new Set(), enteredAt);
  }, TRANSACTION);
}

/**
 * Moves the demo's day. Forward, the season's records run on and a person's own entries stand beside them; back, the demo
 * is begun again at that day and the person's own entries in it go (the screen says so before).
 */
export async function moveDemoDay(
  db: Db,
  from: PlainDate,
  to: PlainDate,
  enteredAt: Date,
  time: string = DEMO_MORNING,
): Promise<void> {
  if (to < from) return openDemo(db, to, enteredAt, time);
  await db.$transaction(async (tx) => {
    await lockPlace(tx, DEMO_PLACE);
    const state = await loadState(tx, from);
    const known = new Set(state.book.lots.keys());
    playSeason(state, from, to);
    await writeEntries(tx, DEMO_PLACE, state.written, state.book, known, enteredAt);
    await setPlaceDay(tx, DEMO_PLACE, to, { time, setAt: enteredAt.toISOString() });
  }, TRANSACTION);
}

const freshState = (): SeasonState => ({
  placeId: DEMO_PLACE,
  book: emptyBook(),
  pieces: new Map(),
  personsPicks: new Set(),
  personsBatches: new Set(),
  written: [],
});

/** The ledger as it stands, with what the person did themselves. */
async function loadState(tx: Tx, from: PlainDate): Promise<SeasonState> {
  const state = freshState();
  for (const lot of [
    ...(await loadLots(tx, DEMO_PLACE)),
    ...(await loadLots(tx, DEMO_PLACE, { emptied: true, madeFrom: from })),
  ])
    state.book.lots.set(lot.id, lot);
  for (const id of await actIds(tx, DEMO_PLACE)) state.book.acts.add(id);
  const counted = [...state.book.lots.values()]
    .filter((l) => l.unit === 'jar' || l.unit === 'pack')
    .filter((l) => l.kind !== 'empties');
  state.pieces = await piecesOf(
    tx,
    DEMO_PLACE,
    counted.map((l) => l.id),
  );
  const own = seasonActId(DEMO_PLACE, '');
  const codeOf = new Map(DEMO_CROPS.map((c) => [demoId(DEMO_PLACE, 'crop', c.code), c.code]));
  for (const act of await loadActs(tx, DEMO_PLACE, { kinds: ['harvest'], from }))
    if (!act.id.startsWith(own)) state.personsPicks.add(`${act.day} ${codeOf.get(String(act.payload.cropId)) ?? ''}`);
  for (const b of await loadBatches(tx, DEMO_PLACE, { since: addDays(from, -LONGEST_WAIT) }))
    if (b.formulaVersion !== 'season') state.personsBatches.add(`${b.day} ${b.recipeId}`);
  return state;
}

function demoPlace(day: PlainDate, clock: { time: string; setAt: string }): NewPlace {
  const id = DEMO_PLACE;
  const { kitchens, burners, pans, canners, dryer, rooms, containers, jarKinds, people, settings, ruleCard, nursery } =
    WRENLATCH;
  const equip = (code: string) =>
    code === 'home'
      ? {
          burners: [...burners],
          pans: [...pans],
          canners: canners.map((c) => ({ ...c, method: 'boiling-water' as const, loads: { ...c.loads } })),
          dryers: [dryer],
        }
      : {
          burners: [
            { code: 'range-1', watts: 3500, outdoors: false },
            { code: 'range-2', watts: 3500, outdoors: false },
          ],
          pans: [pans[0]],
          canners: [{ ...canners[0], method: 'boiling-water' as const, loads: { ...canners[0].loads } }],
          dryers: [],
        };
  return {
    id,
    name: WRENLATCH.name,
    demo: true,
    day,
    timeZone: WRENLATCH.timeZone,
    settings: { ...settings, ruleCard: { ...ruleCard }, nursery: nursery.map((n) => ({ ...n })), clock },
    kitchens: kitchens.map((k) => ({ ...k, id: demoId(id, 'kitchen', k.code), ...equip(k.code) })),
    rooms: rooms.map((r) => ({ ...r, id: demoId(id, 'room', r.code) })),
    containers: containers.map((c) => ({ ...c, id: demoId(id, 'container', c.code) })),
    jarKinds: jarKinds.map((j) => ({ ...j, id: demoId(id, 'jar', j.code) })),
    people: people.map((p) => ({ ...p, id: demoId(id, 'person', p.code), can: [...p.can], minutes: [...p.minutes] })),
    crops: DEMO_CROPS.map(({ window, ...c }) => ({
      ...c,
      id: demoId(id, 'crop', c.code),
      windowFrom: window[0],
      windowTo: window[1],
      plantings: plantingsOf(c.code),
    })),
  };
}

const plantingsOf = (crop: string): Planting[] => [
  ...TREES.filter((t) => t[3] === crop).flatMap(([row, first, last, , cultivar, rootstock, planted, block]) =>
    Array.from({ length: last - first + 1 }, (_, i) => ({
      code: `${row}-${String(first + i).padStart(2, '0')}`,
      row,
      position: first + i,
      block,
      cultivar,
      rootstock,
      planted,
      count: 1,
      unit: 'tree',
    })),
  ),
  ...ROWS.filter((r) => r[1] === crop).map(([row, , count, unit]) => ({
    code: row,
    row,
    position: null,
    block: null,
    cultivar: null,
    rootstock: null,
    planted: null,
    count,
    unit,
  })),
];
