/**
 * Table L3.3 (content of the USDA/ASHRAE table), UC Davis storage list.
 * Taken from this project's notes of the publications, not a fresh copy: guards the transcription, not the reading.
 */
import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { FRESH_LIFE, type FreshLifeRow, freshLifeOf } from '#lib/reference/fresh-life.ts';
import { APPLE_PACE, FRUIT_GRADES, gradeOf } from '#lib/reference/fruit-grades.ts';
import { FRUITS } from '#lib/reference/fruits.ts';

const ROWS: readonly FreshLifeRow[] = FRESH_LIFE;

describe('fresh life', () => {
  it('has 43 rows, shorter at 20 °C than in the cold', () => {
    assert.equal(ROWS.length, 43);
    for (const r of ROWS) assert.ok(r.daysLow <= r.daysHigh && r.daysAt20C < r.daysHigh && r.storeTempC < 20, r.crop);
  });

  it('gives the printed cold anchors', () => {
    const cold = (id: string) => {
      const r = freshLifeOf(id);
      return [r.storeTempC, r.daysLow, r.daysHigh];
    };
    assert.deepEqual(cold('apricot'), [-0.3, 7, 21]);
    assert.deepEqual(cold('strawberry'), [0, 5, 7]);
    assert.deepEqual(cold('cherry-sweet'), [-0.7, 14, 21]);
    assert.deepEqual(cold('raspberry-red'), [0, 2, 5]);
    assert.deepEqual(cold('apple-dessert'), [-0.5, 90, 240]);
  });

  it('implies a rate per 10 °C between 1.3 and 4.6 for every fruit', () => {
    for (const r of ROWS) {
      const q10 = (Math.sqrt(r.daysLow * r.daysHigh) / r.daysAt20C) ** (10 / (20 - r.storeTempC));
      assert.ok(q10 > 1.29 && q10 < 4.6, `${r.crop}: ${q10.toFixed(2)}`);
    }
  });

  it('names only fruits of the table, lime and prickly pear', () => {
    const ids = new Set<string>(FRUITS.map((f) => f.id));
    const others = [...new Set(ROWS.flatMap((r) => r.foodIds))].filter((id) => !ids.has(id));
    assert.deepEqual(others.sort(), ['lime', 'prickly-pear']);
  });

  it('refuses a fruit without a published life instead of borrowing a neighbour', () => {
    for (const id of ['sloe', 'pineapple', 'nothing']) assert.throws(() => freshLifeOf(id), RangeError);
  });

  it('shortens life by grade: 1, 0.5, 0.2, and none for culls; soft never above 24 h', () => {
    assert.deepEqual(
      FRUIT_GRADES.map((g) => g.lifeFactor),
      [1, 0.5, 0.2, 0],
    );
    assert.equal(gradeOf('soft').capHours, 24);
    for (const g of FRUIT_GRADES) assert.ok(g.low <= g.lifeFactor && g.lifeFactor <= g.high, g.grade);
    assert.throws(() => gradeOf('good'), RangeError);
  });

  it('ripens apples twice as fast at 4.4 °C as at 0 °C (MSU sheet 01600656)', () => {
    assert.equal(APPLE_PACE.find((p) => p.temperatureC === 4.44)?.rate, 2);
    assert.ok(APPLE_PACE.every((p, i) => i === 0 || p.rate > (APPLE_PACE[i - 1]?.rate ?? 0)));
  });
});
