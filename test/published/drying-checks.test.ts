import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { dryingEnd } from '#lib/science/drying-posterior.ts';
import { dryBasis, equilibriumMoisture } from '#lib/science/gab-isotherm.ts';
import { moistureRatio } from '#lib/science/page-drying.ts';
import { bisection } from '#lib/science/root.ts';
import { celsius } from '#lib/units/quantity.ts';
import { normalDraws } from '#test/support/normal-draws.ts';
import { type QuantityLine, residueOf } from './check-table.ts';
import { DRYING_ROWS, DRYING_TOLERANCES } from './drying-checks.ts';
import { renderCheckTable } from './render-check-table.ts';

const quantities = [...new Set(DRYING_ROWS.map((r) => r.quantity))];
const residue = (r: (typeof DRYING_ROWS)[number]): number => residueOf(r.computed, r.published);

describe('the published figures of drying and dried storage', () => {
  it('are 45, each with a source, computed, and each quantity with a tolerance', () => {
    assert.equal(DRYING_ROWS.length, 45);
    for (const r of DRYING_ROWS) {
      assert.ok(Number.isFinite(r.computed), r.what);
      assert.ok(r.source.length > 10 && r.published.low <= r.published.high, r.what);
    }
    assert.deepEqual(Object.keys(DRYING_TOLERANCES).sort(), [...quantities].sort());
  });

  it.each(quantities)('are met for %s, but for the rows it is known to miss', (quantity) => {
    const tolerance = DRYING_TOLERANCES[quantity];
    assert.ok(tolerance);
    for (const r of DRYING_ROWS.filter((row) => row.quantity === quantity)) {
      const e = residue(r);
      if (!r.miss) assert.ok(Math.abs(e) <= tolerance.max, `${r.what}: off by ${e}`);
      else {
        assert.ok(Math.abs(e - r.miss.residue) <= 0.006, `${r.what}: ${e} against ${r.miss.residue}`);
        assert.ok(Math.abs(e) > tolerance.max, `${r.what} is no miss any more`);
      }
    }
  });

  it('print one table', () => {
    const lines = quantities.map((quantity): QuantityLine => {
      const own = DRYING_ROWS.filter((r) => r.quantity === quantity);
      const errors = own.map((r) => Math.abs(residue(r)));
      const memory = own.filter((r) => r.from === 'memory').length;
      return {
        quantity,
        unit: own[0]?.unit ?? '',
        rows: own.length,
        misses: own.filter((r) => r.miss).length,
        meanError: errors.reduce((sum, e) => sum + e, 0) / errors.length,
        worstError: Math.max(...errors),
        fitted: DRYING_TOLERANCES[quantity]?.fitted ?? null,
        memory: memory > 0 ? `${memory} of ${own.length} rows` : null,
      };
    });
    process.stdout.write(`\n${renderCheckTable(lines)}\n`);
    assert.equal(
      lines.reduce((sum, l) => sum + l.rows, 0),
      DRYING_ROWS.length,
    );
  });
});

type Curve = (hours: number) => number;
interface Generated {
  readonly name: string;
  /** Share of the removable water left, drawn anew for each run. */
  readonly curve: (normal: () => number) => Curve;
  /** Shape the prediction starts from: 1.3 in the table of first guesses for apple slices, 1.35 advised for fruit pieces. */
  readonly n: number;
  readonly moistureSd: number;
  /** Sd of what a weighing shows, in moisture ratio. */
  readonly noise: number;
  /** kg water per kg dry that the room's air leaves; none in a dryer. */
  readonly leftX?: number;
}

const page =
  (kappa: number, n: number): Curve =>
  (hours) =>
    moistureRatio({ kappa, n }, hours);
/** Shape of the published run (Royen et al. 2020) as a Midilli curve refitted in hours: not of this program's family. */
const midilli =
  (speed: number): Curve =>
  (hours) =>
    0.987 * Math.exp(-0.276 * (hours * speed) ** 1.177) - 0.006_58 * hours * speed;

const GENERATED: readonly Generated[] = [
  {
    name: 'spread as the method states it',
    curve: (z) => page(0.35 * Math.exp(0.5 * z()), 1.2 + 0.08 * z()),
    n: 1.2,
    moistureSd: 0.015,
    noise: 0.015,
  },
  {
    name: 'one shape, weighed to 2 g in 1000',
    curve: (z) => page(0.35 * Math.exp(0.4 * z()), 1.2),
    n: 1.2,
    moistureSd: 0.012,
    noise: 0.0023,
  },
  ...[1.3, 1.35].map((n) => ({
    name: `shape of the published run, weighed to 2 g in 1000, first guess n ${n}`,
    curve: (z: () => number) => midilli(Math.exp(0.4 * z())),
    n,
    moistureSd: 0.012,
    noise: 0.0023,
  })),
];
const SILL: Generated = {
  name: 'on a windowsill of 22 °C and 45 %, spread as the method states it',
  curve: (z) => page(0.012 * Math.exp(0.5 * z()), 1.2 + 0.08 * z()),
  n: 1.2,
  moistureSd: 0.015,
  noise: 0.015,
  leftX: equilibriumMoisture({ activity: 0.45, t: celsius(22) }),
};
const RUNS = 400;

/** Runs whose end lies within the band from p10 to p90, weighed at 25 and 50 % of the time. */
function covered({ curve, n, moistureSd, noise, leftX = 0 }: Generated): { share: number; median: number } {
  let inside = 0;
  const errors: number[] = [];
  for (let run = 0; run < RUNS; run++) {
    const normal = normalDraws(run * 104_729 + 7);
    const left = curve(normal);
    const w0 = 0.856 + moistureSd * normal();
    const start = dryBasis(w0);
    const toGo = start - leftX;
    const ratio = (dryBasis(0.2) - leftX) / toGo;
    const truth = bisection((hours) => left(hours) - ratio, { low: 0.01, high: leftX > 0 ? 5000 : 200 });
    const weighings = [0.25, 0.5].map((share) => {
      const hours = share * truth;
      return { hours, grams: Math.min(1000, 1000 * (1 - w0) * (1 + leftX + toGo * (left(hours) + noise * normal()))) };
    });
    const kappa = leftX > 0 ? 0.012 : 0.35;
    const end = dryingEnd({ freshG: 1000, w0: 0.856, wt: 0.2, prior: { kappa, n }, leftX, weighings });
    assert.ok(end);
    if (end.p10 <= truth && truth <= end.p90) inside++;
    errors.push(Math.abs(end.p50 / truth - 1));
  }
  return { share: inside / RUNS, median: errors.sort((a, b) => a - b)[RUNS / 2] ?? Number.NaN };
}

describe('the band of the predicted end, named 80 %', () => {
  const results = [...GENERATED, SILL].map((g) => ({ name: g.name, ...covered(g) }));

  it('holds 75 to 85 % of runs that vary as the method states', () => {
    assert.ok(results[0] && results[0].share >= 0.75 && results[0].share <= 0.85, `${results[0]?.share}`);
  });

  it('holds 75 to 85 % of runs on a windowsill too, where the air leaves water in the fruit', () => {
    const share = results.at(-1)?.share ?? 0;
    assert.ok(share >= 0.75 && share <= 0.85, `${share}`);
  });

  it('is wider than its name where scale and shape are steadier', () => {
    assert.ok((results[1]?.share ?? 0) > 0.85);
  });

  it('falls short on curves of another family from the table’s own shape 1.3: a known miss, at 67 %; from 1.35 it holds', () => {
    assert.ok(Math.abs((results[2]?.share ?? 0) - 0.673) < 0.03, `${results[2]?.share}`);
    assert.ok((results[3]?.share ?? 0) >= 0.75, `${results[3]?.share}`);
  });

  it('prints its coverage', () => {
    const row = (r: (typeof results)[number]) =>
      `| ${r.name} | ${RUNS} | ${(100 * r.share).toFixed(1)} % | ${(100 * r.median).toFixed(1)} % |`;
    const table = [
      '| Generated runs | Runs | In the band | Median error |',
      '| --- | --- | --- | --- |',
      ...results.map(row),
    ];
    process.stdout.write(`\n${table.join('\n')}\n`);
    assert.equal(table.length, GENERATED.length + 3);
  });
});
