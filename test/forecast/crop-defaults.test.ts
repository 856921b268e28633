import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import { CROP_DEFAULTS, cropDefaultsOf, OTHER_CROP, tableEntry } from '#lib/forecast/crop-defaults.ts';
import { qnorm } from '#lib/forecast/math.ts';

describe('crop defaults', () => {
  test('every row is a window inside its range, with a spread, odds and a status', () => {
    for (const row of [...CROP_DEFAULTS, OTHER_CROP]) {
      assert.ok(row.windowRange[0] <= row.windowDays && row.windowDays <= row.windowRange[1], row.kind);
      assert.ok(row.yearCv > 0 && row.yearCv < 1 && row.midSd >= 5 && row.midSd <= 10.5, row.kind);
      assert.ok(row.failProb >= 1 / 20 && row.failProb <= 1 / 7, `${row.kind}: a failed year 1 in 7 to 20`);
      assert.equal(row.windowStatus === 'verified', row.windowSource !== '', row.kind);
    }
  });

  test('no fruit has two kinds', () => {
    const all = CROP_DEFAULTS.flatMap((row) => row.fruits);
    assert.equal(new Set(all).size, all.length);
  });

  test('a damson is a plum and a medlar has no row of its own', () => {
    assert.equal(cropDefaultsOf('damson').kind, 'plum, European');
    assert.equal(cropDefaultsOf('medlar'), OTHER_CROP);
  });

  test('the window becomes mid-date and the days from 10 to 90 %', () => {
    const entry = tableEntry({
      defaults: cropDefaultsOf('apple-dessert'),
      expectedKg: 80,
      window: { from: 260, to: 279 },
    });
    assert.equal(entry.mid, 269.5);
    assert.ok(Math.abs(entry.width - (20 * qnorm(0.9)) / qnorm(0.95)) < 0.01);
    assert.equal(entry.cv, 0.3);
    assert.equal(
      tableEntry({
        defaults: cropDefaultsOf('apple-dessert'),
        expectedKg: 80,
        window: { from: 260, to: 279 },
        biennial: true,
      }).cv,
      0.6,
    );
  });

  test('a window that ends before it starts is refused', () => {
    assert.throws(
      () => tableEntry({ defaults: OTHER_CROP, expectedKg: 1, window: { from: 10, to: 8 } }),
      /2 days before/,
    );
  });
});
