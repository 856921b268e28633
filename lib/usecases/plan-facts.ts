/** One plan as the figures of a card: what it keeps and loses, what it takes, what is left, and the one limit it runs into. */
import { checkPlan, type PlanCheck } from '#lib/plan/check-plan.ts';
import { type BindingLimit, explainPlan } from '#lib/plan/explain.ts';
import type { PlanInstance } from '#lib/plan/instance.ts';
import type { LimitPrice } from '#lib/plan/limit-prices.ts';
import { batchCount, type Plan } from '#lib/plan/plan.ts';
import { moneySpent } from '#lib/plan/plan-aims.ts';
import { wholeJars } from '#lib/plan/whole-jars.ts';

export interface PlanFacts {
  /** With whole jars. */
  plan: Plan;
  check: PlanCheck;
  worth: number;
  totalKg: number;
  keptKg: number;
  cookedKg: number;
  outKg: number;
  freshKg: number;
  lost: { name: string; kg: number }[];
  lostKg: number;
  jars: { id: string; label: string; count: number }[];
  batches: number;
  minutes: number;
  lidsLeft: number;
  lidsBought: number;
  /** Money for what is bought. */
  spent: number;
  sugarLeftKg: number;
  shelfFreeL: number;
  freezerFreeL: number;
  powder: { madeG: number; usedG: number; leftG: number };
  /** The one limit that stops more, and in how many days it does; null when nothing is lost for want of anything. */
  limit: { words: string; days: number } | null;
  /** Most of what is lost turns before anybody has kitchen time. */
  early: boolean;
  /** Limits overrun: pins that clash, in words with the day. */
  clashes: { rule: string; ids: readonly string[]; words: string; day: number | null; used: number; room: number }[];
}

/** Below this loss nothing is said to stop more. */
export const NOTHING_LOST_KG = 0.05;

export function planFacts(p: PlanInstance, plan: Plan, prices: readonly LimitPrice[]): PlanFacts {
  const rounded = wholeJars(p, plan).plan;
  const exact = checkPlan(p, plan);
  const roundedCheck = checkPlan(p, rounded);
  const better = roundedCheck.breaches.length <= exact.breaches.length;
  const [shown, check] = better ? [rounded, roundedCheck] : [plan, exact];
  const { tally } = check;
  const sum = (list: readonly { kg: number }[]) => list.reduce((n, x) => n + x.kg, 0);
  const lost = lostByCrop(p, shown);
  const lostKg = sum(shown.wasted);
  const totalKg = sum(p.lots);
  const atEnd = (of: Map<string, number[]>, id: string) => of.get(id)?.at(-1) ?? 0;
  const bought = (id: string) => shown.bought.filter((b) => b.material === id).reduce((n, b) => n + b.amount, 0);
  const free = (place: string) =>
    (p.storage.find((s) => s.place === place)?.free.at(-1) ?? 0) - atEnd(tally.filledLitres, place);
  const early = turnsTooEarly(p, shown);
  const reasons = explainPlan(p, exact, prices);
  return {
    plan: shown,
    check,
    worth: exact.worth.total,
    totalKg,
    keptKg: totalKg - lostKg,
    cookedKg: sum(shown.cooked),
    outKg: sum(shown.outlets),
    freshKg: sum(shown.carried),
    lost,
    lostKg,
    jars: p.jars
      .map((j) => ({
        id: j.id,
        label: j.name ?? j.id,
        count: Math.round(shown.jars.filter((x) => x.jar === j.id).reduce((n, x) => n + x.count, 0)),
      }))
      .filter((j) => j.count > 0),
    batches: shown.cooked.reduce((n, c) => n + batchCount(c), 0),
    minutes: tally.handHours.reduce((a, b) => a + b, 0) * 60,
    lidsLeft: Math.max(0, Math.floor(atEnd(tally.stock, 'lid-regular') + 1e-6)),
    spent: moneySpent(p, shown),
    lidsBought: Math.ceil(bought('lid-regular') - 1e-6),
    sugarLeftKg: atEnd(tally.stock, 'sugar'),
    shelfFreeL: Math.max(0, free('shelf')),
    freezerFreeL: Math.max(0, free('freezer')),
    powder: {
      madeG: powderMade(p, shown),
      usedG: shown.pectin.filter((x) => x.material === 'apple-powder').reduce((n, x) => n + x.amount, 0),
      leftG: atEnd(tally.stock, 'apple-powder'),
    },
    limit: lostKg > NOTHING_LOST_KG && !early ? oneLimit(p, plan, { binding: reasons.binding, prices }) : null,
    early: lostKg > NOTHING_LOST_KG && early,
    clashes: reasons.shortages.map((s) => ({
      rule: s.rule,
      ids: s.ids,
      words: s.words,
      day: s.day,
      used: s.used,
      room: s.limit,
    })),
  };
}

const powderMade = (p: PlanInstance, plan: Plan): number =>
  plan.dried.reduce((n, d) => {
    const leftover = p.leftovers.find((l) => l.id === d.leftover);
    return n + (leftover?.becomes === 'apple-powder' ? d.kg * leftover.dryYield : 0);
  }, 0);

function lostByCrop(p: PlanInstance, plan: Plan): { name: string; kg: number }[] {
  const by = new Map<string, number>();
  for (const w of plan.wasted) {
    const crop = p.lots.find((l) => l.id === w.lot)?.crop ?? '';
    by.set(crop, (by.get(crop) ?? 0) + w.kg);
  }
  return [...by.entries()]
    .map(([id, kg]) => ({ name: p.crops.find((c) => c.id === id)?.name ?? id, kg }))
    .filter((x) => x.kg >= 0.005)
    .sort((a, b) => b.kg - a.kg);
}

/**
 * Binding on most days; of two alike, the one a further unit of which is worth more. A supply of which more could have been
 * bought on an earlier shop day stops nothing.
 */
function oneLimit(
  p: PlanInstance,
  plan: Plan,
  o: { binding: readonly BindingLimit[]; prices: readonly LimitPrice[] },
): PlanFacts['limit'] {
  const days = new Map<string, Set<number>>();
  const real = o.binding.filter(
    (b) => b.rule !== 'stock' || !couldBuyMore(p, plan, { material: b.ids[0] ?? '', before: b.day }),
  );
  for (const b of real) days.set(b.words, (days.get(b.words) ?? new Set()).add(b.day));
  const priceOf = (b: BindingLimit) =>
    o.prices.find(
      (x) => x.rule === b.rule && (x.ids[0] ?? '') === (b.ids[0] ?? '') && (x.day === null || x.day === b.day),
    )?.price ?? 0;
  const price = (words: string) => Math.max(0, ...real.filter((b) => b.words === words).map(priceOf));
  const order = [...days.entries()].sort((a, b) => b[1].size - a[1].size || price(b[0]) - price(a[0]));
  return order[0] ? { words: order[0][0], days: order[0][1].size } : null;
}

function couldBuyMore(p: PlanInstance, plan: Plan, q: { material: string; before: number }): boolean {
  const m = p.materials.find((x) => x.id === q.material);
  if (m?.price === undefined) return false;
  const bought = (day: number) =>
    plan.bought.filter((b) => b.material === q.material && b.day === day).reduce((n, b) => n + b.amount, 0);
  return p.days.some(
    (_, day) =>
      day <= q.before &&
      (m.shopDays?.includes(day) ?? true) &&
      bought(day) < (m.maxBuy ?? Number.POSITIVE_INFINITY) - 1e-6,
  );
}

/** Most of what is lost turns before anybody has an hour in the kitchen. */
function turnsTooEarly(p: PlanInstance, plan: Plan): boolean {
  const lots = new Map(p.lots.map((l) => [l.id, l]));
  const hasTime = (id: string) =>
    p.days.some((d, day) => d.active > 0 && day >= (lots.get(id)?.avail ?? 0) && day <= (lots.get(id)?.useBy ?? -1));
  const all = plan.wasted.reduce((n, w) => n + w.kg, 0);
  const early = plan.wasted.filter((w) => !hasTime(w.lot)).reduce((n, w) => n + w.kg, 0);
  return all > 0 && early > all / 2;
}
