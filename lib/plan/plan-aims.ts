/**
 * What else than worth a person may want of a plan. The data stay as they are and every limit with them; only what the
 * search looks for changes, so that each plan stands beside the others and is measured by the same worths.
 */
import type { PlanCheck } from './check-plan.ts';
import type { PlanInstance } from './instance.ts';
import type { Plan } from './plan.ts';

export const PLAN_AIMS = ['most-kept', 'least-time', 'least-bought'] as const;
export type PlanAim = (typeof PLAN_AIMS)[number];

/**
 * Estimates: a lost kilogram counts as much as a litre of jam; an hour three times, so that only batches well worth an
 * evening are left; what is bought ten times its price, so that what is at hand goes first.
 */
const LOST_KG = 15;
const HOUR_TIMES = 3;
const PRICE_TIMES = 10;

export function aimedAt(p: PlanInstance, aim: PlanAim): PlanInstance {
  const { weights } = p;
  switch (aim) {
    case 'most-kept':
      return { ...p, weights: { ...weights, waste: weights.waste + LOST_KG } };
    case 'least-time':
      return { ...p, weights: { ...weights, labour: weights.labour * HOUR_TIMES } };
    case 'least-bought':
      return {
        ...p,
        materials: p.materials.map((m) => (m.price === undefined ? m : { ...m, price: m.price * PRICE_TIMES })),
      };
  }
}

/** The figure an aim makes small: kg lost, hours of hands, money for what is bought. */
export function aimFigure(p: PlanInstance, aim: PlanAim, { plan, check }: { plan: Plan; check: PlanCheck }): number {
  switch (aim) {
    case 'most-kept':
      return plan.wasted.reduce((n, w) => n + w.kg, 0);
    case 'least-time':
      return check.tally.handHours.reduce((n, h) => n + h, 0);
    case 'least-bought':
      return moneySpent(p, plan);
  }
}

export const moneySpent = (p: PlanInstance, plan: Plan): number =>
  plan.bought.reduce((n, b) => n + b.amount * (p.materials.find((m) => m.id === b.material)?.price ?? 0), 0);

/** Below this (kg, hours, money) or a twentieth two plans are alike in an aim. */
const LEAST_STEP = 0.5;

export const trulyBetter = (figure: number, than: number): boolean =>
  than - figure >= Math.max(LEAST_STEP, Math.abs(than) / 20);
