/**
 * What one more hour, burner, dozen lids or metre of shelf would bring, by planning again with it from the plan in hand.
 * The duals of a programme with its batches fixed mislead, so nothing is read off them here.
 */
import { checkPlan } from './check-plan.ts';
import type { PlanDay, PlanInstance } from './instance.ts';
import type { Plan } from './plan.ts';
import type { SolveHooks } from './solve-options.ts';
import { solvePlan } from './solve-plan.ts';

export const MORE_OF = ['hour', 'burner', 'lids', 'shelf'] as const;
export type MoreOf = (typeof MORE_OF)[number];

export interface OneMore {
  what: MoreOf;
  /** Money the plan gains; at least so much, for a longer search may find more. */
  gain: number;
  /** Usable fruit saved with it, kg; below 0 where worth more means losing more. */
  savedKg: number;
}

const LIDS = 'lid-regular';
const DOZEN = 12;

/** `shelfMetreL` litres of room a metre of shelf holds. */
export function withOneMore(p: PlanInstance, what: MoreOf, shelfMetreL: number): PlanInstance {
  switch (what) {
    case 'hour':
      return { ...p, days: p.days.map((d, day) => (day === 0 ? longer(d) : d)) };
    case 'burner':
      return { ...p, days: p.days.map((d) => ({ ...d, burner: d.burner + openHours(d) })) };
    case 'lids':
      return { ...p, materials: p.materials.map((m) => (m.id === LIDS ? { ...m, stock: m.stock + DOZEN } : m)) };
    case 'shelf':
      return {
        ...p,
        storage: p.storage.map((s) =>
          s.place === 'shelf' ? { ...s, free: s.free.map((litres) => litres + shelfMetreL) } : s,
        ),
      };
  }
}

/** Hours the kitchen is open: a vessel can be used as long as it is. */
const openHours = (d: PlanDay): number => Math.max(0, ...Object.values(d.vesselH ?? { any: d.active }));

/** One hour more of one person, with stove and pans as long. */
function longer({ people: _, ...d }: PlanDay): PlanDay {
  const open = openHours(d);
  return {
    ...d,
    active: d.active + 1,
    burner: open > 0 ? (d.burner * (open + 1)) / open : d.burner,
    ...(d.vesselH ? { vesselH: Object.fromEntries(Object.entries(d.vesselH).map(([id, h]) => [id, h + 1])) } : {}),
  };
}

/** Days in which the batches may change; all later ones are held, so that a second of search is enough to tell. */
const NEXT_DAYS = 3;
export const nextDays = (_: string, day: number): boolean => day < NEXT_DAYS;

/** Measured against the same plan with the same more at hand and not used, so that lids left over bring nothing. */
export async function oneMore(
  p: PlanInstance,
  inHand: Plan,
  ask: { what: MoreOf; shelfMetreL: number; seconds: number; seed: number },
  hooks: SolveHooks = {},
): Promise<OneMore> {
  const more = withOneMore(p, ask.what, ask.shelfMetreL);
  const solved = await solvePlan(
    more,
    { seconds: ask.seconds, seed: ask.seed, start: inHand, fromStart: true, focus: nextDays },
    hooks,
  );
  const lost = (plan: Plan) => plan.wasted.reduce((n, w) => n + w.kg, 0);
  return {
    what: ask.what,
    gain: Math.max(0, solved.worth - checkPlan(more, inHand).worth.total),
    savedKg: lost(inHand) - lost(solved.plan),
  };
}
