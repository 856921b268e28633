import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import { type CropPrior, EVENNESS, SHAPE_WEIGHTS } from '#lib/forecast/crop-prior.ts';
import { harvestBank } from '#lib/forecast/harvest-bank.ts';
import { HarvestPosterior } from '#lib/forecast/harvest-posterior.ts';

const prior: CropPrior = {
  total: [{ weight: 1, mean: 40, cv: 0.4 }],
  mid: { mean: 230, sd: 6 },
  width: { median: 20, sdLog: 0.2 },
  shapes: SHAPE_WEIGHTS,
  kappa: EVENNESS,
};
const request = {
  posterior: new HarvestPosterior(prior),
  cropId: 'plum',
  seed: 3,
  fromDay: 190,
  weeks: 12,
  rows: 4000,
};
const sums = (bank: Float32Array, weeks: number) =>
  Array.from({ length: bank.length / weeks }, (_, r) =>
    bank.subarray(r * weeks, (r + 1) * weeks).reduce((s, x) => s + x, 0),
  );

describe('harvest bank', () => {
  const rows = sums(harvestBank(request), 12);

  test('rows are sorted by size and their mean is the crop', () => {
    for (let r = 1; r < rows.length; r++) assert.ok((rows[r] as number) >= (rows[r - 1] as number));
    const mean = rows.reduce((s, x) => s + x, 0) / rows.length;
    assert.ok(Math.abs(mean - 40) < (4.5 * 0.42 * 40) / Math.sqrt(4000) + 0.05, `${mean}`);
  });

  test('fruit ripening after the last week is cut off, not heaped into it', () => {
    const half = sums(harvestBank({ ...request, weeks: 6 }), 6);
    const mean = half.reduce((s, x) => s + x, 0) / half.length;
    const due = request.posterior.meanPath([190, 232, 600])[0] as number;
    assert.ok(Math.abs(mean - due) < 1, `${mean}, ${due}`);
    assert.ok(mean < 30);
  });

  test('the stream goes by the crop, so another crop with the same prior has other years', () => {
    assert.deepEqual(harvestBank(request), harvestBank(request));
    assert.notDeepEqual(harvestBank({ ...request, cropId: 'damson' }), harvestBank(request));
  });
});
