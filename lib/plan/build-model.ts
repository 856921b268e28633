/** Writes an instance as a mixed-integer programme: continuous kilograms, whole batches, named sparse rows. */

import { instanceFaults } from './check-instance.ts';
import { acid } from './constraints/acid.ts';
import { batchSize } from './constraints/batch-size.ts';
import { burner } from './constraints/burner.ts';
import { canner } from './constraints/canner.ts';
import { count } from './constraints/count.ts';
import { cuts } from './constraints/cuts.ts';
import { dryer } from './constraints/dryer.ts';
import { freeze } from './constraints/freeze.ts';
import { jar } from './constraints/jar.ts';
import { kitchen } from './constraints/kitchen.ts';
import { leftover } from './constraints/leftover.ts';
import { lot } from './constraints/lot.ts';
import { mix } from './constraints/mix.ts';
import { outlet } from './constraints/outlet.ts';
import { pectin } from './constraints/pectin.ts';
import { type ForcedRecipe, pin } from './constraints/pin.ts';
import { pool } from './constraints/pool.ts';
import { same } from './constraints/same.ts';
import { setUpOnce } from './constraints/set-up.ts';
import { share } from './constraints/share.ts';
import { soft } from './constraints/soft.ts';
import { stock } from './constraints/stock.ts';
import { store } from './constraints/store.ts';
import { variety } from './constraints/variety.ts';
import { vessel } from './constraints/vessel.ts';
import { want } from './constraints/want.ts';
import type { PlanFuture, PlanInstance } from './instance.ts';
import { kitchenSlots } from './kitchen-slots.ts';
import { lotClasses } from './lot-classes.ts';
import { ModelBuilder } from './model-builder.ts';
import { objective } from './objective.ts';
import { PlanFrame } from './plan-frame.ts';
import type { SparseModel } from './sparse-model.ts';
import { ALL_TIGHTENINGS, type Tightenings } from './tightenings.ts';
import { variables } from './variables.ts';

const RULES = [
  lot,
  pool,
  outlet,
  mix,
  share,
  soft,
  batchSize,
  count,
  setUpOnce,
  kitchen,
  burner,
  vessel,
  canner,
  pectin,
  acid,
  jar,
  dryer,
  freeze,
  leftover,
  stock,
  store,
  want,
  variety,
  same,
  cuts,
];

export interface BuildOptions {
  tightenings?: Partial<Tightenings>;
  wholeJars?: boolean;
  forced?: ForcedRecipe;
  /** Possible seasons in place of the instance's lots; batches and purchases of the first days are then shared. */
  futures?: readonly PlanFuture[];
  firstStageDays?: number;
}

/** Throws RangeError naming every fault of the data; never returns a model that no plan fits. */
export function buildModel(instance: PlanInstance, options: BuildOptions = {}): SparseModel {
  const faults = instanceFaults(instance);
  if (faults.length) throw new RangeError(`the plan's data do not fit together: ${faults.join('; ')}`);
  const builder = new ModelBuilder();
  const futures = options.futures ?? [{ probability: 1, lots: instance.lots }];
  const tightenings = validTightenings(instance, options);
  futures.forEach((future, i) => {
    const frame = frameOf({ instance, options, tightenings, builder, future, number: i });
    variables(frame);
    objective(frame);
    for (const rule of RULES) rule(frame);
    pin(frame, options.forced);
  });
  return builder.finish();
}

/** Dominance and ceilings may forbid what a person pinned, planned before, or asks about; the worth cut needs one future without pins. */
function validTightenings(instance: PlanInstance, options: BuildOptions): Tightenings {
  const asked = { ...ALL_TIGHTENINGS, ...options.tightenings };
  const pinned = (instance.pins?.length ?? 0) > 0 || options.forced?.made === true;
  const several = (options.futures?.length ?? 1) > 1;
  return {
    ...asked,
    cutValue: asked.cutValue && !pinned && !several,
    domBatches: asked.domBatches && !pinned && !several && !instance.former && !options.wholeJars,
    tight: asked.tight && !several,
    prune: asked.prune && !several,
    cutKind: asked.cutKind && !several,
  };
}

function frameOf(x: {
  instance: PlanInstance;
  options: BuildOptions;
  tightenings: Tightenings;
  builder: ModelBuilder;
  future: PlanFuture;
  number: number;
}): PlanFrame {
  const data = { ...x.instance, lots: x.future.lots };
  const pinned = (recipe: string, day: number) =>
    (data.pins ?? []).filter((p) => p.recipe === recipe && p.day === day).reduce((n, p) => n + p.batches, 0);
  const several = (x.options.futures?.length ?? 1) > 1;
  return new PlanFrame({
    builder: x.builder,
    data,
    tightenings: x.tightenings,
    classes: lotClasses(data.lots, x.tightenings.lotClasses),
    slots: kitchenSlots(data, { tightenings: x.tightenings, pinned }),
    future: x.number,
    probability: x.future.probability,
    firstStageDays: several ? (x.options.firstStageDays ?? 0) : 0,
    forgiving: (data.pins?.length ?? 0) > 0 || several,
    wholeJars: x.options.wholeJars ?? false,
  });
}
