/** Reads a plan in trade terms from the solver's columns. */

import type { FruitGrade, PlanInstance, PlanLot } from './instance.ts';
import { lotClasses } from './lot-classes.ts';
import type { CookedBatches, Plan } from './plan.ts';
import type { ColumnKind, ColumnRef, SparseModel } from './sparse-model.ts';

/** Below this an amount is the solver's rounding (kg, L, pieces). */
const DUST = 1e-9;

interface Found {
  ref: ColumnRef;
  value: number;
}

export interface ReadOptions {
  future?: number;
  /** The lots of that future, when they are not the instance's. */
  lots?: readonly PlanLot[];
}

/** The plan of one future. Whole columns are rounded; classes are split back soonest-entered first. */
export function readPlan(
  instance: PlanInstance,
  model: SparseModel,
  values: ArrayLike<number>,
  options: ReadOptions = {},
): Plan {
  const found = new Map<ColumnKind, Found[]>();
  model.columns.forEach((c, j) => {
    const raw = values[j] ?? 0;
    const value = c.whole ? Math.round(raw) : raw;
    if (value <= DUST || (c.ref.future !== (options.future ?? 0) && c.ref.future !== 0)) return;
    if (c.ref.future === 0 && (options.future ?? 0) !== 0 && !['batches', 'loads', 'buy'].includes(c.ref.kind)) return;
    found.set(c.ref.kind, [...(found.get(c.ref.kind) ?? []), { ref: c.ref, value }]);
  });
  const all = (kind: ColumnKind) => found.get(kind) ?? [];
  const id = (f: Found, i = 0) => f.ref.ids[i] as string;
  const day = (f: Found) => f.ref.day as number;
  return {
    ...splitClasses(options.lots ?? instance.lots, all),
    outlets: all('outlet').map((f) => ({ outlet: id(f), grade: id(f, 1) as FruitGrade, day: day(f), kg: f.value })),
    fruit: all('fruit').map((f) => ({
      recipe: id(f),
      crop: id(f, 1),
      grade: id(f, 2) as FruitGrade,
      day: day(f),
      kg: f.value,
    })),
    cooked: cookedBatches(all),
    pectin: all('pectin').map((f) => ({ recipe: id(f), material: id(f, 1), day: day(f), amount: f.value })),
    acid: all('acid').map((f) => ({ recipe: id(f), material: id(f, 1), day: day(f), amount: f.value })),
    jars: all('jars').map((f) => ({ recipe: id(f), jar: id(f, 1), day: day(f), count: f.value })),
    tails: all('tail').map((f) => ({ recipe: id(f), day: day(f), litres: f.value })),
    dried: all('dry').map((f) => ({ leftover: id(f), day: day(f), kg: f.value })),
    bought: all('buy').map((f) => ({ material: id(f), day: day(f), amount: f.value })),
  };
}

function cookedBatches(all: (kind: ColumnKind) => Found[]): CookedBatches[] {
  const lines = new Map<string, { line: CookedBatches; plain: number }>();
  const line = (f: Found) => {
    const [recipe, mode] = f.ref.ids as [string, string];
    const key = `${recipe}|${mode}|${f.ref.day}`;
    const known = lines.get(key) ?? { line: { recipe, mode, day: f.ref.day as number, kg: 0, batches: [] }, plain: 0 };
    lines.set(key, known);
    return known;
  };
  for (const f of all('batches')) {
    const l = line(f);
    l.line.batches = [...l.line.batches, { loads: f.ref.loads, count: f.value }];
  }
  for (const f of all('cook')) line(f).line.kg = f.value;
  for (const f of all('loads')) {
    const l = line(f);
    const count = l.line.batches.reduce((n, b) => n + b.count, 0);
    const least = Math.floor(f.value / Math.max(1, count));
    const more = f.value - least * count;
    l.line.batches = [
      { loads: least, count: count - more },
      { loads: least + 1, count: more },
    ].filter((b) => b.count > 0);
  }
  return [...lines.values()].map((l) => l.line).filter((l) => l.batches.length > 0 || l.kg > 1e-6);
}

function splitClasses(
  lots: readonly PlanLot[],
  all: (kind: ColumnKind) => Found[],
): Pick<Plan, 'draws' | 'wasted' | 'carried'> {
  const draws: Plan['draws'][number][] = [];
  const wasted: Plan['wasted'][number][] = [];
  const carried: Plan['carried'][number][] = [];
  const taken = (kind: ColumnKind) =>
    all(kind).reduce(
      (map, f) => map.set(f.ref.ids[0] as string, [...(map.get(f.ref.ids[0] as string) ?? []), f]),
      new Map<string, Found[]>(),
    );
  const [drawn, lost, kept] = [taken('draw'), taken('waste'), taken('carry')];
  const merged = lotClasses(lots, true);
  const classes = merged.some((k) =>
    k.members.slice(1).some((l) => drawn.has(l.id) || lost.has(l.id) || kept.has(l.id)),
  )
    ? lotClasses(lots, false)
    : merged;
  for (const k of classes) {
    const left = k.members.map((l) => ({ lot: l.id, kg: l.kg }));
    const take = (kg: number, put: (lot: string, part: number) => void) => {
      let need = kg;
      left.forEach((l, i) => {
        // The last member takes the solver's rounding, so that amounts add up as they stood.
        const part = i === left.length - 1 ? need : Math.min(need, l.kg);
        if (part <= DUST) return;
        l.kg -= part;
        need -= part;
        put(l.lot, part);
      });
    };
    for (const f of [...(drawn.get(k.id) ?? [])].sort((a, b) => (a.ref.day ?? 0) - (b.ref.day ?? 0)))
      take(f.value, (lot, kg) => draws.push({ lot, day: f.ref.day as number, kg }));
    for (const f of kept.get(k.id) ?? []) take(f.value, (lot, kg) => carried.push({ lot, kg }));
    for (const f of lost.get(k.id) ?? []) take(f.value, (lot, kg) => wasted.push({ lot, kg }));
  }
  return { draws, wasted, carried };
}
