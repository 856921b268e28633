/**
 * One plan and its time, in a process of its own so that its memory is its own: `plan-case.ts <instance.json> <seconds>`.
 * Prints one line of JSON.
 */
import { readFileSync } from 'node:fs';
import { buildModel } from '#lib/plan/build-model.ts';
import { checkPlan } from '#lib/plan/check-plan.ts';
import { greedyPlan } from '#lib/plan/greedy-plan.ts';
import type { PlanInstance } from '#lib/plan/instance.ts';
import type { Plan } from '#lib/plan/plan.ts';
import { solvePlan } from '#lib/plan/solve-plan.ts';

const [file = '', seconds = '60'] = process.argv.slice(2);
const instance = JSON.parse(readFileSync(file, 'utf8')) as PlanInstance;
const lostKg = (plan: Plan) => plan.wasted.reduce((n, w) => n + w.kg, 0);

const greedyBegan = performance.now();
const greedy = greedyPlan(instance);
const greedySeconds = (performance.now() - greedyBegan) / 1000;
const worths: { after: number; worth: number; bound: number | null }[] = [];
const began = performance.now();
const solved = await solvePlan(
  instance,
  { seconds: Number(seconds), seed: 1, gap: 0.001 },
  {
    onProgress: ({ worth, bound }) => worths.push({ after: (performance.now() - began) / 1000, worth, bound }),
  },
);
const model = buildModel(instance);
const { user, system } = process.cpuUsage();
process.stdout.write(
  `${JSON.stringify({
    columns: model.columns.length,
    rows: model.rows.length,
    whole: model.columns.filter((c) => c.whole).length,
    greedySeconds,
    greedy: { worth: checkPlan(instance, greedy).worth.total, lostKg: lostKg(greedy) },
    best: { worth: solved.worth, lostKg: lostKg(solved.plan), bound: solved.bound },
    worths,
    cpuSeconds: (user + system) / 1e6,
    peakMB: process.resourceUsage().maxRSS / 1024,
    totalKg: instance.lots.reduce((n, l) => n + l.kg, 0),
  })}\n`,
);
