/** Lines of jars and packs: what is on hand, what left week by week, and what a batch of it took when it was last made. */

import type { HeldLot } from '#lib/ledger/lot.ts';
import { isLot } from '#lib/ledger/movement.ts';
import { addDays, daysBetween, type PlainDate } from '#lib/units/plain-date.ts';
import { lineSlug } from './read-pantry.ts';
import { SEASON_WEEKS, type SeasonSnapshot } from './season-snapshot.ts';
import type { UseWeek } from './season-use.ts';

/** What one batch took and gave, from the ledger's own batches. */
export interface MadeBatch {
  day: string;
  jars: number;
  fruitG: number;
  sugarG: number;
  /** Fruit by food; bought fruit under "bought:" and its item. */
  fruitBy: Map<string, number>;
}

export interface SeasonLine {
  /** Line and jar kind: the same line in two sizes is two products. */
  id: string;
  line: string;
  slug: string;
  item: string;
  kind: 'jars' | 'frozen' | 'dried' | 'cold-jars';
  foodId: string;
  recipeId: string | null;
  /** Lots with something left; held ones stand in `heldBack`. */
  lots: HeldLot[];
  onHand: number;
  /** Jars on hold: they take room but nobody may open them. Not in `onHand`. */
  heldBack: number;
  weeks: UseWeek[];
  batches: MadeBatch[];
  lastMade: string;
}

const KINDS = ['jars', 'frozen', 'dried', 'cold-jars'] as const;
const isKind = (kind: string): kind is SeasonLine['kind'] => (KINDS as readonly string[]).includes(kind);
const lineId = (lot: HeldLot): string => `${lineSlug(lot.label)} ${lot.item ?? lot.unit}`;

/** A line is shown while something of it is left or was made or used within the year. Sorted by id. */
export function seasonLines(s: SeasonSnapshot): SeasonLine[] {
  const since = addDays(s.today, -7 * SEASON_WEEKS - 7);
  const of = new Map<string, HeldLot[]>();
  for (const lot of s.lots)
    if (isKind(lot.kind) && lot.unit !== 'g') of.set(lineId(lot), [...(of.get(lineId(lot)) ?? []), lot]);
  const batches = madeBatches(s);
  const history = usedByLine(s, of);
  return [...of.entries()]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([id, lots]): SeasonLine => {
      const newest = lots.at(-1) as HeldLot;
      const free = lots.filter((l) => l.onHand > 0 && !l.hold);
      return {
        id,
        line: newest.label,
        slug: lineSlug(newest.label),
        item: newest.item ?? newest.unit,
        kind: newest.kind as SeasonLine['kind'],
        foodId: newest.foodId ?? '',
        recipeId: newest.recipeId,
        lots: free,
        onHand: free.reduce((n, l) => n + l.onHand, 0),
        heldBack: lots.filter((l) => l.hold).reduce((n, l) => n + l.onHand, 0),
        weeks: history.get(id) ?? [],
        batches: lots.flatMap((l) => batches.get(l.id) ?? []),
        lastMade: lots
          .map((l) => l.madeOn)
          .sort()
          .at(-1) as string,
      };
    })
    .filter((l) => l.onHand > 0 || l.lastMade >= since || l.weeks.some((w) => w.eaten + w.sold + w.given > 0));
}

/**
 * By week of the past year (0 = the oldest): what left, and whether any was there at its start. What a stock-take finds eaten
 * and not written down left some time since the count before, not on the day it was missed.
 */
function usedByLine(s: SeasonSnapshot, of: Map<string, HeldLot[]>): Map<string, UseWeek[]> {
  const lineOfLot = new Map([...of.entries()].flatMap(([id, lots]) => lots.map((l) => [l.id, id] as const)));
  const weekOf = (day: SeasonSnapshot['today']) => SEASON_WEEKS + Math.floor(daysBetween(s.today, day) / 7);
  const firstWeek = weekOf(s.recordedFrom);
  const change = new Map<string, number[]>();
  /** Eaten and not written down, as stock-takes found. */
  const missed: { id: string; w: number; jars: number }[] = [];
  const weeks = new Map<string, UseWeek[]>();
  for (const id of of.keys()) {
    change.set(id, Array<number>(SEASON_WEEKS + 1).fill(0));
    weeks.set(
      id,
      Array.from({ length: SEASON_WEEKS }, (_, w) => ({
        there: false,
        recorded: w >= firstWeek,
        eaten: 0,
        sold: 0,
        given: 0,
      })),
    );
  }
  for (const m of s.movements) {
    const w = weekOf(m.day);
    const add = (lotId: string, sign: number) => {
      const counts = change.get(lineOfLot.get(lotId) ?? '');
      if (counts && w >= 0) counts[w] = (counts[w] as number) + sign * m.qty;
    };
    if (isLot(m.to)) add(m.to.lot, 1);
    if (!isLot(m.from)) continue;
    add(m.from.lot, -1);
    if (isLot(m.to)) continue;
    const id = lineOfLot.get(m.from.lot) ?? '';
    const week = weeks.get(id)?.[w];
    if (m.kind === 'count' && m.to.sink === 'eaten' && w >= 0) missed.push({ id, w, jars: m.qty });
    else if (week && (m.to.sink === 'eaten' || m.to.sink === 'sold' || m.to.sink === 'given')) week[m.to.sink] += m.qty;
  }
  for (const [id, lots] of of) {
    let stock = lots.reduce((n, l) => n + l.onHand, 0) - (change.get(id)?.[SEASON_WEEKS] ?? 0);
    for (let w = SEASON_WEEKS - 1; w >= 0; w--) {
      stock -= change.get(id)?.[w] ?? 0;
      const week = weeks.get(id)?.[w] as UseWeek;
      week.there = week.recorded && (stock > 0 || week.eaten + week.sold + week.given > 0);
    }
  }
  for (const m of oneByLineAndWeek(missed)) {
    const of = weeks.get(m.id);
    if (of)
      spreadEaten(of, {
        jars: m.jars,
        from: countedBefore(s, m.id, m.w, weekOf) + 1,
        to: Math.min(m.w, SEASON_WEEKS - 1),
      });
  }
  return weeks;
}

const oneByLineAndWeek = (missed: readonly { id: string; w: number; jars: number }[]) => {
  const sums = new Map<string, { id: string; w: number; jars: number }>();
  for (const m of missed) sums.set(`${m.w} ${m.id}`, { ...m, jars: m.jars + (sums.get(`${m.w} ${m.id}`)?.jars ?? 0) });
  return [...sums.values()];
};

/** Week in which the line was counted before; -1 when that lies before the year or never was. */
function countedBefore(s: SeasonSnapshot, id: string, week: number, weekOf: (day: PlainDate) => number): number {
  const weeks = s.counts.flatMap((a) =>
    (a.payload.counts as { key: string }[]).some((c) => c.key.replace('|', ' ') === id) ? [weekOf(a.day)] : [],
  );
  return Math.max(-1, ...weeks.filter((w) => w < week));
}

/** Jars that nobody wrote down, evenly over the weeks since the last count in which the line was there. */
export function spreadEaten(weeks: UseWeek[], o: { jars: number; from: number; to: number }): void {
  const open = weeks.slice(o.from, o.to + 1).filter((w) => w.there);
  const into = open.length > 0 ? open : weeks.slice(o.to, o.to + 1);
  for (let i = 0; i < o.jars; i++) {
    const week = into[Math.floor(((i + 0.5) * into.length) / o.jars)] as UseWeek;
    week.eaten += 1;
    week.there = true;
  }
}

/** Batches by the lots they filled, with the fruit and sugar that went into the pan, shared by volume where sizes differ. */
function madeBatches(s: SeasonSnapshot): Map<string, MadeBatch[]> {
  const lot = new Map(s.lots.map((l) => [l.id, l]));
  const ml = new Map(s.place.jarKinds.map((k) => [k.code, k.fillMl]));
  const drawn = new Map<string, { fruitBy: Map<string, number>; fruitG: number; sugarG: number }>();
  const filled = new Map<string, { lot: HeldLot; day: string; count: number }[]>();
  for (const m of s.movements) {
    const to = isLot(m.to) ? lot.get(m.to.lot) : undefined;
    const from = isLot(m.from) ? lot.get(m.from.lot) : undefined;
    if (to?.kind === 'batch' && to.batchId && from) {
      const d = drawn.get(to.batchId) ?? { fruitBy: new Map<string, number>(), fruitG: 0, sugarG: 0 };
      if (from.kind === 'fruit') {
        const food = from.cropId ? (from.foodId ?? '') : `bought:${from.item ?? from.foodId ?? ''}`;
        d.fruitBy.set(food, (d.fruitBy.get(food) ?? 0) + (m.grams ?? 0));
        d.fruitG += m.grams ?? 0;
      } else if (from.item === 'sugar') d.sugarG += m.grams ?? 0;
      drawn.set(to.batchId, d);
    }
    if (to && from?.kind === 'batch' && to.batchId && isKind(to.kind) && to.unit !== 'g')
      filled.set(to.batchId, [...(filled.get(to.batchId) ?? []), { lot: to, day: m.day, count: m.qty }]);
  }
  const made = new Map<string, MadeBatch[]>();
  for (const [batchId, fills] of filled) {
    const d = drawn.get(batchId);
    if (!d || d.fruitG <= 0) continue;
    const volume = (f: (typeof fills)[number]) => f.count * (ml.get(f.lot.item ?? '') ?? 250);
    const whole = fills.reduce((v, f) => v + volume(f), 0);
    for (const f of fills) {
      const share = volume(f) / whole;
      const batch = {
        day: f.day,
        jars: f.count,
        fruitG: d.fruitG * share,
        sugarG: d.sugarG * share,
        fruitBy: d.fruitBy,
      };
      made.set(f.lot.id, [...(made.get(f.lot.id) ?? []), batch]);
    }
  }
  return made;
}
