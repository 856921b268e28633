/** A plan's worth in money by named groups, from the data and the plan alone. */
import type { PlanInstance } from './instance.ts';
import { lackPrice, nearness, OUTLET_GROUP } from './objective.ts';
import { batchCount, type Plan } from './plan.ts';
import { type PlanTally, planTally } from './plan-tally.ts';
import { segmentWorth } from './segment-worth.ts';
import { carryWorth } from './usable-fruit.ts';

export interface PlanWorth {
  total: number;
  /** Gains positive, costs negative; groups of 0 are left out. */
  groups: Readonly<Record<string, number>>;
}

export function planWorth(p: PlanInstance, plan: Plan, tally: PlanTally = planTally(p, plan)): PlanWorth {
  const groups: Record<string, number> = {};
  const add = (group: string, money: number) => {
    if (Math.abs(money) > 1e-12) groups[group] = (groups[group] ?? 0) + money;
  };
  pantryWorth(p, tally, add);
  fruitWorth(p, plan, add);
  supplyWorth(p, plan, tally, add);
  workCost(p, plan, tally, add);
  overrunCost(p, tally, add);
  changeCost(p, plan, add);
  return { total: Object.values(groups).reduce((a, b) => a + b, 0), groups };
}

type Add = (group: string, money: number) => void;
const sum = (list: Iterable<number>) => [...list].reduce((a, b) => a + b, 0);

function pantryWorth(p: PlanInstance, t: PlanTally, add: Add): void {
  for (const x of p.products) add('preserves', segmentWorth(x, t.litres.get(x.id) ?? 0));
  if (p.variety) {
    const kinds = p.products.filter((x) => (t.batches.get(x.id) ?? 0) > 0).length;
    add('missing kinds', -p.variety.penalty * Math.max(0, p.variety.min - kinds));
  }
}

function fruitWorth(p: PlanInstance, plan: Plan, add: Add): void {
  const lots = new Map(p.lots.map((l) => [l.id, l]));
  const crops = new Map(p.crops.map((c) => [c.id, c]));
  for (const x of plan.outlets) {
    const o = p.outlets.find((y) => y.id === x.outlet);
    if (o) add(OUTLET_GROUP[o.kind], o.value * x.kg);
  }
  for (const d of plan.draws) {
    const l = lots.get(d.lot);
    if (l) add('waiting', -(l.waitCost ?? 0) * (d.day - l.avail) * d.kg);
  }
  for (const w of plan.wasted)
    add('waste', -(p.weights.waste + (crops.get(lots.get(w.lot)?.crop ?? '')?.wasteCost ?? 0)) * w.kg);
  for (const c of plan.carried) {
    const l = lots.get(c.lot);
    const crop = crops.get(l?.crop ?? '');
    if (!l || !crop) continue;
    add('fruit carried', carryWorth(l, crop, p.horizon) * c.kg);
    add('waiting', -(l.waitCost ?? 0) * (p.horizon - l.avail) * c.kg);
  }
}

function supplyWorth(p: PlanInstance, plan: Plan, t: PlanTally, add: Add): void {
  for (const b of plan.bought)
    add(`bought ${b.material}`, -(p.materials.find((m) => m.id === b.material)?.price ?? 0) * b.amount);
  for (const m of p.materials) {
    const left = (t.stock.get(m.id)?.[p.horizon - 1] ?? 0) + (t.latePowder.get(m.id) ?? 0);
    add('supplies carried', (m.keepValue ?? 0) * Math.min(left, m.carryMax ?? Infinity));
    add('lacking supplies', -lackPrice(p.weights.shortage, m.price) * sum(t.lack.get(m.id) ?? []));
  }
}

function workCost(p: PlanInstance, plan: Plan, t: PlanTally, add: Add): void {
  add('labour', -p.weights.labour * sum(t.handHours));
  add('energy', -p.weights.burner * sum(t.burnerHours));
  add(
    'overtime',
    -p.weights.overtime *
      sum(p.days.map((d, i) => Math.min(d.overtime, Math.max(0, (t.handHours[i] ?? 0) - d.active)))),
  );
  add('early first', -(p.weights.tieBreak ?? 0) * sum(plan.cooked.map((c) => batchCount(c) * c.day)));
}

/** What priced limits are overrun by, per day. */
function overrunCost(p: PlanInstance, t: PlanTally, add: Add): void {
  const over = (used: number | undefined, limit: number) => Math.max(0, (used ?? 0) - limit);
  p.days.forEach((d, i) => {
    const short =
      over(t.handHours[i], d.active + d.overtime) +
      over(t.burnerHours[i], d.burner) +
      over(t.cannerLoads[i], d.cannerLoads) +
      over(t.trayM2[i], d.dryer) +
      over(t.frozenKg[i], d.freezeKg ?? Infinity) +
      sum(p.vessels.map((v) => over(t.vesselHours.get(v.id)?.[i], v.count * (d.vesselH?.[v.id] ?? 24))));
    add('shortage', -p.weights.shortage * short);
    for (const s of p.storage)
      add('overflow', -p.weights.overflow * over(t.filledLitres.get(s.place)?.[i], s.free[i] ?? 0));
  });
  add('underfill', -p.weights.underfill * t.underfillKg);
}

function changeCost(p: PlanInstance, plan: Plan, add: Add): void {
  const former = p.former;
  if (!former) return;
  for (const r of p.recipes)
    p.days.forEach((_, day) => {
      const was = sum(former.batches.filter((b) => b.recipe === r.id && b.day === day).map((b) => b.batches));
      const is = sum(plan.cooked.filter((c) => c.recipe === r.id && c.day === day).map(batchCount));
      add('change', (-former.weight * nearness(day) * Math.abs(is - was)) / 2);
    });
}
