/** Pickings, what leaves the shelf, and the year's set-asides. */

import { drawOldest } from '#lib/ledger/acts/draw-oldest.ts';
import { pickFruit } from '#lib/ledger/acts/pick-fruit.ts';
import { takePieces } from '#lib/ledger/acts/take-pieces.ts';
import { childId, isRefusal } from '#lib/ledger/entry.ts';
import { type HeldLot, newLot, worstGrade } from '#lib/ledger/lot.ts';
import { foodCode, harvestCode, setAsideCode } from '#lib/ledger/lot-code.ts';
import { type Movement, moveGrams, movePieces } from '#lib/ledger/movement.ts';
import { hoursLeft } from '#lib/science/perish-clock.ts';
import { addDays, type PlainDate } from '#lib/units/plain-date.ts';
import { demoId } from './demo-ids.ts';
import { type DemoLine, isGlass } from './lines.ts';
import { type DayPick, splitPick } from './picking.ts';
import type { SeasonEvent, Use } from './season-events.ts';
import { held, type SeasonState, seasonAct, write } from './season-state.ts';
import type { DemoCrop } from './wrenlatch.ts';

/** A picking: what is sold and eaten fresh goes the same day, culls to the compost, the rest stands in the fruit store. */
export function playPick(s: SeasonState, key: string, crop: DemoCrop, row: string, pick: DayPick): void {
  if (s.personsPicks.has(`${pick.day} ${crop.code}`)) return;
  const split = splitPick(crop, pick.grams);
  const act = seasonAct(s, key, 'harvest', pick.day, '17:30', { crop: crop.code, row, grams: pick.grams });
  const entry = pickFruit({
    act,
    crop: { id: demoId(s.placeId, 'crop', crop.code), label: crop.label, foodId: crop.foodId },
    row,
    number: freeNumber(s, pick.day, row, crop.foodId),
    gradeG: { perfect: split.perfect, blemished: split.blemished, soft: split.soft },
    groundFall: false,
    roomId: demoId(s.placeId, 'room', 'fruit-store'),
    flags: [],
    lockedUntil: null,
    details: {},
  });
  const straight = (['sold', 'eaten'] as const)
    .filter((to) => split[to] > 0)
    .map((to) => moveGrams({ sink: 'harvest' }, { sink: to }, split[to]));
  if (split.cull > 0) straight.push(moveGrams({ sink: 'harvest' }, { sink: 'compost' }, split.cull));
  write(s, { ...entry, movements: [...entry.movements, ...straight] });
}

/** Two crops of one row may share their letters: the next number of that row, letters and day. */
function freeNumber(s: SeasonState, day: PlainDate, row: string, foodId: string): number {
  const taken = new Set([...s.book.lots.values()].filter((l) => l.madeOn === day).map((l) => l.details.harvest));
  let n = 1;
  while (taken.has(harvestCode(day, row, foodCode(foodId), n))) n++;
  return n;
}

/** Middle of the fruit store's 3 to 8 °C, and how long past its time the script leaves a lot lying (demo value). */
const STORE_C = 5.5;
const GRACE_H = 120;
const isPast = (lot: HeldLot, day: PlainDate): boolean => {
  if (!lot.foodId || !lot.grade) return false;
  const ageHours = (Date.parse(`${day}T18:00:00Z`) - Date.parse(lot.since)) / 3_600_000;
  return (
    ageHours > GRACE_H &&
    hoursLeft({ foodId: lot.foodId, grade: lot.grade, storeTempC: STORE_C, ageHours: ageHours - GRACE_H }).hours <= 0
  );
};

/** Each day: what is long past its time goes to the compost. */
export function clearPast(s: SeasonState, day: PlainDate): void {
  const own = `${s.placeId}:season:`;
  const past = held(s, (l) => l.kind === 'fruit' && l.parentActId.startsWith(own) && isPast(l, day));
  if (past.length === 0) return;
  write(s, {
    act: seasonAct(s, `clear-${day}`, 'place-fruit', day, '08:00', { why: 'past its time' }),
    lots: [],
    movements: past.map((l) => moveGrams({ lot: l.id }, { sink: 'compost' }, l.onHand)),
    changes: [],
  });
}

/** Who had the gifts of a day (invented); now and then nobody wrote it down. */
const GIVEN_TO = ['the neighbour at the mill', 'Odda’s sister', 'the school fair', 'the choir', 'the seasonal picker'];
const UNWRITTEN = 11;
function whoOf(to: Use, day: PlainDate): string | null {
  if (to === 'sold') return 'the stall';
  const n = Number(day.slice(8, 10));
  return to === 'given' && n % UNWRITTEN !== 0 ? (GIVEN_TO[n % GIVEN_TO.length] as string) : null;
}

/** One jar leaves, the oldest of its line that may leave that way; false when there is none yet. */
export function playUse(s: SeasonState, key: string, line: DemoLine, to: Use, day: PlainDate): boolean {
  const lot = held(
    s,
    (l) =>
      l.label === line.label &&
      (s.pieces.get(l.id)?.length ?? 0) > 0 &&
      l.seal !== 'waiting' &&
      !l.hold &&
      !(to === 'sold' && l.household),
  )[0];
  if (!lot) return false;
  const pieces = s.pieces.get(lot.id) as number[];
  const piece = pieces[0] as number;
  const glassLot = held(s, (l) => l.kind === 'empties' && l.item === line.jar)[0];
  const entry = takePieces({
    act: { ...seasonAct(s, key, 'take', day, '12:00', { to, line: line.label }), note: whoOf(to, day) },
    to,
    pieces: [{ lot, piece }],
    returns: to === 'eaten' && isGlass(line) && glassLot ? { lotId: glassLot.id, count: 1 } : null,
  });
  if (write(s, entry)) pieces.shift();
  return true;
}

export function playSetAside(s: SeasonState, e: SeasonEvent, day: PlainDate): boolean {
  if (e.what === 'jars-back') {
    const glassLot = held(s, (l) => l.kind === 'empties' && l.item === e.jarKind)[0];
    if (glassLot)
      write(s, {
        act: seasonAct(s, e.key, 'receive', day, '10:00', { why: 'jars brought back' }),
        lots: [],
        movements: [movePieces({ sink: 'in-use' }, { lot: glassLot.id }, e.count)],
        changes: [],
      });
    return true;
  }
  if (e.what === 'dried') return dryPowder(s, e.key, e.grams, day);
  if (e.what === 'dry-rind')
    return setAside(s, e.key, day, {
      what: 'RND',
      item: 'citrus-rind',
      label: 'Dried marmalade-orange rind',
      crops: ['orange-seville'],
      rawG: 1450,
      outG: 420,
      packs: 0,
      waterG: 0,
    });
  if (e.what === 'pectin-stock')
    return setAside(s, e.key, day, {
      what: 'PST',
      item: 'pectin-stock',
      label: 'Frozen apple and crabapple pectin stock, 500 ml',
      crops: ['crabapple', 'apple-early'],
      rawG: 3000,
      outG: 4500,
      packs: 9,
      waterG: 3400,
    });
  return true;
}

/** The trim kept on sauce day has dried: what is left is powder, the rest went off as vapour. */
function dryPowder(s: SeasonState, key: string, grams: number, day: PlainDate): boolean {
  const lot = held(s, (l) => l.kind === 'set-aside' && l.item === 'apple-powder' && l.details.state === 'fresh')[0];
  if (!lot || lot.onHand <= grams) return true;
  write(s, {
    act: seasonAct(s, key, 'set-aside', day, '18:00', { dryG: grams }),
    lots: [],
    movements: [moveGrams({ lot: lot.id }, { sink: 'vapour' }, lot.onHand - grams)],
    changes: [],
  });
  lot.details = { ...lot.details, state: 'dry' };
  return true;
}

interface Aside {
  what: string;
  item: string;
  label: string;
  crops: string[];
  rawG: number;
  outG: number;
  packs: number;
  waterG: number;
}

function setAside(s: SeasonState, key: string, day: PlainDate, a: Aside): boolean {
  const lots = a.crops.flatMap((c) =>
    held(s, (l) => l.kind === 'fruit' && (l.cropId === demoId(s.placeId, 'crop', c) || l.item === c)),
  );
  const draws = drawOldest(lots, a.rawG, a.label);
  if (isRefusal(draws)) return true;
  const act = seasonAct(s, key, 'set-aside', day, '18:00', { rawG: a.rawG });
  const lot = newLot({
    id: childId(act.id, 'lot'),
    code: setAsideCode(day, a.what, 1),
    kind: 'set-aside',
    label: a.label,
    unit: a.packs > 0 ? 'pack' : 'g',
    item: a.item,
    parentActId: act.id,
    madeOn: day,
    since: act.at,
    roomId: demoId(s.placeId, 'room', a.packs > 0 ? 'kitchen-freezer' : 'dry-cupboard'),
    bestBefore: addDays(day, 365),
    grade: worstGrade(lots.map((l) => l.grade ?? 'perfect')),
    details: {
      strength: 'untested',
      state: a.packs > 0 ? 'frozen' : 'dry',
      seedsOut: true,
      ...(a.packs > 0 ? { netG: a.outG / a.packs } : {}),
    },
  });
  const into = { lot: lot.id };
  let toLot = a.outG;
  const movements: Movement[] = [];
  for (const d of draws) {
    const kept = Math.min(toLot, Math.round((a.outG * d.count) / a.rawG));
    toLot -= kept;
    if (kept > 0 && a.packs === 0) movements.push(moveGrams({ lot: d.lotId }, into, Math.min(kept, d.count)));
    if (a.packs === 0 && d.count > kept)
      movements.push(moveGrams({ lot: d.lotId }, { sink: 'vapour' }, d.count - kept));
    if (a.packs > 0) movements.push(moveGrams({ lot: d.lotId }, { sink: 'trim' }, d.count));
  }
  if (a.packs > 0) movements.push({ from: { sink: 'tap' }, to: into, qty: a.packs, grams: a.outG, piece: null });
  write(s, { act, lots: [lot], movements, changes: [] });
  if (a.packs > 0)
    s.pieces.set(
      lot.id,
      Array.from({ length: a.packs }, (_, i) => i + 1),
    );
  return true;
}
