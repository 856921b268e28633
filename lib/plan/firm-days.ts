/**
 * How firm the next days are: the plan made again for a harvest that comes short and for one that comes heavy, with whole
 * batches on the next days and the later ones relaxed (they will be planned again anyway). Moving a batch costs what it always costs.
 */
import { buildModel } from './build-model.ts';
import type { FormerPlan, PlanInstance, PlanLot } from './instance.ts';
import { batchCount, type Plan } from './plan.ts';
import { openSolver, type SolverRequest } from './solver.ts';

export interface FirmBatch {
  recipe: string;
  day: number;
  /** Batches in the plan in hand, and with a short and a heavy harvest. */
  planned: number;
  short: number;
  heavy: number;
}

/** Days looked at. */
export const FIRM_DAYS = 3;

/** Null when one of the two was not solved in its time. */
export async function firmDays(
  p: PlanInstance,
  plan: Plan,
  ask: {
    short: readonly PlanLot[];
    heavy: readonly PlanLot[];
    changeWeight: number;
    limits: Pick<SolverRequest, 'seconds' | 'nodes' | 'gap' | 'seed' | 'cancelled'>;
  },
): Promise<FirmBatch[] | null> {
  const planned = countsOf(plan);
  const former: FormerPlan = {
    weight: ask.changeWeight,
    batches: [...planned.values()].map(({ recipe, day, count }) => ({ recipe, day, batches: count })),
  };
  const [short, heavy] = [
    await nextBatches({ ...p, lots: ask.short, former }, ask.limits),
    await nextBatches({ ...p, lots: ask.heavy, former }, ask.limits),
  ];
  if (!short || !heavy) return null;
  const near = new Map([...planned, ...short, ...heavy].filter(([, c]) => c.day < FIRM_DAYS && c.count > 0));
  return [...near.entries()]
    .map(([key, { recipe, day }]) => ({
      recipe,
      day,
      planned: planned.get(key)?.count ?? 0,
      short: short.get(key)?.count ?? 0,
      heavy: heavy.get(key)?.count ?? 0,
    }))
    .sort((a, b) => a.day - b.day || (a.recipe < b.recipe ? -1 : 1));
}

type Counts = Map<string, { recipe: string; day: number; count: number }>;

function counted(list: readonly { recipe: string; day: number; count: number }[]): Counts {
  const by: Counts = new Map();
  for (const { recipe, day, count } of list) {
    const key = `${day}|${recipe}`;
    by.set(key, { recipe, day, count: (by.get(key)?.count ?? 0) + count });
  }
  return by;
}

const countsOf = (plan: Plan): Counts =>
  counted(plan.cooked.map((c) => ({ recipe: c.recipe, day: c.day, count: batchCount(c) })));

async function nextBatches(
  p: PlanInstance,
  limits: Pick<SolverRequest, 'seconds' | 'nodes' | 'gap' | 'seed' | 'cancelled'>,
): Promise<Counts | null> {
  const model = buildModel(p);
  const later = Uint8Array.from(model.columns, (c) => Number((c.ref.day ?? FIRM_DAYS) >= FIRM_DAYS));
  const { columns } = (await openSolver()).run(model, { ...limits, relaxed: later });
  if (!columns) return null;
  return counted(
    model.columns.flatMap((c, j) =>
      c.ref.kind === 'batches' && (c.ref.day ?? FIRM_DAYS) < FIRM_DAYS
        ? [{ recipe: c.ref.ids[0] ?? '', day: c.ref.day ?? 0, count: Math.round(columns[j] ?? 0) }]
        : [],
    ),
  );
}
