/**
 * The only door to the solver (HiGHS, compiled to WebAssembly). One run = one model in the solver's memory, always
 * given back. Runs block the thread: call from a worker.
 */
import highsLoader, { type Highs, type HighsCallbackMap, type Model, type ModelData } from 'highs';
import type { SparseModel } from './sparse-model.ts';

export interface SolverRequest {
  /** Bounds in place of the model's own, e.g. batches held fast. */
  lower?: Float64Array;
  upper?: Float64Array;
  /** Columns to treat as continuous: all of them, or those marked 1. */
  relaxed?: 'all' | Uint8Array;
  /** A full plan to begin with; ignored by the solver when it does not fit. */
  start?: Float64Array;
  seconds?: number;
  nodes?: number;
  /** Stop at this (bound - plan) / plan; default 0. */
  gap?: number;
  seed?: number;
  cancelled?: () => boolean;
  onImproved?: (found: { value: number; bound: number; columns: Float64Array; seconds: number }) => void;
}

export type SolverStatus =
  | 'optimal'
  | 'gap reached'
  | 'time limit'
  | 'node limit'
  | 'interrupted'
  | 'infeasible'
  | 'unbounded'
  | 'failed';

export interface SolverAnswer {
  status: SolverStatus;
  /** null when no plan was found. */
  columns: Float64Array | null;
  value: number | null;
  /** Proven: no plan of this model is worth more. */
  bound: number;
  /** Row duals per unit of each limit; only for a relaxation. */
  duals: Float64Array | null;
  seconds: number;
  nodes: number;
}

export interface Solver {
  version: string;
  run(model: SparseModel, request: SolverRequest): SolverAnswer;
  /** Solves model text in CPLEX LP format; for checking the export. */
  runText(text: string): { status: string; value: number };
}

let runtime: Promise<Highs> | undefined;

/** Loads the solver once per thread. */
export async function openSolver(): Promise<Solver> {
  runtime ??= highsLoader();
  const highs = await runtime;
  return {
    version: `HiGHS ${highs.version.string}`,
    run: (model, request) =>
      highs.withModel(modelData(highs, model, request), (native) => runOnce(highs, native, request)),
    runText: (text) => {
      const answer = highs.solve(text, { output_flag: false, mip_rel_gap: 0 });
      return { status: answer.Status, value: answer.ObjectiveValue };
    },
  };
}

function modelData(highs: Highs, model: SparseModel, request: SolverRequest): ModelData {
  const starts = new Int32Array(model.rows.length + 1);
  model.rows.forEach((r, i) => {
    starts[i + 1] = (starts[i] as number) + r.columns.length;
  });
  const type = highs.constants.variableType;
  const isWhole = (j: number) =>
    model.columns[j]?.whole === true && request.relaxed !== 'all' && request.relaxed?.[j] !== 1;
  const base = {
    numCols: model.columns.length,
    numRows: model.rows.length,
    sense: highs.constants.objectiveSense.maximize,
    colCost: Float64Array.from(model.columns, (c) => c.cost),
    colLower: request.lower ?? Float64Array.from(model.columns, (c) => c.lower),
    colUpper: request.upper ?? Float64Array.from(model.columns, (c) => c.upper),
    rowLower: Float64Array.from(model.rows, (r) => r.lower),
    rowUpper: Float64Array.from(model.rows, (r) => r.upper),
    matrix: {
      format: 'csr' as const,
      numCols: model.columns.length,
      numRows: model.rows.length,
      starts,
      indices: Int32Array.from(model.rows.flatMap((r) => r.columns as number[])),
      values: Float64Array.from(model.rows.flatMap((r) => r.factors as number[])),
    },
  };
  const whole = model.columns.map((_, j) => (isWhole(j) ? type.integer : type.continuous));
  return (whole.includes(type.integer) ? { ...base, integrality: whole } : base) as ModelData;
}

function runOnce(highs: Highs, native: Model, request: SolverRequest): SolverAnswer {
  native.options.set({
    output_flag: false,
    random_seed: request.seed ?? 0,
    mip_rel_gap: request.gap ?? 0,
    ...(request.seconds === undefined ? {} : { time_limit: Math.max(0.05, request.seconds) }),
    ...(request.nodes === undefined ? {} : { mip_max_nodes: request.nodes }),
  });
  if (request.start) native.setSolution({ colValue: request.start });
  native.run(callbacks(highs, request));
  return answerOf(highs, native);
}

function callbacks(highs: Highs, request: SolverRequest): HighsCallbackMap {
  const type = highs.constants.callbackType;
  const poll = (event: { interrupt(): void }): undefined => {
    if (request.cancelled?.()) event.interrupt();
  };
  return {
    [type.mipInterrupt]: poll,
    [type.simplexInterrupt]: poll,
    [type.mipImprovingSolution]: (event: {
      data: {
        mip_solution?: Float64Array;
        objective_function_value?: number;
        mip_dual_bound?: number;
        running_time?: number;
      };
    }): undefined => {
      const d = event.data;
      if (!d.mip_solution || d.objective_function_value === undefined) return;
      request.onImproved?.({
        value: d.objective_function_value,
        bound: d.mip_dual_bound ?? Infinity,
        columns: d.mip_solution,
        seconds: d.running_time ?? 0,
      });
    },
  } as HighsCallbackMap;
}

function answerOf(highs: Highs, native: Model): SolverAnswer {
  const info = (name: string) => Number(native.info.get(name));
  const found = info('primal_solution_status') === 2;
  const solution = found ? native.getSolution() : null;
  const relaxed = info('mip_node_count') < 0;
  const value = found ? native.getObjectiveValue() : null;
  const status = statusOf(highs, native);
  const dualBound = relaxed ? (status === 'optimal' ? (value as number) : Infinity) : info('mip_dual_bound');
  const bound = Number.isFinite(dualBound) ? dualBound : Infinity;
  const proven = value !== null && bound - value <= 1e-6 * Math.max(1, Math.abs(value));
  return {
    status: status === 'optimal' && !relaxed && !proven ? 'gap reached' : status,
    columns: solution?.colValue ? Float64Array.from(solution.colValue) : null,
    value,
    bound,
    duals: relaxed && solution?.rowDual ? Float64Array.from(solution.rowDual) : null,
    seconds: native.getRunTime(),
    nodes: Math.max(0, info('mip_node_count')),
  };
}

function statusOf(highs: Highs, native: Model): SolverStatus {
  const s = highs.constants.modelStatus;
  const names: readonly (readonly [number, SolverStatus])[] = [
    [s.optimal, 'optimal'],
    [s.timeLimit, 'time limit'],
    [s.interrupted, 'interrupted'],
    [s.infeasible, 'infeasible'],
    [s.unbounded, 'unbounded'],
    [s.unboundedOrInfeasible, 'unbounded'],
    [s.solutionLimit, 'node limit'],
  ];
  const code = native.getModelStatus() as number;
  return names.find(([c]) => c === code)?.[1] ?? 'failed';
}
