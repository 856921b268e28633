/** The demo's weeks as the plan sees them, and the same many times as large: so many households' fruit in one kitchen as much larger. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { PlanInstance } from '#lib/plan/instance.ts';
import { plainDate } from '#lib/units/plain-date.ts';
import { openContext } from '#lib/usecases/context.ts';
import { DEMO_PLACE, openDemo } from '#lib/usecases/open-demo.ts';
import { NOTHING_ASKED } from '#lib/usecases/plan-asked.ts';
import { proposePlan } from '#lib/usecases/propose-plan.ts';
import { seeded } from '#test/plan/support/invented-season.ts';
import { makeFile, openFile } from '#test/support/sqlite-file.ts';

const NOW = new Date('2026-01-20T10:00:00Z');

export async function demoWeek(day: string): Promise<PlanInstance> {
  const folder = mkdtempSync(join(tmpdir(), 'stillroom-bench-'));
  try {
    await makeFile(join(folder, 'demo.db'));
    const db = openFile(join(folder, 'demo.db'));
    await openDemo(db, plainDate(day), NOW);
    const ctx = await openContext(db, DEMO_PLACE, NOW);
    const proposal = ctx && (await proposePlan(ctx, NOTHING_ASKED));
    await db.$disconnect();
    if (!proposal) throw new Error(`no fruit on ${day}`);
    return proposal.instance;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Copies of crops, lots, recipes and wants, each lot up to a fifth heavier or lighter; every limit and stock as many times as large. */
export function timesAsLarge(p: PlanInstance, n: number): PlanInstance {
  if (n === 1) return p;
  const next = seeded(n);
  const copies = <T>(list: readonly T[], copy: (x: T, as: (id: string) => string) => T): T[] =>
    Array.from({ length: n }, (_, k) => list.map((x) => copy(x, (id) => `${id}#${k}`))).flat();
  return {
    ...p,
    crops: copies(p.crops, (c, as) => ({ ...c, id: as(c.id) })),
    lots: copies(p.lots, (l, as) => ({
      ...l,
      id: as(l.id),
      crop: as(l.crop),
      kg: Math.round(l.kg * (0.8 + 0.4 * next()) * 1000) / 1000,
    })),
    recipes: copies(p.recipes, (r, as) => ({
      ...r,
      id: as(r.id),
      product: as(r.product),
      fruit: r.fruit.map((f) => ({ ...f, crop: as(f.crop) })),
      ...(r.leftovers ? { leftovers: r.leftovers.map((x) => ({ ...x, crop: as(x.crop) })) } : {}),
    })),
    products: copies(p.products, (x, as) => ({ ...x, id: as(x.id) })),
    outlets: copies(p.outlets, (o, as) => ({ ...o, id: as(o.id), crop: as(o.crop) })),
    vessels: p.vessels.map((v) => ({ ...v, count: v.count * n })),
    materials: p.materials.map((m) => ({
      ...m,
      stock: m.stock * n,
      ...(m.maxBuy === undefined ? {} : { maxBuy: m.maxBuy * n }),
      ...(m.carryMax === undefined ? {} : { carryMax: m.carryMax * n }),
    })),
    days: p.days.map(({ people: _, ...d }) => ({
      ...d,
      active: d.active * n,
      overtime: d.overtime * n,
      burner: d.burner * n,
      cannerLoads: d.cannerLoads * n,
      dryer: d.dryer * n,
      ...(d.freezeKg === undefined ? {} : { freezeKg: d.freezeKg * n }),
    })),
    storage: p.storage.map((s) => ({ ...s, free: s.free.map((litres) => litres * n) })),
    ...(p.variety ? { variety: { ...p.variety, min: p.variety.min * n } } : {}),
  };
}
