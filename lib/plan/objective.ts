/** What is maximised, as named groups in money, so that a plan's worth can be shown term by term. */
import type { PlanOutlet } from './instance.ts';
import type { PlanFrame } from './plan-frame.ts';
import { batches, burnerHours, handHours } from './plan-terms.ts';
import { carryWorth } from './usable-fruit.ts';
import { PRICED_LIMITS } from './variables.ts';

export const OUTLET_GROUP: Readonly<Record<PlanOutlet['kind'], string>> = {
  eat: 'fresh',
  sell: 'sold',
  give: 'given',
  press: 'pressed',
  compost: 'composted',
};

/** Weight of a moved batch by its day: full within three days, then 0.4, 0.15 beyond a week. Estimate from the planning trial. */
export const nearness = (day: number): number => (day < 3 ? 1 : day < 7 ? 0.4 : 0.15);

/** Lacking a unit of material costs the shortage weight and five times its price. Estimate from the planning trial. */
export const lackPrice = (shortage: number, price: number | undefined): number => shortage + 5 * (price ?? 0);

export function objective(f: PlanFrame): void {
  pantry(f);
  fruit(f);
  supplies(f);
  work(f);
  slacks(f);
}

function pantry(f: PlanFrame): void {
  for (const p of f.data.products)
    for (const [i, s] of p.segments.entries())
      f.price('preserves', f.term({ kind: 'worth', ids: [p.id, String(i)] }, 1), s.value);
  if (f.data.variety) f.price('missing kinds', f.term({ kind: 'missingKinds', ids: [] }, 1), -f.data.variety.penalty);
}

function fruit(f: PlanFrame): void {
  for (const o of f.data.outlets)
    for (const day of o.days)
      for (const g of o.grades)
        f.price(OUTLET_GROUP[o.kind], f.term({ kind: 'outlet', ids: [o.id, g], day }, 1), o.value);
  for (const k of f.setup.classes) {
    const crop = f.data.crops.find((c) => c.id === k.crop);
    if (!crop) continue;
    f.price('waste', f.term({ kind: 'waste', ids: [k.id] }, 1), -(f.data.weights.waste + (crop.wasteCost ?? 0)));
    const carry = f.term({ kind: 'carry', ids: [k.id] }, 1);
    f.price('fruit carried', carry, carryWorth(k, crop, f.data.horizon));
    f.price('waiting', carry, -(k.waitCost ?? 0) * (f.data.horizon - k.avail));
    for (const day of f.days)
      f.price('waiting', f.term({ kind: 'draw', ids: [k.id], day }, 1), -(k.waitCost ?? 0) * (day - k.avail));
  }
}

function supplies(f: PlanFrame): void {
  for (const m of f.data.materials) {
    f.price('supplies carried', f.term({ kind: 'keep', ids: [m.id] }, 1), m.keepValue ?? 0);
    for (const day of f.days) {
      f.price(`bought ${m.id}`, f.term({ kind: 'buy', ids: [m.id], day }, 1), -(m.price ?? 0));
      f.price(
        'lacking supplies',
        f.term({ kind: 'lack', ids: [m.id], day }, 1),
        -lackPrice(f.data.weights.shortage, m.price),
      );
    }
  }
}

function work(f: PlanFrame): void {
  const w = f.data.weights;
  for (const day of f.days) {
    if (w.labour) f.price('labour', handHours(f, day), -w.labour);
    if (w.burner) f.price('energy', burnerHours(f, day), -w.burner);
    f.price('overtime', f.term({ kind: 'overtime', ids: [], day }, 1), -w.overtime);
  }
  if (w.tieBreak) for (const s of f.setup.slots) f.price('early first', batches(f, s), -(w.tieBreak ?? 0) * s.day);
}

function slacks(f: PlanFrame): void {
  const w = f.data.weights;
  for (const day of f.days) {
    for (const s of f.data.storage)
      f.price('overflow', f.term({ kind: 'overflow', ids: [s.place], day }, 1), -w.overflow);
    for (const limit of [...PRICED_LIMITS, ...f.data.vessels.map((v) => `vessel ${v.id}`)])
      f.price('shortage', f.term({ kind: 'shortage', ids: [limit], day }, 1), -w.shortage);
    for (const r of f.data.recipes)
      for (const kind of ['less', 'more'] as const)
        f.price('change', f.term({ kind, ids: [r.id], day }, 1), (-(f.data.former?.weight ?? 0) * nearness(day)) / 2);
  }
  for (const s of f.setup.slots)
    f.price('underfill', f.term({ kind: 'underfill', ids: [s.recipe.id, s.mode.id], day: s.day }, 1), -w.underfill);
}
