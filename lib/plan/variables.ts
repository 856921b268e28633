/** Makes the columns of one future (the model's variables, with their trade names). */
import type { PlanFrame } from './plan-frame.ts';
import { gradeOn, isThere } from './usable-fruit.ts';

/** The limits that pinned plans may overrun at a price. */
export const PRICED_LIMITS = ['kitchen', 'burner', 'canner', 'dryer', 'freeze'] as const;

export function variables(f: PlanFrame): void {
  fruitColumns(f);
  kitchenColumns(f);
  panColumns(f);
  supplyColumns(f);
  pantryColumns(f);
  slackColumns(f);
}

/** True when some lot can supply that crop and grade that day. */
export const isSupplied = (f: PlanFrame, crop: string, grade: string, day: number): boolean =>
  f.setup.classes.some((k) => k.crop === crop && isThere(k, day) && gradeOn(k, day) === grade);

function fruitColumns(f: PlanFrame): void {
  for (const k of f.setup.classes) {
    for (const day of f.days) if (isThere(k, day)) f.add({ kind: 'draw', ids: [k.id], day });
    f.add({ kind: 'waste', ids: [k.id] });
    if (k.useBy >= f.data.horizon) f.add({ kind: 'carry', ids: [k.id] });
  }
  for (const o of f.data.outlets)
    for (const day of o.days)
      for (const grade of o.grades)
        if (day < f.data.horizon && isSupplied(f, o.crop, grade, day))
          f.add({ kind: 'outlet', ids: [o.id, grade], day });
}

function kitchenColumns(f: PlanFrame): void {
  const t = f.setup.tightenings;
  for (const s of f.setup.slots) {
    const ids = [s.recipe.id, s.mode.id];
    f.add({ kind: 'cook', ids, day: s.day });
    if (t.loadModes || !s.recipe.canner)
      for (const c of s.choices)
        f.add({ kind: 'batches', ids, day: s.day, loads: c.loads }, { upper: s.most, whole: true });
    else {
      f.add({ kind: 'batches', ids, day: s.day }, { upper: s.most, whole: true });
      f.add({ kind: 'loads', ids, day: s.day }, { whole: true });
    }
  }
  for (const { recipe, day } of f.kitchenDays) {
    const slots = f.slotsOn(recipe.id, day);
    const single = t.singleSetup && slots.length === 1 && slots[0]?.most === 1 && slots[0].choices.length === 1;
    if ((recipe.setupH ?? 0) > 0 && !single) f.add({ kind: 'setUp', ids: [recipe.id], day }, { upper: 1, whole: true });
  }
}

function panColumns(f: PlanFrame): void {
  for (const { recipe, day } of f.kitchenDays) {
    for (const use of recipe.fruit)
      for (const grade of use.grades)
        if (isSupplied(f, use.crop, grade, day)) f.add({ kind: 'fruit', ids: [recipe.id, use.crop, grade], day });
    if ((recipe.pectin ?? 0) > 0)
      for (const s of f.data.pectinSources)
        if (recipe.pectinSources?.includes(s.material) ?? true)
          f.add({ kind: 'pectin', ids: [recipe.id, s.material], day });
    if ((recipe.acid ?? 0) > 0)
      for (const s of f.data.acidSources) f.add({ kind: 'acid', ids: [recipe.id, s.material], day });
    for (const jar of recipe.jars ?? [])
      f.add({ kind: 'jars', ids: [recipe.id, jar], day }, { whole: f.setup.wholeJars });
    if (f.setup.wholeJars && recipe.jars?.length) {
      const smallest = Math.min(...f.data.jars.filter((j) => recipe.jars?.includes(j.id)).map((j) => j.litres));
      f.add({ kind: 'tail', ids: [recipe.id], day }, { upper: smallest });
    }
    for (const l of recipe.leftovers ?? []) f.add({ kind: 'dry', ids: [l.leftover], day });
  }
}

function supplyColumns(f: PlanFrame): void {
  for (const m of f.data.materials) {
    for (const day of f.days) {
      f.add({ kind: 'stock', ids: [m.id], day });
      if (m.price !== undefined && (m.shopDays?.includes(day) ?? true))
        f.add({ kind: 'buy', ids: [m.id], day }, { upper: m.maxBuy ?? Infinity });
    }
    if ((m.keepValue ?? 0) > 0) f.add({ kind: 'keep', ids: [m.id] }, { upper: m.carryMax ?? Infinity });
  }
}

function pantryColumns(f: PlanFrame): void {
  for (const s of f.data.storage)
    for (const day of f.days) {
      f.add({ kind: 'filled', ids: [s.place], day });
      f.add({ kind: 'overflow', ids: [s.place], day });
    }
  const kinds = f.data.variety !== undefined || f.setup.tightenings.cutKind || f.setup.tightenings.cutSetup;
  for (const p of f.data.products) {
    if (!f.setup.slots.some((s) => s.recipe.product === p.id)) continue;
    for (const [i, s] of p.segments.entries()) f.add({ kind: 'worth', ids: [p.id, String(i)] }, { upper: s.litres });
    f.add({ kind: 'rest', ids: [p.id] });
    if (kinds) f.add({ kind: 'kind', ids: [p.id] }, { upper: 1 });
  }
  if (f.data.variety) f.add({ kind: 'missingKinds', ids: [] });
}

function slackColumns(f: PlanFrame): void {
  f.data.days.forEach((d, day) => {
    if (d.overtime > 0) f.add({ kind: 'overtime', ids: [], day }, { upper: d.overtime });
    if (!f.setup.forgiving) return;
    for (const limit of PRICED_LIMITS) f.add({ kind: 'shortage', ids: [limit], day });
    for (const v of f.data.vessels) f.add({ kind: 'shortage', ids: [`vessel ${v.id}`], day });
    for (const m of f.data.materials) f.add({ kind: 'lack', ids: [m.id], day });
  });
  if (f.setup.forgiving)
    for (const s of f.setup.slots) f.add({ kind: 'underfill', ids: [s.recipe.id, s.mode.id], day: s.day });
  for (const b of f.data.former?.batches ?? [])
    if (b.day < f.data.horizon) f.add({ kind: 'less', ids: [b.recipe], day: b.day });
  if (f.data.former)
    for (const { recipe, day } of f.kitchenDays) {
      f.add({ kind: 'less', ids: [recipe.id], day });
      f.add({ kind: 'more', ids: [recipe.id], day });
    }
}
