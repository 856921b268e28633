/**
 * AIB 539 quantity lines.
 * Taken from this project's notes of the publications, not a fresh copy: guards the transcription, not the reading.
 */
import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { CUPS_PER_POUND, type Figure, rangeOf, YIELDS, type YieldRow } from '#lib/reference/yields.ts';

const ROWS: readonly YieldRow[] = YIELDS;
const rowOf = (crop: string) => ROWS.find((r) => r.crop === crop);
const middle = (f: Figure) => (rangeOf(f)[0] + rangeOf(f)[1]) / 2;

describe('yields', () => {
  it('holds 23 crops with positive, ordered figures', () => {
    assert.equal(ROWS.length, 23);
    for (const r of ROWS) {
      for (const [key, value] of Object.entries(r)) {
        if (typeof value !== 'number' && !(Array.isArray(value) && typeof value[0] === 'number')) continue;
        const [low, high] = rangeOf(value as Figure);
        assert.ok(low > 0 && low <= high, `${r.crop} ${key}`);
      }
    }
  });

  it('gives the printed loads of peaches, apples and plums', () => {
    assert.deepEqual(
      [rowOf('peach')?.lbPer7Quarts, rowOf('peach')?.lbPer9Pints, rowOf('peach')?.lbPerQuart],
      [17.5, 11, 2.5],
    );
    assert.deepEqual([rowOf('apple, sliced')?.lbPer7Quarts, rowOf('apple, sliced')?.lbPerQuart], [19, 2.75]);
    assert.deepEqual([rowOf('plum')?.lbPer7Quarts, rowOf('plum')?.lbPer9Pints], [14, 9]);
  });

  it('agrees with itself: seven quarts weigh seven times one within 15 % (widest printed gap, crushed tomatoes, 14 %)', () => {
    for (const r of ROWS) {
      if (!r.lbPer7Quarts || !r.lbPerQuart) continue;
      const ratio = middle(r.lbPer7Quarts) / (7 * middle(r.lbPerQuart));
      assert.ok(Math.abs(ratio - 1) < 0.15, `${r.crop}: ${ratio.toFixed(2)}`);
    }
  });

  it('asks less for nine pints than for seven quarts', () => {
    for (const r of ROWS) {
      if (r.lbPer7Quarts && r.lbPer9Pints) assert.ok(middle(r.lbPer9Pints) < middle(r.lbPer7Quarts), r.crop);
    }
  });

  it('prints cups per pound for five preparations', () => {
    assert.equal(CUPS_PER_POUND.length, 5);
    assert.ok(CUPS_PER_POUND.every((r) => r.poundPerCup > 0.2 && r.poundPerCup <= 0.4));
  });
});
