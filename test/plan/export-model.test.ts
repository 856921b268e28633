import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { describe, it } from 'vitest';
import { buildModel } from '#lib/plan/build-model.ts';
import { exportModel } from '#lib/plan/export-model.ts';
import { openSolver } from '#lib/plan/solver.ts';
import { ALL_TIGHTENINGS, type Tightenings } from '#lib/plan/tightenings.ts';
import { goldenPlans } from '#test/plan/support/golden-plans.ts';
import { inventedSeason } from '#test/plan/support/invented-season.ts';

const isHere = (program: string) =>
  (process.env.PATH ?? '').split(delimiter).some((dir) => existsSync(join(dir, program)));
const SEASONS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
const proven = async (seed: number, tightenings: Partial<Tightenings> = {}) =>
  (await openSolver()).run(buildModel(inventedSeason(seed, 'tiny'), { tightenings }), {}).value as number;
const near = (got: number, want: number, what: string) =>
  assert.ok(Math.abs(got - want) < 1e-5 * Math.max(1, Math.abs(want)), `${what}: ${got} against ${want}`);

function inFolder<T>(text: string, work: (file: string, answer: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'plan-'));
  try {
    writeFileSync(join(folder, 'plan.lp'), text);
    return work(join(folder, 'plan.lp'), join(folder, 'answer.txt'));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const byGlpsol = (text: string) =>
  inFolder(text, (file, answer) => {
    execFileSync('glpsol', ['--lp', file, '-o', answer], { stdio: 'pipe' });
    return Number(/Objective:\s+\S+ = (\S+)/.exec(readFileSync(answer, 'utf8'))?.[1]);
  });
const byCbc = (text: string) =>
  inFolder(text, (file, answer) => {
    execFileSync('cbc', [file, 'ratioGap', '0', 'solve', 'solution', answer], { stdio: 'pipe' });
    return Math.abs(Number(/objective value\s+(\S+)/.exec(readFileSync(answer, 'utf8'))?.[1]));
  });

describe('the exported model', () => {
  it('has the same best worth when it is read back as text, for every small plan of one future', async () => {
    const solver = await openSolver();
    for (const g of goldenPlans) {
      const futures = g.futures ? { futures: g.futures, firstStageDays: g.firstStageDays ?? 0 } : {};
      const answer = solver.runText(exportModel(buildModel(g.instance, futures)));
      assert.equal(answer.status, 'Optimal', g.id);
      near(answer.value, g.expect.worth, g.id);
    }
  });

  it('has the same best worth for invented seasons', async () => {
    const solver = await openSolver();
    for (const seed of SEASONS)
      near(
        solver.runText(exportModel(buildModel(inventedSeason(seed, 'tiny')))).value,
        await proven(seed),
        `season ${seed}`,
      );
  });

  it('keeps the trade names and gives every column and row its own', () => {
    const text = exportModel(buildModel(inventedSeason(1, 'tiny')));
    assert.match(text, / kitchen_0: /);
    const rows = [...text.matchAll(/^ (\w+): /gm)].map((m) => m[1]);
    assert.equal(new Set(rows).size, rows.length);
    assert.ok(text.split('\n').every((line) => line.length < 512));
  });

  for (const [program, solve] of [
    ['glpsol', byGlpsol],
    ['cbc', byCbc],
  ] as const)
    it.skipIf(!isHere(program))(
      `is solved to the same worth by ${program}${isHere(program) ? '' : ' (not on the PATH here, so not tried)'}`,
      async () => {
        for (const g of goldenPlans.filter((x) => !x.futures && x.expect.worth > 0))
          near(solve(exportModel(buildModel(g.instance))), g.expect.worth, g.id);
        for (const seed of SEASONS)
          near(solve(exportModel(buildModel(inventedSeason(seed, 'tiny')))), await proven(seed), `season ${seed}`);
      },
    );
});

describe('tightenings on invented seasons', () => {
  for (const seed of SEASONS.slice(0, 6))
    it(`none of them changes the best worth of season ${seed}`, async () => {
      const all = await proven(seed);
      for (const flag of Object.keys(ALL_TIGHTENINGS) as (keyof Tightenings)[]) {
        const without = await proven(seed, { [flag]: false });
        // Without load modes, loads may straddle batches: a relaxation, never worth less.
        if (flag === 'loadModes') assert.ok(without >= all - 1e-5, `${flag}: ${without} against ${all}`);
        else near(without, all, flag);
      }
    });
});
