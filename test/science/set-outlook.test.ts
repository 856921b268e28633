import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { setOutlook } from '#lib/science/set-outlook.ts';

const need = { sets: true, eq150G: 10, relSd: 0.4 } as const;

describe('the set to expect', () => {
  it('is soft with half of the pectin, good with 1.35 times, stiff with three times', () => {
    assert.equal(setOutlook({ eq150G: 5, relSd: 0.2 }, need).outlook, 'soft');
    assert.equal(setOutlook({ eq150G: 13.5, relSd: 0.05 }, { ...need, relSd: 0.1 }).outlook, 'good');
    assert.equal(setOutlook({ eq150G: 30, relSd: 0.2 }, need).outlook, 'stiff');
  });

  it('is a soft one in two when supply equals need', () => {
    assert.equal(setOutlook({ eq150G: 10, relSd: 0.3 }, need).soft.toFixed(6), '0.500000');
  });

  it('has shares that add up to one, and more pectin never softens it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        fc.double({ min: 0.05, max: 0.6, noNaN: true }),
        (eq150G, relSd) => {
          const o = setOutlook({ eq150G, relSd }, need);
          assert.ok(Math.abs(o.soft + o.good + o.stiff - 1) < 1e-9 && o.good > -1e-9);
          assert.ok(setOutlook({ eq150G: eq150G * 1.1, relSd }, need).soft <= o.soft + 1e-12);
          assert.ok(o.ratio && o.ratio.low < o.ratio.typ && o.ratio.typ < o.ratio.high);
        },
      ),
    );
  });

  it('is soft, with the reason, where nothing sets or there is no pectin', () => {
    const mild = setOutlook({ eq150G: 99, relSd: 0.1 }, { sets: false, reason: 'too mild' });
    assert.deepEqual([mild.soft, mild.reason, mild.ratio], [1, 'too mild', null]);
    assert.equal(setOutlook({ eq150G: 0, relSd: 0 }, need).outlook, 'soft');
  });
});
