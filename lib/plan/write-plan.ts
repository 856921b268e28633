/** Puts a plan into the columns of a model, as a start for the solver. Derived columns (stock, room, worth) follow from the tally. */
import type { PlanInstance } from './instance.ts';
import { lotClasses } from './lot-classes.ts';
import { batchCount, loadCount, type Plan } from './plan.ts';
import { planTally } from './plan-tally.ts';
import type { ColumnKind, SparseModel } from './sparse-model.ts';

/** Column values, or null when the plan uses something the model has no column for (a tightening pruned it). */
export function writePlan(p: PlanInstance, model: SparseModel, plan: Plan): Float64Array | null {
  const values = new Float64Array(model.columns.length);
  let fits = true;
  const put = (
    kind: ColumnKind,
    ids: readonly string[],
    amount: number,
    day: number | null = null,
    loads = 0,
  ): void => {
    if (Math.abs(amount) < 1e-12) return;
    const column = model.find(kind, ids, day, loads);
    if (column === undefined) fits = false;
    else values[column] = (values[column] ?? 0) + amount;
  };
  putFruit(p, model, plan, put);
  for (const c of plan.cooked) {
    const ids = [c.recipe, c.mode];
    put('cook', ids, c.kg, c.day);
    const apart = model.find('loads', ids, c.day) !== undefined;
    if (apart) put('loads', ids, loadCount(c), c.day);
    for (const b of c.batches) put('batches', ids, b.count, c.day, apart ? 0 : b.loads);
  }
  for (const x of plan.pectin) put('pectin', [x.recipe, x.material], x.amount, x.day);
  for (const x of plan.acid) put('acid', [x.recipe, x.material], x.amount, x.day);
  for (const x of plan.jars) put('jars', [x.recipe, x.jar], x.count, x.day);
  for (const x of plan.tails) put('tail', [x.recipe], x.litres, x.day);
  for (const x of plan.dried) put('dry', [x.leftover], x.kg, x.day);
  for (const x of plan.bought) put('buy', [x.material], x.amount, x.day);
  putDerived(p, model, plan, put);
  return fits ? values : null;
}

type Put = (kind: ColumnKind, ids: readonly string[], amount: number, day?: number | null, loads?: number) => void;

function putFruit(p: PlanInstance, model: SparseModel, plan: Plan, put: Put): void {
  const merged = p.lots.some((l) => model.find('waste', [l.id]) === undefined);
  const classOf = new Map(lotClasses(p.lots, merged).flatMap((k) => k.members.map((l) => [l.id, k.id])));
  const ids = (lot: string) => [classOf.get(lot) ?? lot];
  for (const d of plan.draws) put('draw', ids(d.lot), d.kg, d.day);
  for (const w of plan.wasted) put('waste', ids(w.lot), w.kg);
  for (const c of plan.carried) put('carry', ids(c.lot), c.kg);
  for (const o of plan.outlets) put('outlet', [o.outlet, o.grade], o.kg, o.day);
  for (const f of plan.fruit) put('fruit', [f.recipe, f.crop, f.grade], f.kg, f.day);
}

function putDerived(p: PlanInstance, model: SparseModel, plan: Plan, put: Put): void {
  const t = planTally(p, plan);
  const setUps = new Set(plan.cooked.filter((c) => batchCount(c) > 0).map((c) => `${c.day}|${c.recipe}`));
  for (const key of setUps) {
    const [day, recipe] = [Number(key.slice(0, key.indexOf('|'))), key.slice(key.indexOf('|') + 1)];
    if (model.find('setUp', [recipe], day) !== undefined) put('setUp', [recipe], 1, day);
  }
  for (const m of p.materials) {
    p.days.forEach((_, day) => {
      put('stock', [m.id], t.stock.get(m.id)?.[day] ?? 0, day);
      put('lack', [m.id], dust(t.lack.get(m.id)?.[day]), day);
    });
    if ((m.keepValue ?? 0) > 0)
      put(
        'keep',
        [m.id],
        Math.min(m.carryMax ?? Infinity, (t.stock.get(m.id)?.[p.horizon - 1] ?? 0) + (t.latePowder.get(m.id) ?? 0)),
      );
  }
  for (const s of p.storage)
    p.days.forEach((_, day) => {
      const filled = t.filledLitres.get(s.place)?.[day] ?? 0;
      put('filled', [s.place], filled, day);
      put('overflow', [s.place], Math.max(0, filled - (s.free[day] ?? 0)), day);
    });
  for (const x of p.products) {
    let left = t.litres.get(x.id) ?? 0;
    x.segments.forEach((s, i) => {
      const part = Math.min(left, s.litres);
      left -= part;
      put('worth', [x.id, String(i)], part);
    });
    put('rest', [x.id], left);
    if ((t.batches.get(x.id) ?? 0) > 0 && model.find('kind', [x.id]) !== undefined) put('kind', [x.id], 1);
  }
  if (p.variety)
    put(
      'missingKinds',
      [],
      Math.max(0, p.variety.min - p.products.filter((x) => (t.batches.get(x.id) ?? 0) > 0).length),
    );
  putOverruns(p, plan, t, put);
}

/** Solver rounding is not a shortage. */
const dust = (x: number | undefined): number => ((x ?? 0) > 1e-6 ? (x as number) : 0);

function putOverruns(p: PlanInstance, plan: Plan, t: ReturnType<typeof planTally>, put: Put): void {
  p.days.forEach((d, day) => {
    const over = Math.max(0, (t.handHours[day] ?? 0) - d.active);
    put('overtime', [], Math.min(over, d.overtime), day);
    const short = (limit: string, used: number | undefined, room: number) =>
      put('shortage', [limit], dust((used ?? 0) - room), day);
    short('kitchen', t.handHours[day], d.active + d.overtime);
    short('burner', t.burnerHours[day], d.burner);
    short('canner', t.cannerLoads[day], d.cannerLoads);
    short('dryer', t.trayM2[day], d.dryer);
    short('freeze', t.frozenKg[day], d.freezeKg ?? Infinity);
    for (const v of p.vessels)
      short(`vessel ${v.id}`, t.vesselHours.get(v.id)?.[day], v.count * (d.vesselH?.[v.id] ?? 24));
  });
  for (const c of plan.cooked) {
    const least = p.recipes.find((r) => r.id === c.recipe)?.modes.find((m) => m.id === c.mode)?.minKg ?? 0;
    put('underfill', [c.recipe, c.mode], dust(least * batchCount(c) - c.kg), c.day);
  }
  for (const r of p.former ? p.recipes : [])
    p.days.forEach((_, day) => {
      const was = (p.former?.batches ?? [])
        .filter((b) => b.recipe === r.id && b.day === day)
        .reduce((n, b) => n + b.batches, 0);
      const is = plan.cooked.filter((c) => c.recipe === r.id && c.day === day).reduce((n, c) => n + batchCount(c), 0);
      if (was > is) put('less', [r.id], was - is, day);
      if (is > was) put('more', [r.id], is - was, day);
    });
}
