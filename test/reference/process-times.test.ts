import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { JAR_SIZES, type JarSize } from '#lib/reference/jar-sizes.ts';
import { PROCESS_PRODUCTS, type ProcessProduct } from '#lib/reference/process-products.ts';
import { PROCESS_TABLE } from '#lib/reference/process-table.ts';
import { PROCESS_ROWS, type ProcessQuery, processTime } from '#lib/reference/process-times.ts';

const EDGES = { three: [1000, 6000], four: [1000, 3000, 6000] } as const;
const inWater = { method: 'boiling-water' } as const;

const minutesAt = (q: Omit<ProcessQuery, 'method'>): number => {
  const time = processTime({ ...q, ...inWater });
  assert.ok(time.ok, time.ok ? '' : time.reason);
  return time.minutes;
};
const refusal = (q: ProcessQuery): { reason: string; nextSizeDown?: JarSize } => {
  const time = processTime(q);
  assert.ok(!time.ok, `expected a refusal, got ${time.ok ? time.minutes : ''} minutes`);
  return time;
};

describe('process time', () => {
  it('has one row per product, pack and jar', () => {
    const keys = PROCESS_ROWS.map((r) => `${r.product} ${r.pack} ${r.jar}`);
    assert.equal(new Set(keys).size, keys.length);
    const printed = PROCESS_TABLE.reduce((sum, r) => sum + r.packs.length * r.jars.length, 0);
    assert.equal(keys.length, printed);
    assert.equal(printed, 96);
  });

  it('gives the printed figure on both sides of every band edge, for every row', () => {
    for (const row of PROCESS_ROWS) {
      const at = (altitudeFt: number) => minutesAt({ product: row.product, pack: row.pack, jar: row.jar, altitudeFt });
      assert.equal(at(0), row.minutes[0], row.product);
      EDGES[row.band].forEach((edge, i) => {
        assert.equal(at(edge), row.minutes[i], `${row.product} ${row.jar} at ${edge} ft`);
        assert.equal(at(edge + 0.5), row.minutes[i + 1], `${row.product} ${row.jar} just above ${edge} ft`);
        assert.equal(at(edge + 1), row.minutes[i + 1], `${row.product} ${row.jar} at ${edge + 1} ft`);
      });
      assert.equal(at(10_000), row.minutes.at(-1), row.product);
    }
  });

  it('never falls with altitude, nor with the size of the jar', () => {
    for (const row of PROCESS_ROWS) {
      assert.deepEqual(
        [...row.minutes].sort((a, b) => a - b),
        [...row.minutes],
        row.product,
      );
      const larger = PROCESS_ROWS.filter((r) => r.product === row.product && r.pack === row.pack);
      const place = (jar: JarSize) => JAR_SIZES.findIndex((s) => s.size === jar);
      for (const other of larger.filter((r) => place(r.jar) > place(row.jar))) {
        for (const [i, m] of row.minutes.entries())
          assert.ok((other.minutes[i] ?? 0) >= m, `${row.product} ${other.jar}`);
      }
    }
  });

  it('never gives a raw pack less time than a hot one of the same jar', () => {
    for (const hot of PROCESS_ROWS.filter((r) => r.pack === 'hot')) {
      const raw = PROCESS_ROWS.find((r) => r.pack === 'raw' && r.product === hot.product && r.jar === hot.jar);
      if (!raw) continue;
      for (const [i, m] of hot.minutes.entries()) assert.ok((raw.minutes[i] ?? 0) >= m, hot.product);
    }
  });

  it('processes jam 5, 10 or 15 minutes at any altitude from 0 to 10,000 ft and no other time (MSU sheet 01600890)', () => {
    for (let ft = 0; ft <= 10_000; ft++) {
      const time = processTime({
        product: 'jam-or-preserve-no-added-pectin',
        pack: 'hot',
        jar: 'half-pint',
        altitudeFt: ft,
        ...inWater,
      });
      assert.ok(time.ok);
      assert.equal(time.minutes, ft <= 1000 ? 5 : ft <= 6000 ? 10 : 15, `${ft} ft`);
      assert.equal(time.sterileJars, ft <= 1000, `${ft} ft`);
      assert.equal(time.steriliseMinutes, ft <= 1000 ? 10 : 0, `${ft} ft`);
      assert.equal(time.headspaceIn, 0.25);
    }
  });

  it('names the band it used', () => {
    const label = (altitudeFt: number) => {
      const t = processTime({ product: 'applesauce', pack: 'hot', jar: 'quart', altitudeFt, ...inWater });
      return t.ok ? t.bandLabel : t.reason;
    };
    assert.equal(label(1000), '0-1,000 ft');
    assert.equal(label(3000), '1,001-3,000 ft');
    assert.equal(label(3001), '3,001-6,000 ft');
    assert.equal(label(6001), 'above 6,000 ft');
  });

  it('gives small jars the row of the next printed size: 4 oz half-pint, 12 oz pint, half-pint peaches the pint row', () => {
    const jam = { product: 'jam-with-added-pectin', pack: 'hot', altitudeFt: 500 } as const;
    assert.equal(minutesAt({ ...jam, jar: 'quarter-pint' }), 5);
    assert.equal(minutesAt({ ...jam, jar: 'twelve-ounce' }), 5);
    const peaches = { product: 'peaches-yellow-flesh', pack: 'raw', altitudeFt: 500 } as const;
    assert.equal(minutesAt({ ...peaches, jar: 'half-pint' }), 25);
    const butter = { product: 'fruit-butter-apple', pack: 'hot', altitudeFt: 500 } as const;
    assert.equal(minutesAt({ ...butter, jar: 'twelve-ounce' }), 5);
    assert.equal(minutesAt({ ...butter, jar: 'quart' }), 10);
  });

  it('refuses a quart of jam and offers the pint', () => {
    const no = refusal({
      product: 'jam-or-preserve-no-added-pectin',
      pack: 'hot',
      jar: 'quart',
      altitudeFt: 200,
      ...inWater,
    });
    assert.match(no.reason, /quart.*largest jar tested is the pint/);
    assert.equal(no.nextSizeDown, 'pint');
  });

  it('refuses every jar larger than the largest printed one', () => {
    for (const product of Object.keys(PROCESS_PRODUCTS) as ProcessProduct[]) {
      const halfGallon = processTime({ product, pack: 'hot', jar: 'half-gallon', altitudeFt: 0, ...inWater });
      assert.equal(halfGallon.ok, product === 'apple-juice' || product === 'grape-juice', product);
    }
  });

  it('refuses a pack that was not tested: raw pears, raw figs, hot citrus', () => {
    for (const [product, pack] of [
      ['pears', 'raw'],
      ['figs', 'raw'],
      ['citrus-sections-grapefruit-orange', 'hot'],
    ] as const) {
      assert.match(
        refusal({ product, pack, jar: 'pint', altitudeFt: 0, ...inWater }).reason,
        new RegExp(`no ${pack}-pack time`),
      );
    }
  });

  it('refuses altitudes off the table: below 0 ft, missing, endless', () => {
    const jelly = { product: 'jelly-with-or-without-added-pectin', pack: 'hot', jar: 'pint', ...inWater } as const;
    assert.match(refusal({ ...jelly, altitudeFt: -1 }).reason, /below 0 ft/);
    assert.match(refusal({ ...jelly, altitudeFt: Number.NaN }).reason, /altitude .* missing/);
    assert.match(refusal({ ...jelly, altitudeFt: Number.POSITIVE_INFINITY }).reason, /altitude .* missing/);
  });

  it('refuses a product it does not know', () => {
    const unknown = 'pumpkin-butter' as ProcessProduct;
    assert.match(
      refusal({ product: unknown, pack: 'hot', jar: 'pint', altitudeFt: 0, ...inWater }).reason,
      /no tested process/,
    );
  });

  it('allows steam to 45 minutes and no further (NCHFP steam canner fact sheet)', () => {
    const steam = (product: ProcessProduct, pack: 'hot' | 'raw', jar: JarSize, altitudeFt: number) =>
      processTime({ product, pack, jar, altitudeFt, method: 'steam' });
    const allowed = [steam('figs', 'hot', 'pint', 900), steam('peaches-yellow-flesh', 'raw', 'quart', 6001)];
    for (const t of allowed) assert.deepEqual(t.ok && t.minutes, 45);
    for (const t of [steam('figs', 'hot', 'quart', 900), steam('tomato-juice', 'hot', 'pint', 6001)]) {
      assert.ok(!t.ok);
      assert.match(t.reason, /at most 45 minutes and this needs 50/);
    }
  });

  it('answers every question with a printed figure or a reason, and never throws', () => {
    const anything = fc.record({
      product: fc.constantFrom(...(Object.keys(PROCESS_PRODUCTS) as ProcessProduct[])),
      pack: fc.constantFrom('hot' as const, 'raw' as const),
      jar: fc.constantFrom(...JAR_SIZES.map((j) => j.size)),
      altitudeFt: fc.oneof(fc.double(), fc.integer({ min: -500, max: 15_000 })),
      method: fc.constantFrom('boiling-water' as const, 'steam' as const),
    });
    fc.assert(
      fc.property(anything, (q) => {
        const t = processTime(q);
        if (!t.ok) return t.reason.length > 0;
        const jarFits =
          JAR_SIZES.findIndex((s) => s.size === t.row.jar) >= JAR_SIZES.findIndex((s) => s.size === q.jar);
        return (
          jarFits &&
          t.row.minutes.includes(t.minutes) &&
          t.sterileJars === t.minutes < 10 &&
          (q.method !== 'steam' || t.minutes <= 45)
        );
      }),
      { numRuns: 2000 },
    );
  });
});
