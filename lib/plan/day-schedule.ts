/**
 * Start and finish of every step of a day's batches. The plan counts hours; this puts them in order, and never books a
 * person, ring, vessel or canner twice. What does not fit is told, with the step that found no room.
 */
import { type Booking, DayBook, type Need } from './day-book.ts';
import type { PlanInstance } from './instance.ts';
import type { Plan } from './plan.ts';
import { modeOf, recipeOf } from './plan-tally.ts';
import { type SingleBatch, splitBatches } from './split-batches.ts';

/** Hours of the clock, 0 to 24. */
export interface KitchenDay {
  fromH: number;
  toH: number;
  rings: number;
  canners: number;
  people: readonly { id: string; fromH: number; toH: number; hours: number }[];
}

export type StepName = 'set up' | 'cook' | 'can';

export interface ScheduledStep extends SingleBatch {
  step: StepName;
  fromH: number;
  toH: number;
  bookings: readonly Booking[];
}

export interface DaySchedule {
  steps: readonly ScheduledStep[];
  notPlaced: readonly (SingleBatch & { step: StepName })[];
}

/** The order of batches with which most of them fit is kept: as planned, longest first, shortest first. */
export function daySchedule(p: PlanInstance, plan: Plan, day: number, kitchen: KitchenDay): DaySchedule {
  const planned = plan.cooked.filter((c) => c.day === day).flatMap((c) => splitBatches(p, c));
  const length = (b: SingleBatch) => stepsOf(p, b, true).reduce((n, s) => n + s.hours, 0);
  const longest = [...planned].sort((a, b) => length(b) - length(a));
  const tries = [planned, longest, [...longest].reverse()].map((order) => inOrder(p, order, kitchen));
  return tries.reduce((best, t) => (t.notPlaced.length < best.notPlaced.length ? t : best));
}

interface Step {
  step: StepName;
  hours: number;
  needs: readonly Need[];
}

function stepsOf(p: PlanInstance, b: SingleBatch, first: boolean): Step[] {
  const recipe = recipeOf(p, b.recipe);
  const mode = modeOf(recipe, b.mode);
  if (!recipe || !mode) return [];
  const step = (name: StepName, h: { person: number; ring: number; vessel?: number; canner?: number }): Step => {
    const needs = [
      { kind: 'person', hours: h.person },
      { kind: 'ring', hours: h.ring },
      { kind: `vessel ${mode.vessel}`, hours: h.vessel ?? 0 },
      { kind: 'canner', hours: h.canner ?? 0 },
    ];
    return { step: name, hours: Math.max(h.person, h.ring, h.canner ?? 0), needs: needs.filter((n) => n.hours > 0) };
  };
  const load = { person: recipe.canner?.activeH ?? 0, ring: recipe.canner?.burnerH ?? 0 };
  return [
    ...(first && (recipe.setupH ?? 0) > 0 ? [step('set up', { person: recipe.setupH ?? 0, ring: 0 })] : []),
    step('cook', {
      person: mode.activeH + b.kg * (mode.activePerKg ?? 0),
      ring: mode.burnerH + b.kg * (mode.burnerPerKg ?? 0),
      vessel: mode.vesselH,
    }),
    ...Array.from({ length: recipe.canner ? b.loads : 0 }, () =>
      step('can', { ...load, canner: Math.max(load.person, load.ring) }),
    ),
  ];
}

function inOrder(p: PlanInstance, order: readonly SingleBatch[], kitchen: KitchenDay): DaySchedule {
  const book = new DayBook(kitchen, p.vessels);
  const steps: ScheduledStep[] = [];
  const notPlaced: (SingleBatch & { step: StepName })[] = [];
  const setUp = new Map<string, number>();
  for (const b of order) {
    const known = setUp.get(b.recipe);
    const placed = placeBatch(book, stepsOf(p, b, known === undefined), known ?? kitchen.fromH);
    if ('failed' in placed) {
      notPlaced.push({ ...b, step: placed.failed });
      continue;
    }
    steps.push(...placed.steps.map((s) => ({ ...b, ...s })));
    const ready = placed.steps.find((s) => s.step === 'set up')?.toH ?? known ?? kitchen.fromH;
    setUp.set(b.recipe, ready);
  }
  return { steps: steps.sort((a, b) => a.fromH - b.fromH), notPlaced };
}

type Placed = { steps: Pick<ScheduledStep, 'step' | 'fromH' | 'toH' | 'bookings'>[] } | { failed: StepName };

/** All steps of a batch one after the other, or none of them. */
function placeBatch(book: DayBook, steps: readonly Step[], from: number): Placed {
  const placed: Extract<Placed, { steps: unknown }>['steps'] = [];
  let ready = from;
  for (const s of steps) {
    const found = book.earliest(s.needs, ready);
    if (!found) {
      for (const x of placed) book.release(x.bookings);
      return { failed: s.step };
    }
    book.take(found.bookings);
    placed.push({ step: s.step, fromH: found.fromH, toH: found.fromH + s.hours, bookings: found.bookings });
    ready = found.fromH + s.hours;
  }
  return { steps: placed };
}
