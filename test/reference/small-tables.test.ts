/**
 * The short tables, against the publications beside each: AIB 539 and MSU sheet 01600377 (syrups), AIB 539 (jelly), MSU sheet
 * 01600890 (finish), NCHFP (freezer headspace), NCHFP / Georgia (dried fruit), 21 CFR 150, 21 CFR 101.30, 19 CFR 151.91.
 */
import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { ALTITUDE_TABLE } from '#lib/reference/altitude-table.ts';
import { CANNER_LOADS, cannerLoad } from '#lib/reference/canner-loads.ts';
import { driedFruitMonths, driedMonths, PASTEURISE, pasteuriseAfter } from '#lib/reference/dried-storage.ts';
import { FRUITS } from '#lib/reference/fruits.ts';
import { CANNING_HEADSPACE, freezerHeadspace } from '#lib/reference/headspace.ts';
import { JAM_GROUPS } from '#lib/reference/jam-groups.ts';
import { JAR_CATALOGUE } from '#lib/reference/jar-catalogue.ts';
import { JELLY_EXTRACTION } from '#lib/reference/jelly-extraction.ts';
import { JUICE_BRIX_AVERAGE, JUICE_BRIX_MINIMUM } from '#lib/reference/juice-brix.ts';
import { countedGrams, JUICE_FACTORS } from '#lib/reference/juice-factors.ts';
import { FRUIT_SHARE_RULES, LABEL_ELEMENTS } from '#lib/reference/label-rules.ts';
import { PROCESS_PRODUCTS } from '#lib/reference/process-products.ts';
import { JELLY_FINISH, SETTING_RISES } from '#lib/reference/setting-tests.ts';
import { SYRUPS } from '#lib/reference/syrups.ts';
import { fahrenheit, GRAMS_PER_POUND } from '#lib/units/convert.ts';
import { celsius } from '#lib/units/quantity.ts';

describe('syrups', () => {
  it('hold their nominal sugar within 5 points, by 200 g of sugar and 236 g of water a cup', () => {
    for (const row of SYRUPS) {
      for (const { waterCups, sugarCups } of [row.for9Pints, row.for7Quarts]) {
        const pct = (100 * sugarCups * 200) / (sugarCups * 200 + waterCups * 236);
        assert.ok(Math.abs(pct - row.sugarPct) < 5, `${row.id}: ${pct.toFixed(1)}`);
      }
    }
  });

  it('print medium as 5-1/4 to 2-1/4 cups for 9 pints', () => {
    assert.deepEqual(SYRUPS.find((s) => s.id === 'medium')?.for9Pints, { waterCups: 5.25, sugarCups: 2.25 });
  });
});

describe('setting', () => {
  it('rises 8 °F for jelly and jam, 9 °F in bulletin 56', () => {
    assert.deepEqual(
      SETTING_RISES.map((r) => r.riseF),
      [8, 9],
    );
  });

  it('prints finishes within 0.7 °F of boiling water plus 8 °F', () => {
    for (const row of JELLY_FINISH) {
      const water = ALTITUDE_TABLE.find((a) => a.altitudeFt === row.altitudeFt);
      assert.ok(water, String(row.altitudeFt));
      assert.ok(Math.abs(fahrenheit(celsius(water.boilsC)) + 8 - row.finishF) < 0.75, `${row.altitudeFt} ft`);
    }
  });

  it('boils water cooler the higher it stands, never more than 1.1 °F under the printed table', () => {
    assert.equal(ALTITUDE_TABLE.length, 11);
    for (const [i, row] of ALTITUDE_TABLE.entries()) {
      const below = ALTITUDE_TABLE[i - 1];
      assert.ok(!below || (row.boilsC < below.boilsC && row.pressureKPa < below.pressureKPa));
      const gap = row.publishedBoilsF - fahrenheit(celsius(row.boilsC));
      assert.ok(gap > -0.1 && gap < 1.1, `${row.altitudeFt} ft: ${gap.toFixed(2)}`);
    }
  });
});

describe('jelly extraction', () => {
  it('prints the five fruits', () => {
    assert.deepEqual(
      JELLY_EXTRACTION.map((r) => r.fruit),
      ['apple', 'blackberry', 'crabapple', 'grape', 'plum'],
    );
    const plum = JELLY_EXTRACTION.find((r) => r.fruit === 'plum');
    assert.deepEqual(
      [plum?.waterCupsPerLb, plum?.simmerMinutes, plum?.sugarCupsPerCup],
      [
        [0.5, 0.5],
        [15, 20],
        [0.75, 0.75],
      ],
    );
  });
});

describe('headspace', () => {
  it('repeats what the process rows print and nothing else', () => {
    const inRows = [...new Set(Object.values(PROCESS_PRODUCTS).map((p) => p.headspaceIn))].sort();
    assert.deepEqual([...new Set(CANNING_HEADSPACE.map((r) => r.inches))].sort(), inRows);
  });

  it('leaves 1-1/2 in for narrow quarts, frozen juice and unsealed jars', () => {
    assert.equal(freezerHeadspace('liquid', 'narrow', 'quart'), 1.5);
    assert.equal(freezerHeadspace('juice', 'narrow', 'pint'), 1.5);
    assert.equal(freezerHeadspace('unsealed jar', 'wide', 'pint'), 1.5);
    assert.equal(freezerHeadspace('liquid', 'wide', 'pint'), 0.5);
  });
});

describe('canner loads', () => {
  it('take 7 quarts or 9 pints, the basis of every printed quantity', () => {
    assert.deepEqual(cannerLoad('boiling-water 21 qt', 'quart'), { ok: true, jars: 7 });
    assert.deepEqual(cannerLoad('boiling-water 21 qt', 'pint'), { ok: true, jars: 9 });
  });

  it('refuse a size nobody counted', () => {
    assert.equal(cannerLoad('boiling-water 33 qt', 'pint').ok, false);
    assert.equal(CANNER_LOADS.filter((r) => r.status === 'verified').length, 2);
  });
});

describe('dried fruit', () => {
  const months = (t: number) => {
    const found = driedFruitMonths(t);
    return found.ok ? found.months : Number.NaN;
  };
  it('keeps 12 months at 60 °F, 6 at 80 °F, 8.6 at 21 °C', () => {
    assert.ok(Math.abs(months(15.6) - 12) < 1e-9);
    assert.ok(Math.abs(months(26.7) - 6) < 1e-9);
    assert.ok(Math.abs(months(21) - 8.6) < 0.05);
  });

  it('never promises more than the printed 12 months, and refuses a store too warm for 4', () => {
    assert.equal(months(0), 12);
    assert.ok(Math.abs(months(33) - 4.05) < 0.05);
    assert.equal(driedFruitMonths(33.5).ok, false);
    assert.equal(driedFruitMonths(Number.NaN).ok, false);
  });

  it('keeps powder 6 months to the warning and 12 to the end in the cool, vegetables half as long as fruit', () => {
    assert.deepEqual(driedMonths('powder', 15.6), { ok: true, warn: 6, end: 12 });
    const warm = driedMonths('powder', 21);
    assert.ok(warm.ok && Math.abs(warm.end - 8.6) < 0.05 && Math.abs(warm.warn - 4.3) < 0.03);
    assert.deepEqual(driedMonths('vegetable', 26.7), { ok: true, warn: 3, end: 3 });
    assert.equal(driedMonths('herb', 40).ok, false);
  });

  it('asks for pasteurising after a windowsill or the sun: freezer 48 h, oven 160 °F 30 min or 175 °F 15 min', () => {
    assert.deepEqual(
      pasteuriseAfter('windowsill').map((r) => [r.temperatureC, r.minutes]),
      [
        [-18, 2880],
        [71.1, 30],
        [79.4, 15],
      ],
    );
    assert.equal(pasteuriseAfter('sun'), PASTEURISE);
    assert.deepEqual(pasteuriseAfter('dryer'), []);
  });
});

describe('label rules', () => {
  it('ask 47:55 or 45:55 of jam, 5:2 of butter, 65 and 43 % solids', () => {
    const rule = (name: string) => FRUIT_SHARE_RULES.find((r) => r.name === name && r.place === 'US');
    assert.deepEqual(rule('jam, Group I fruit')?.parts, { fruit: 47, sweetener: 55 });
    assert.deepEqual(rule('jam, Group II fruit')?.parts, { fruit: 45, sweetener: 55 });
    assert.deepEqual(rule('fruit butter')?.parts, { fruit: 5, sweetener: 2 });
    assert.equal(rule('jelly')?.minSolublePct, 65);
    assert.equal(rule('fruit butter')?.minSolublePct, 43);
    assert.equal(LABEL_ELEMENTS.length, 7);
  });

  it('print 28 jelly and 8 butter factors, each the inverse of a plausible Brix', () => {
    assert.equal(JUICE_FACTORS.filter((r) => r.kind === 'jelly').length, 28);
    assert.equal(JUICE_FACTORS.filter((r) => r.kind === 'butter').length, 8);
    for (const r of JUICE_FACTORS) assert.ok(100 / r.factor > 7.5 && 100 / r.factor < 18.5, r.fruit);
  });

  it('count apple juice of 13.3 Brix at its weight, a weak extract for less', () => {
    const full = countedGrams({ kind: 'jelly', fruitId: 'apple-cooking', grams: GRAMS_PER_POUND, brix: 100 / 7.5 });
    assert.ok(full !== null && Math.abs(full - GRAMS_PER_POUND) < 1e-9);
    const weak = countedGrams({ kind: 'jelly', fruitId: 'apple-cooking', grams: 1000, brix: 8 });
    assert.equal(weak, 600);
    assert.equal(countedGrams({ kind: 'jelly', fruitId: 'sloe', grams: 1000, brix: 8 }), null);
  });

  it('group the fruit names of 21 CFR 150.160 and agree with the fruit table', () => {
    assert.deepEqual(
      [JAM_GROUPS.filter((r) => r.group === 'I').length, JAM_GROUPS.filter((r) => r.group === 'II').length],
      [21, 13],
    );
    for (const id of ['blackberry', 'apricot', 'quince', 'pineapple', 'damson', 'rhubarb'] as const) {
      assert.equal(FRUITS.find((f) => f.id === id)?.labelGroup, JAM_GROUPS.find((r) => r.fruit === id)?.group, id);
    }
  });

  it('print 44 least and 26 average Brix', () => {
    assert.deepEqual([JUICE_BRIX_MINIMUM.length, JUICE_BRIX_AVERAGE.length], [44, 26]);
    assert.equal(JUICE_BRIX_MINIMUM.find((r) => r.juice === 'lemon')?.unit, 'acid-pct');
    assert.equal(JUICE_BRIX_AVERAGE.find((r) => r.juice === 'apple')?.brix, 13.3);
  });
});

describe('the jar catalogue', () => {
  it('fills every jar below its brim and inside its own outside measures', () => {
    assert.equal(JAR_CATALOGUE.length, 14);
    for (const j of JAR_CATALOGUE) {
      const outside = (Math.PI / 4) * j.diameterMm ** 2 * j.heightMm * 1e-3;
      assert.ok(j.fillMl < j.brimMl && j.brimMl < outside, j.id);
    }
  });
});
