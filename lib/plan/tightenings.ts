/** Switches for everything that makes the model smaller or its relaxation stronger without changing its best plan. */
export interface Tightenings {
  /** Lots alike in every respect are drawn as one. */
  lotClasses: boolean;
  /** No columns for a recipe and day without hands or with less fruit than the least batch. */
  prune: boolean;
  /** Batch ceilings from hours, burners, vessels, loads and fruit of the day. */
  tight: boolean;
  /** Never more batches than the fruit fills: fewer fuller ones are never worse. Dominance, so it can forbid a person's own plan. */
  domBatches: boolean;
  /** Batches are counted by canner loads; off: a separate whole load count, which lets loads straddle batches (a relaxation). */
  loadModes: boolean;
  /** Worth of a product is at most the worth of its batches, each full and alone. */
  cutValue: boolean;
  /** The first litres of a product need a batch of it. */
  cutKind: boolean;
  /** The first litres of a product need a set-up of it. */
  cutSetup: boolean;
  /** Where only one batch is possible, it is its own set-up. */
  singleSetup: boolean;
}

export const ALL_TIGHTENINGS: Tightenings = {
  lotClasses: true,
  prune: true,
  tight: true,
  domBatches: true,
  loadModes: true,
  cutValue: true,
  cutKind: true,
  cutSetup: true,
  singleSetup: true,
};

/** The loose form into which any plan a person could carry out fits. */
export const LOOSE: Tightenings = {
  ...ALL_TIGHTENINGS,
  tight: false,
  domBatches: false,
  cutValue: false,
  cutKind: false,
  cutSetup: false,
  prune: false,
};
