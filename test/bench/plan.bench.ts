/**
 * How good the plan in hand is after so many seconds: the demo's weeks and the same 1, 2, 5 and 20 times as large, against the
 * greedy plan and against other solvers on the same exported model with the same time limit (cbc, native HiGHS; left out where
 * they are not installed). Run by hand: npx vitest bench --run --config test/vitest.config.ts test/bench/plan
 * PLAN_BENCH_WEEKS, PLAN_BENCH_SIZES and PLAN_BENCH_SECONDS (commas between) make it shorter. Seconds are this machine's, by the
 * clock; its load is printed beside them. The gap is against the bound proven by that second; the last against the final one.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { bench, describe } from 'vitest';
import { buildModel } from '#lib/plan/build-model.ts';
import { exportModel } from '#lib/plan/export-model.ts';
import type { PlanInstance } from '#lib/plan/instance.ts';
import { planGap } from '#lib/plan/solve-options.ts';
import { demoWeek, timesAsLarge } from './support/demo-weeks.ts';

const list = (name: string, usual: string) => (process.env[name] ?? usual).split(',');
const WEEKS = list('PLAN_BENCH_WEEKS', '2025-09-01,2025-09-08,2025-10-13');
const SIZES = list('PLAN_BENCH_SIZES', '1,2,5,20').map(Number);
const SECONDS = Number(process.env.PLAN_BENCH_SECONDS ?? '60');
const MARKS = [1, 3, 10, 60].filter((s) => s <= SECONDS);
const ONCE = { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 };
const say = (text: string) => void process.stdout.write(`${text}\n`);
const percent = (gap: number) => `${(100 * gap).toFixed(2)} %`;

interface Case {
  columns: number;
  rows: number;
  whole: number;
  greedySeconds: number;
  greedy: { worth: number; lostKg: number };
  best: { worth: number; lostKg: number; bound: number | null };
  worths: { after: number; worth: number; bound: number | null }[];
  cpuSeconds: number;
  peakMB: number;
  totalKg: number;
}
/** Plan and bound of another solver at the marks; null while it had none. */
type Marks = readonly { second: number; worth: number | null }[];

describe('the plan in hand', () => {
  for (const week of WEEKS)
    for (const size of SIZES)
      bench(`${week}, ${size} times`, async () => measure(week, size, timesAsLarge(await demoWeek(week), size)), ONCE);
});

function measure(week: string, size: number, instance: PlanInstance): void {
  const folder = mkdtempSync(join(tmpdir(), 'stillroom-plan-bench-'));
  try {
    const data = join(folder, 'instance.json');
    const model = join(folder, 'model.lp');
    writeFileSync(data, JSON.stringify(instance));
    writeFileSync(model, exportModel(buildModel(instance)));
    const ours = JSON.parse(
      execFileSync(
        process.execPath,
        ['--import', './test/support/run-typescript.mjs', 'test/bench/support/plan-case.ts', data, String(SECONDS)],
        { encoding: 'utf8', maxBuffer: 1e8 },
      ),
    ) as Case;
    tell(week, size, ours);
    for (const [name, run] of [
      ['cbc', byCbc],
      ['highs', byHighs],
    ] as const)
      if (isHere(name)) compare(name, run(model), ours);
      else say(`    ${name}: not installed, left out`);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const at = (c: Case, second: number) => c.worths.filter((w) => w.after <= second).at(-1);

function tell(week: string, size: number, c: Case): void {
  const marks = MARKS.map((s) => {
    const then = at(c, s);
    if (!then) return `${s} s none`;
    const gap = then.bound === null ? 'no bound' : percent(planGap(then.worth, then.bound));
    return `${s} s ${then.worth.toFixed(1)} (${gap})`;
  });
  say(
    `${week} x${size}: ${c.columns} columns x ${c.rows} rows, ${c.whole} whole; load ${loadavg()[0]?.toFixed(1)}, ${c.cpuSeconds.toFixed(0)} s of processor time
    first plan after ${c.greedySeconds.toFixed(2)} s (by hand), ${c.worths[0]?.after.toFixed(2)} s (search); ${marks.join(', ')}
    end ${c.best.worth.toFixed(1)}, ${boundText(c.best)}; peak ${c.peakMB.toFixed(0)} MB
    by hand ${c.greedy.worth.toFixed(1)}, ${c.greedy.lostKg.toFixed(1)} kg of ${c.totalKg.toFixed(1)} kg lost; found/by hand ${(c.best.worth / c.greedy.worth).toFixed(3)}, ${c.best.lostKg.toFixed(1)} kg lost`,
  );
}

/** Nothing is proven of a model too large for the time. */
const boundText = ({ worth, bound }: Case['best']): string =>
  bound === null ? 'no bound proven' : `bound ${bound.toFixed(1)} (${percent(planGap(worth, bound))})`;

function compare(name: string, marks: Marks, c: Case): void {
  const ratios = marks.map(({ second, worth }) => {
    const ours = at(c, second)?.worth;
    if (worth === null) return `${second} s: it had none`;
    return `${second} s: ${worth.toFixed(1)}, ours/its ${ours === undefined ? 'none' : (ours / worth).toFixed(3)}`;
  });
  say(`    ${name}: ${ratios.join('; ')}`);
}

const isHere = (program: string) =>
  (process.env.PATH ?? '').split(delimiter).some((dir) => existsSync(join(dir, program)));

const marksOf = (found: readonly { after: number; worth: number }[]): Marks =>
  MARKS.map((second) => ({ second, worth: found.filter((f) => f.after <= second).at(-1)?.worth ?? null }));

/** cbc tells each plan with its seconds; told to minimise the negative. */
function byCbc(model: string): Marks {
  const log = spawnSync('cbc', [model, '-timeMode', 'elapsed', '-sec', String(SECONDS), '-solve'], {
    encoding: 'utf8',
    maxBuffer: 1e8,
  }).stdout;
  return marksOf(
    [...log.matchAll(/Integer solution of (-?[\d.e+]+) found.*\(([\d.]+) seconds\)/g)].map((m) => ({
      worth: -Number(m[1]),
      after: Number(m[2]),
    })),
  );
}

/** Native HiGHS, one thread, run once for each mark: what it prints between has no fixed form. */
const byHighs = (model: string): Marks =>
  MARKS.map((second) => {
    const log = spawnSync('highs', ['--time_limit', String(second), '--parallel', 'off', model], {
      encoding: 'utf8',
      maxBuffer: 1e8,
    }).stdout;
    const worth = /Primal bound\s+(-?[\d.e+]+)/.exec(log)?.[1];
    return { second, worth: worth === undefined ? null : Number(worth) };
  });
