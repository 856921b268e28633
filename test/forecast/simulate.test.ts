import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import { allocOut, type Out } from '#lib/forecast/out.ts';
import type { EventSpec, Scenario } from '#lib/forecast/scenario.ts';
import { simulate } from '#lib/forecast/simulate.ts';
import vectors from '#test/golden/forecast-vectors.json' with { type: 'json' };
import { holding, product, runSeasons, scenario } from './toy-scenario.ts';

const stockOf = (out: Out, season: number, p = 0): number[] =>
  Array.from({ length: out.weeks }, (_, w) => out.stock[(w * out.products + p) * out.n + season] as number);

describe('seeded trajectories', () => {
  const g = vectors.golden.trajectories;
  const sc = scenario({
    products: [product({ ...g.product })],
    lots: g.lots.map((l) => ({ product: 0, ...l })),
    weeks: g.weeks,
  });
  const { out } = runSeasons(sc, { n: 3, seed: g.seed, method: 'mc' });

  test.each(g.seasons)('season $season keeps its golden weeks', (v) => {
    assert.deepEqual(stockOf(out, v.season), v.stockByWeek);
    assert.equal(out.expired[v.season], v.expired);
    assert.equal(out.unmet[v.season], v.unmet);
    assert.equal(out.empty[v.season], v.empty);
    assert.equal(out.runOut[v.season], v.runOut);
  });
});

describe('a season without chance', () => {
  const d = vectors.deterministic;
  const i = d.inputs;
  const gifts: EventSpec[] = i.gifts.map((g) => ({
    id: `gift ${g.week}`,
    week: g.week,
    product: 0,
    mean: g.jars,
    fixed: true,
    returnProb: i.giftReturnShare,
  }));
  const ledger = (weeks: number): Scenario =>
    scenario({
      weeks,
      containers: [{ id: 'jar', empties: i.empties, lid: 0, diameterCm: 7, heightCm: 10, ml: 350 }],
      lids: [{ id: 'lid', stock: i.lidStock, limited: i.lidsLimited }],
      crops: [{ id: 'fruit', keepPerWeek: i.keepPerWeek, freshKgPerWeek: i.freshKgPerWeek, onHandKg: i.onHandKg }],
      products: [product({ id: 'jam', ...i, perUnit: i.cmPerColumn, crop: 0 })],
      lots: i.lots.map((l) => ({ product: 0, ...l })),
      events: gifts,
      intentions: [
        {
          product: 0,
          target: i.target,
          fromWeek: i.fromWeek,
          toWeek: i.toWeek,
          maxBatchesPerWeek: i.maxBatchesPerWeek,
        },
      ],
      hours: new Array<number>(weeks).fill(i.hoursPerWeek),
      missWeekProb: i.missWeekProb,
    });
  const run = (weeks: number) =>
    runSeasons(ledger(weeks), { n: 1, seed: 1 }, [Float32Array.from(d.kg.slice(0, weeks))]).out;
  const out = run(d.W);
  const near = (got: number | undefined, want: number) =>
    assert.ok(Math.abs((got as number) - want) < 1e-4, `${got} is not ${want}`);

  test.each(d.rows)('week $week stands as in the ledger worked by hand', (row) => {
    assert.equal(out.stock[row.week], row.stock);
    assert.equal(out.empties[row.week], row.empties);
    assert.equal(out.lids[row.week], row.lidsUsed);
    near(out.store[row.week], row.shelfCm);
    near(run(row.week + 1).leftKg[0], row.fruitLeftKg);
  });

  test('the season adds up as in the ledger', () => {
    assert.equal(out.made[0], d.made);
    assert.equal(out.expired[0], d.expired);
    assert.equal(out.unmet[0], d.unmet);
    near(out.lostKg[0], d.lostKg);
    near(out.sugar[d.W - 1], d.sugarKg);
    assert.equal(out.firstMade[0], 1);
    assert.equal(out.runOut[0], 10);
  });
});

describe('engine against closed forms, 40,000 seasons', () => {
  const N = 40_000;
  const found = new Map<string, { got: number; se: number }>();
  const share = (count: number, want: number) => ({ got: count / N, se: Math.sqrt((want * (1 - want)) / N) });
  const mean = (values: ArrayLike<number>) => {
    let [sum, square] = [0, 0];
    for (let s = 0; s < N; s++) {
      sum += values[s] as number;
      square += (values[s] as number) ** 2;
    }
    return { got: sum / N, se: Math.sqrt((square / N - (sum / N) ** 2) / N) };
  };
  const countBy = (weeks: Uint8Array, before: number) => weeks.reduce((k, w) => k + (w < before ? 1 : 0), 0);
  const jarsEaten = (use: { jars: number; meanUse: number; rateCv?: number; seed: number }): Out => {
    const p = product({ id: 'jam', usePerWeek: use.meanUse / 50, rateCv: use.rateCv ?? 0 });
    return runSeasons(scenario({ products: [p], weeks: 50, lots: [{ product: 0, jars: use.jars, bestByWeek: 99 }] }), {
      n: N,
      seed: use.seed,
      method: 'mc',
    }).out;
  };
  const leftAtEnd = (out: Out) => Array.from({ length: N }, (_, s) => out.stock[49 * N + s] as number);

  for (const [i, v] of vectors.runout.entries()) {
    const p = product({ id: 'jam', usePerWeek: v.usePerWeek, rateCv: v.rateCv, dispersion: v.dispersion });
    const sc = scenario({ products: [p], lots: [{ product: 0, jars: v.jars, bestByWeek: 99 }] });
    const { out } = runSeasons(sc, { n: N, seed: 100 + i, method: 'mc' });
    for (const at of v.points) {
      found.set(`${v.name}: empty after ${at.afterWeeks}`, share(countBy(out.empty, at.afterWeeks), at.pEmpty));
      found.set(`${v.name}: unmet after ${at.afterWeeks}`, share(countBy(out.runOut, at.afterWeeks), at.pUnmet));
    }
  }
  for (const [i, v] of vectors.leftover.entries()) {
    const out = jarsEaten({ ...v, seed: 200 + i });
    found.set(`left of ${v.jars}`, mean(leftAtEnd(out)));
    found.set(`unmet of ${v.jars}`, mean(out.unmet));
  }
  for (const [i, v] of vectors.newsvendor.entries()) {
    const out = jarsEaten({ jars: v.q, meanUse: v.meanUse, rateCv: v.size ? 1 / Math.sqrt(v.size) : 0, seed: 300 + i });
    found.set(
      `newsvendor ${i}`,
      mean(leftAtEnd(out).map((left, s) => v.costLeft * left + v.costShort * (out.unmet[s] as number))),
    );
  }
  const f = vectors.fefo;
  const fefo = (lots: typeof f.lots) =>
    runSeasons(
      scenario({
        products: [product({ id: 'jam', usePerWeek: f.usePerWeek })],
        weeks: f.weeks,
        lots: lots.map((l) => ({ product: 0, ...l })),
      }),
      { n: N, seed: 400, method: 'mc' },
    ).out;
  found.set('FEFO two lots: expired', mean(fefo(f.lots).expired));

  const within = (name: string, want: number) => {
    const e = found.get(name);
    assert.ok(e, `nothing was simulated for "${name}"`);
    assert.ok(
      Math.abs(e.got - want) < 4.5 * e.se,
      `${name}: ${e.got}, not ${want} (standard error ${e.se.toPrecision(2)})`,
    );
  };

  test.each(vectors.runout)('$name: runs empty as the law says', (v) => {
    for (const at of v.points) {
      within(`${v.name}: empty after ${at.afterWeeks}`, at.pEmpty);
      within(`${v.name}: unmet after ${at.afterWeeks}`, at.pUnmet);
    }
  });

  test.each(vectors.leftover)('$jars jars at mean use $meanUse: left and wanted in vain', (v) => {
    within(`left of ${v.jars}`, v.eLeft);
    within(`unmet of ${v.jars}`, v.eUnmet);
  });

  test.each(vectors.newsvendor.map((v, i) => ({ ...v, i })))('cost of $q jars against mean use $meanUse', (v) =>
    within(`newsvendor ${v.i}`, v.eCost),
  );

  test('two lots, first expired first out: jars past best-by, together and of the first lot', () => {
    within('FEFO two lots: expired', f.eExpired);
    const first = f.lots[0] as (typeof f.lots)[0];
    // The first lot is eaten first, so alone it expires just as often.
    const alone = mean(fefo([first]).expired);
    assert.ok(Math.abs(alone.got - f.eExpiredFirst) < 4.5 * alone.se);
    assert.ok(Math.abs(f.eExpiredFirst + f.eExpiredSecond - f.eExpired) < 1e-7);
  });

  test('every recorded check of the engine has its truth among those tested here or in harvest-posterior.test.ts', () => {
    const newsvendorNames = vectors.newsvendor.map((v) => v.eCost);
    for (const c of vectors.monteCarloCheck) {
      assert.ok(
        Math.abs(c.z) < 4.5 && Math.abs((c.got - c.want) / c.se - c.z) < 0.12 + Math.abs(c.z) * 0.05,
        `${c.what}: z`,
      );
      if (/^(grid|single)/.test(c.what)) continue;
      if (c.what.startsWith('newsvendor')) assert.ok(newsvendorNames.includes(c.want), c.what);
      else within(c.what.replace(/ weeks$/, '').replace(/ after mean use \d+$/, ''), c.want);
    }
  });
});

describe('what must hold in every season', () => {
  test.each(['list', 'best'] as const)('jars and fruit balance (%s order)', (policy) => {
    const { sc, paths } = holding(policy);
    const { out, draws } = runSeasons(sc, { n: 500, seed: 5 }, paths);
    let made = 0;
    for (let p = 0; p < out.products; p++) {
      const start = sc.lots.reduce((sum, l) => sum + (l.product === p ? l.jars : 0), 0);
      for (let s = 0; s < out.n; s++) {
        const at = p * out.n + s;
        const end = out.stock[(51 * out.products + p) * out.n + s] as number;
        const gone = (out.used[at] as number) + (out.given[at] as number) + (out.expired[at] as number);
        assert.equal(end + gone, start + (out.made[at] as number));
        made += out.made[at] as number;
      }
    }
    assert.ok(made > 500 * 20, 'the kitchen was at work');
    const nominal = sc.products.map((p) => p.jarsPerBatch * p.kgPerJar);
    sc.crops.forEach((crop, c) => {
      for (let s = 0; s < out.n; s++) {
        const row = draws.cropIdx[c * out.n + s] as number;
        const grown = (paths[c] as Float32Array)
          .subarray(row * 52, row * 52 + 52)
          .reduce((a, x) => a + x, crop.onHandKg);
        const elsewhere = [out.lostKg, out.freshKg, out.leftKg].reduce((a, kg) => a + (kg[c * out.n + s] as number), 0);
        const cooked = grown - elsewhere;
        // What is missing must be whole batches of that crop's products.
        const kinds = sc.products.flatMap((p, i) => (p.crop === c ? [nominal[i] as number] : []));
        assert.ok(
          wholeBatches(cooked, kinds),
          `${crop.id}, season ${s}: ${cooked} kg is no number of batches of ${kinds}`,
        );
      }
    });
  });

  test('nothing is made beyond fruit, jars, lids or a hard store', () => {
    for (const policy of ['list', 'best'] as const) {
      const { sc, paths } = holding(policy);
      const { out } = runSeasons(sc, { n: 400, seed: 8 }, paths);
      for (let w = 0; w < 52; w++)
        for (let s = 0; s < out.n; s++) {
          assert.ok((out.lids[w * out.n + s] as number) <= 70);
          assert.ok((out.empties[w * 2 * out.n + s] as number) >= 0);
          assert.ok((out.store[(w * 3 + 2) * out.n + s] as number) <= 14 + 1e-4);
        }
    }
  });

  test('no season takes more sugar than may be used, and without a limit some do', () => {
    const { sc, paths } = holding('best');
    const limit = 6;
    const most = (limited: boolean) => {
      const { out } = runSeasons(limited ? { ...sc, sugarLimitKg: limit } : sc, { n: 200, seed: 8 }, paths);
      return Math.max(...out.sugar.subarray(51 * out.n));
    };
    assert.ok(most(true) <= limit + 1e-6 && most(true) > limit - 2, `${most(true)} kg`);
    assert.ok(most(false) > limit);
  });

  test('ranges of seasons, as threads take them, give the run of one thread', () => {
    const { sc, paths } = holding('best');
    const { out, draws } = runSeasons(sc, { n: 300, seed: 21 }, paths);
    const shared = allocOut(sc, 300, true);
    for (const [from, to] of [
      [117, 300],
      [0, 50],
      [50, 117],
    ] as const)
      simulate({ scenario: sc, draws, out: shared }, from, to);
    sameResults(out, shared);
  });

  test.each(['list', 'best'] as const)(
    'the order of products, crops, events and plans changes nothing (%s order)',
    (policy) => {
      const { sc, paths } = holding(policy);
      const { out } = runSeasons(sc, { n: 200, seed: 33 }, paths);
      const places = [3, 0, 4, 2, 1];
      const cropPlaces = [2, 0, 1];
      const moved: Scenario = {
        ...sc,
        products: places
          .map((p) => sc.products[p] as (typeof sc.products)[0])
          .map((p) => ({ ...p, crop: cropPlaces.indexOf(p.crop) })),
        crops: cropPlaces.map((c) => sc.crops[c] as (typeof sc.crops)[0]),
        lots: [...sc.lots].reverse().map((l) => ({ ...l, product: places.indexOf(l.product) })),
        events: [...sc.events].map((e) => ({ ...e, product: places.indexOf(e.product) })),
        planned: sc.planned.map((b) => ({ ...b, product: places.indexOf(b.product) })),
        intentions: sc.intentions.map((i) => ({ ...i, product: places.indexOf(i.product) })),
        ...(sc.batchWorth ? { batchWorth: places.map((p) => sc.batchWorth?.[p] as Float32Array) } : {}),
      };
      const other = runSeasons(
        moved,
        { n: 200, seed: 33 },
        cropPlaces.map((c) => paths[c] as Float32Array),
      ).out;
      for (let p = 0; p < 5; p++)
        for (let s = 0; s < 200; s++) assert.deepEqual(stockOf(other, s, places.indexOf(p)), stockOf(out, s, p));
      assert.deepEqual(other.hours, out.hours);
    },
  );

  test('a product more leaves the draws of the others alone', () => {
    const { sc, paths } = holding('list');
    const { out } = runSeasons(sc, { n: 100, seed: 2 }, paths);
    const more: Scenario = {
      ...sc,
      products: [product({ id: 'honey', usePerWeek: 0.4, rateCv: 0.2 }), ...sc.products],
    };
    const up = <T extends { product: number }>(x: T): T => ({ ...x, product: x.product + 1 });
    const shifted = {
      ...more,
      lots: sc.lots.map(up),
      events: sc.events.map(up),
      planned: sc.planned.map(up),
      intentions: sc.intentions.map(up),
    };
    const other = runSeasons(shifted, { n: 100, seed: 2 }, paths).out;
    for (let p = 0; p < 5; p++)
      for (let s = 0; s < 100; s++) assert.deepEqual(stockOf(other, s, p + 1), stockOf(out, s, p));
  });

  test('two planned batches of one product in one week do not share their chance, nor do two market days', () => {
    const plan = (ids: string[]) =>
      scenario({
        products: [product({ id: 'jam' })],
        planned: ids.map((id) => ({ id, week: 3, product: 0, batches: 1, prob: 0.5 })),
        events: ['a', 'b'].map((id) => ({ id: `market ${id}`, week: 2, product: 0, mean: 4, returnProb: 0 })),
        lots: [{ product: 0, jars: 900, bestByWeek: 99 }],
      });
    const { out } = runSeasons(plan(['first', 'second']), { n: 4000, seed: 3 });
    const made = [0, 6, 12].map((k) => out.made.filter((m) => m === k).length / 4000);
    [0.25, 0.5, 0.25].forEach((want, i) => {
      assert.ok(Math.abs((made[i] as number) - want) < 4.5 * Math.sqrt((want * (1 - want)) / 4000), `${made}`);
    });
    const mean = out.given.reduce((a, x) => a + x, 0) / 4000;
    const variance = out.given.reduce((a, x) => a + (x - mean) ** 2, 0) / 4000;
    assert.ok(Math.abs(mean - 8) < 4.5 * Math.sqrt(8 / 4000), 'two Poisson counts of 4');
    assert.ok(Math.abs(variance - 8) < 4.5 * 8 * Math.sqrt(2.2 / 4000), 'independent: the variances add');
  });

  test('a kitchen falls through as often as told, and planned batches do not wait for it', () => {
    const base = scenario({
      products: [product({ id: 'jam', hoursPerBatch: 1 })],
      hours: new Array<number>(52).fill(1),
      missWeekProb: 0.3,
      intentions: [{ product: 0, target: 9999, fromWeek: 0, toWeek: 51, maxBatchesPerWeek: 5 }],
    });
    const hours = runSeasons(base, { n: 2000, seed: 12 }).out.hours.reduce((a, x) => a + x, 0) / 2000;
    assert.ok(Math.abs(hours - 52 * 0.7) < 4.5 * Math.sqrt((52 * 0.21) / 2000));
    const planned = {
      ...base,
      intentions: [],
      planned: [{ id: 'p', week: 4, product: 0, batches: 2, prob: 1 }],
      hours: new Array<number>(52).fill(0),
    };
    assert.ok(runSeasons(planned, { n: 20, seed: 1 }).out.hours.every((h) => h === 2));
  });

  test('opened jars stand in the fridge for their weeks and glass comes back after its lag', () => {
    const sc = scenario({
      weeks: 12,
      stores: [
        { id: 'shelf', capacity: 100, unit: 'cm' },
        { id: 'fridge', capacity: 10, unit: 'l' },
      ],
      containers: [{ id: 'jar', empties: 0, lid: -1, diameterCm: 7, heightCm: 10, ml: 350 }],
      products: [
        product({
          id: 'jam',
          usePerWeek: 30,
          profile: [12, ...new Array<number>(11).fill(0)],
          returnProb: 1,
          returnLagWeeks: 4,
          openStore: 1,
          openUnit: 0.5,
          openWeeks: 3,
        }),
      ],
      lots: [{ product: 0, jars: 10, bestByWeek: 40 }],
    });
    const { out } = runSeasons(sc, { n: 1, seed: 1 });
    assert.equal(out.used[0], 10);
    assert.deepEqual(
      Array.from({ length: 6 }, (_, w) => out.store[w * 2 + 1]),
      [5, 5, 5, 0, 0, 0],
    );
    assert.deepEqual([...out.empties.slice(0, 6)], [0, 0, 0, 0, 10, 10]);
  });

  test('a batch that keeps less long than what is on the shelf is eaten first', () => {
    const gift = (week: number, mean: number): EventSpec => ({
      id: `gift ${week}`,
      week,
      product: 0,
      mean,
      fixed: true,
      returnProb: 0,
    });
    const sc = scenario({
      weeks: 8,
      products: [product({ id: 'jam', lifeWeeks: 3 })],
      lots: [{ product: 0, jars: 5, bestByWeek: 7 }],
      events: [gift(0, 1), gift(2, 4)],
      planned: [{ id: 'batch', week: 1, product: 0, batches: 1, prob: 1 }],
    });
    const { out } = runSeasons(sc, { n: 1, seed: 1 });
    // 4 old jars and 6 new in week 1; 4 new ones given in week 2; the last 2 new ones past best-by after week 4.
    assert.deepEqual(stockOf(out, 0), [4, 10, 6, 6, 4, 4, 4, 0]);
  });

  test('antithetic seasons mirror each other in every draw', () => {
    const sc = scenario({
      products: [product({ id: 'jam', usePerWeek: 0.7, rateCv: 0.3 })],
      lots: [{ product: 0, jars: 400, bestByWeek: 99 }],
    });
    const { out } = runSeasons(sc, { n: 4000, seed: 6, method: 'antithetic' });
    const pairs = Array.from(
      { length: 2000 },
      (_, j) => [out.used[2 * j] as number, out.used[2 * j + 1] as number] as const,
    );
    const centre = out.used.reduce((a, x) => a + x, 0) / 4000;
    const covariance = pairs.reduce((a, [x, y]) => a + (x - centre) * (y - centre), 0) / 2000;
    const variance = out.used.reduce((a, x) => a + (x - centre) ** 2, 0) / 4000;
    assert.ok(covariance / variance < -0.7, `${covariance / variance}`);
  });
});

function wholeBatches(kg: number, kinds: readonly number[]): boolean {
  if (Math.abs(kg) < 0.01) return true;
  const [first, ...rest] = kinds;
  if (first === undefined) return false;
  for (let k = 0; k * first <= kg + 0.01; k++) if (wholeBatches(kg - k * first, rest)) return true;
  return false;
}

function sameResults(a: Out, b: Out): void {
  for (const field of [
    'stock',
    'store',
    'runOut',
    'empty',
    'firstMade',
    'used',
    'given',
    'unmet',
    'expired',
    'made',
    'lids',
    'empties',
    'sugar',
    'hours',
    'lostKg',
    'freshKg',
    'leftKg',
  ] as const)
    assert.deepEqual([...a[field]], [...b[field]], field);
}
