import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { ACCURACY } from '#lib/reference/accuracy.ts';
import { trustView, WILL_NOT_SAY } from '#lib/usecases/trust-limits.ts';
import { checkResults, quantityLines } from './check-table.ts';
import { unmeteredPh } from './computed-rows.ts';
import { SCIENCE_CHECKS } from './science-checks.ts';

const twoDigits = (x: number): number => Number(x.toPrecision(2));

describe('the accuracy table the program shows', () => {
  it('is what the published rows give today, line for line', () => {
    const today = quantityLines(checkResults()).map((l) => ({
      quantity: l.quantity,
      rows: l.rows,
      mean: twoDigits(l.meanError),
      worst: twoDigits(l.worstError),
      unit: l.unit,
      misses: l.misses,
      fitted: l.fitted,
      memory: l.memory,
    }));
    assert.deepEqual(ACCURACY, today);
  });
});

describe('the figures named on the page about trust', () => {
  const named = (what: RegExp): string => WILL_NOT_SAY.find((w) => what.test(w.what))?.figure ?? '';

  it('are those of the 24 fruits whose published pH was predicted', () => {
    const errors = SCIENCE_CHECKS.pH24.rows.map((fruit) => unmeteredPh(fruit) - fruit.pH);
    const rms = Math.sqrt(errors.reduce((s, e) => s + e * e, 0) / errors.length);
    const bias = errors.reduce((s, e) => s + e, 0) / errors.length;
    assert.equal(
      named(/predicted pH/),
      `${errors.length} fruits: ${rms.toFixed(2)} off (root mean square), ${(-bias).toFixed(2)} too acid on average, at worst ${(-Math.min(...errors)).toFixed(2)} too acid`,
    );
  });

  it('are those of the printed jar counts', () => {
    const jars = ACCURACY.find((a) => a.quantity === 'jar yield');
    assert.ok(
      jars && named(/number of jars/).startsWith(`Of ${jars.rows} printed yields, ${jars.rows - jars.misses} `),
    );
    assert.ok(named(/number of jars/).includes(`${jars.misses} low by 0.6 to ${jars.worst.toFixed(1)}`));
  });

  it('never use the words that promise', () => {
    const text = JSON.stringify(trustView());
    assert.equal(/\b(un)?safe|\bprobabl|\blikely/i.exec(text), null);
  });
});
