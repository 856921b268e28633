/**
 * What would have been said on earlier days, from the records of those days alone, and what came of it. Days every eight weeks
 * back; a harvest is looked at from eight weeks before its window until it is over, use over the thirteen weeks after.
 */
import { isLot } from '#lib/ledger/movement.ts';
import { addDays, type PlainDate } from '#lib/units/plain-date.ts';
import { type CropSeason, seasonCrops } from './season-crops.ts';
import { seasonLines } from './season-lines.ts';
import { seasonInput } from './season-scenario.ts';
import type { SeasonSnapshot } from './season-snapshot.ts';

const LOOK_EVERY_DAYS = 56;
const LOOKS_BACK = 6;
const BEFORE_WINDOW_DAYS = 56;
const USE_WEEKS = 13;
/** Under this expected use nothing can be told apart from none. */
const LEAST_USE = 1;

export interface PastLook {
  asOf: PlainDate;
  harvests: { id: string; label: string; season: CropSeason; cameKg: number }[];
  uses: {
    id: string;
    label: string;
    usePerWeek: number;
    rateCv: number;
    dispersion: number;
    /** Average weeks that the thirteen count for, by the line's profile. */
    weeks: number;
    used: number;
  }[];
}

export function pastLooks(s: SeasonSnapshot): PastLook[] {
  const looks: PastLook[] = [];
  for (let back = LOOKS_BACK; back >= 1; back--) {
    const asOf = addDays(s.today, -LOOK_EVERY_DAYS * back);
    if (asOf <= s.recordedFrom) continue;
    const then = snapshotOn(s, asOf);
    looks.push({ asOf, harvests: harvestsSince(s, then), uses: usesSince(s, then) });
  }
  return looks;
}

/** The place as it was at the end of a day. */
export function snapshotOn(s: SeasonSnapshot, day: PlainDate): SeasonSnapshot {
  const since = new Map<string, number>();
  for (const m of s.movements) {
    if (m.day <= day) continue;
    if (isLot(m.to)) since.set(m.to.lot, (since.get(m.to.lot) ?? 0) + m.qty);
    if (isLot(m.from)) since.set(m.from.lot, (since.get(m.from.lot) ?? 0) - m.qty);
  }
  return {
    ...s,
    today: day,
    lots: s.lots
      .filter((l) => l.madeOn <= day)
      .map((l) => ({ ...l, onHand: Math.max(0, l.onHand - (since.get(l.id) ?? 0)) })),
    movements: s.movements.filter((m) => m.day <= day),
    harvests: s.harvests.filter((a) => a.day <= day),
    sights: s.sights.filter((a) => a.day <= day),
    counts: s.counts.filter((a) => a.day <= day),
    plan: null,
  };
}

/** Harvests that are over now and were ahead or under way then. */
function harvestsSince(now: SeasonSnapshot, then: SeasonSnapshot): PastLook['harvests'] {
  const known = new Map(seasonCrops(now).map((c) => [c.id, c]));
  return seasonCrops(then).flatMap((crop) => {
    const season = crop.seasons[0];
    const open = known.get(crop.id)?.seasons[0];
    if (!season || !open || open.year <= season.year) return [];
    if (season.windowFrom > addDays(then.today, BEFORE_WINDOW_DAYS) || season.windowTo < then.today) return [];
    const total = known.get(crop.id)?.pastSeasons.find((p) => p.year === season.year)?.kg;
    if (total === undefined) return [];
    const picked = season.records.reduce((kg, r) => kg + r.kg, 0);
    return [{ id: crop.id, label: crop.label, season, cameKg: Math.max(0, total - picked) }];
  });
}

/** Lines that had some left all through the weeks after: what was wanted of the others was not seen. */
function usesSince(now: SeasonSnapshot, then: SeasonSnapshot): PastLook['uses'] {
  const until = addDays(then.today, 7 * USE_WEEKS);
  if (until > now.today) return [];
  const input = seasonInput(then);
  const after = new Map(seasonLines(snapshotOn(now, until)).map((l) => [l.id, l]));
  const lineOf = new Map(now.lots.map((l) => [l.id, `${l.label} ${l.item ?? l.unit}`]));
  return input.lines.flatMap((l, i) => {
    const product = input.scenario.products[i];
    const later = after.get(l.id);
    if (!product || l.onHand === 0 || !later || later.onHand === 0) return [];
    const weeks = (product.profile ?? []).slice(0, USE_WEEKS).reduce((sum, x) => sum + x, 0) || USE_WEEKS;
    if (l.usePerWeek * weeks < LEAST_USE) return [];
    const used = now.movements.reduce(
      (n, m) =>
        m.day > then.today &&
        m.day <= until &&
        isLot(m.from) &&
        !isLot(m.to) &&
        ['eaten', 'given', 'sold'].includes(m.to.sink) &&
        lineOf.get(m.from.lot) === `${l.line} ${l.item}`
          ? n + m.qty
          : n,
      0,
    );
    return [
      {
        id: l.id,
        label: l.line,
        usePerWeek: l.usePerWeek,
        rateCv: product.rateCv,
        dispersion: product.dispersion,
        weeks,
        used,
      },
    ];
  });
}
