/**
 * Start and finish of every step of a day's batches. The plan counts hours; this puts them in order, and never books a
 * person, ring, vessel or canner twice. What does not fit is told, with the step that found no room.
 */
import { type Booking, DayBook, type DayCanner, type Need } from './day-book.ts';
import type { PlanInstance } from './instance.ts';
import type { Plan } from './plan.ts';
import { modeOf, recipeOf } from './plan-tally.ts';
import { type SingleBatch, splitBatches } from './split-batches.ts';

/** Hours of the clock, 0 to 24. */
export interface KitchenDay {
  fromH: number;
  toH: number;
  rings: number;
  canners: readonly DayCanner[];
  people: readonly { id: string; fromH: number; toH: number; hours: number }[];
}

export type StepName = 'set up' | 'cook' | 'can' | 'clear up';

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
  /** The next step begins so many hours after this one began (`hours`): nobody stands by while a canner boils. */
  nextAfter?: number;
}

interface StepHours {
  person: number;
  ring?: number;
  vessel?: number;
  canner?: number;
  load?: Need['load'];
}

function stepsOf(p: PlanInstance, b: SingleBatch, first: boolean): Step[] {
  const recipe = recipeOf(p, b.recipe);
  const mode = modeOf(recipe, b.mode);
  if (!recipe || !mode) return [];
  const step = (name: StepName, h: StepHours): Step => {
    const needs: Need[] = [
      { kind: 'person', hours: h.person },
      { kind: 'ring', hours: h.ring ?? 0 },
      { kind: `vessel ${mode.vessel}`, hours: h.vessel ?? 0 },
      { kind: 'canner', hours: h.canner ?? 0, ...(h.load ? { load: h.load } : {}) },
    ];
    return {
      step: name,
      hours: Math.max(h.person, h.ring ?? 0, h.canner ?? 0),
      needs: needs.filter((n) => n.hours > 0),
    };
  };
  const hands = mode.activeH + b.kg * (mode.activePerKg ?? 0);
  const ring = mode.burnerH + b.kg * (mode.burnerPerKg ?? 0);
  const cans = recipe.canner && b.loads > 0;
  // Jars are filled when the pan comes off the ring; what hands have left to do then is washing up.
  const after = cans && ring > 0 ? Math.max(0, hands - ring) : 0;
  const can = { person: recipe.canner?.activeH ?? 0, ring: recipe.canner?.burnerH ?? 0 };
  const canner = Math.max(can.person, can.ring);
  const load = loadOf(p, b);
  return [
    ...(first && (recipe.setupH ?? 0) > 0 ? [step('set up', { person: recipe.setupH ?? 0 })] : []),
    step('cook', { person: hands - after, ring, vessel: mode.vesselH }),
    ...Array.from({ length: cans ? b.loads : 0 }, (_, i) => ({
      ...step('can', { ...can, canner, ...(load ? { load } : {}) }),
      ...(i === b.loads - 1 ? { nextAfter: can.person } : {}),
    })),
    ...(after > 0 ? [step('clear up', { person: after })] : []),
  ];
}

/** Jars of the roomiest kind in one load; as many as the data say one load holds, at most. */
function loadOf(p: PlanInstance, b: SingleBatch): Need['load'] | null {
  const recipe = recipeOf(p, b.recipe);
  const jar = p.jars
    .filter((j) => recipe?.jars?.includes(j.id))
    .sort((x, y) => y.perLoad * y.litres - x.perLoad * x.litres)[0];
  if (!recipe || !jar) return null;
  const jars = Math.ceil((b.kg * recipe.yieldPerKg) / jar.litres / b.loads - 1e-6);
  return { jar: jar.id, count: Math.min(jar.perLoad, jars) };
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
    ready = found.fromH + (s.nextAfter ?? s.hours);
  }
  return { steps: placed };
}
