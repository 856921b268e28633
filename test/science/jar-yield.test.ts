import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { jarYield } from '#lib/science/jar-yield.ts';

const halfPint = { id: 'half-pint', fillMl: 236.6 };

describe('the jars of a batch', () => {
  it('hold 311.5 g of a 65 °Bx jam in a half-pint', () => {
    assert.equal(jarYield({ panTargetG: 1000, brix: 65, lossG: 0, jars: [halfPint] }).jarG.toFixed(1), '311.5');
  });

  it('and the rest make up the batch, whatever the sizes', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 9000 }),
        fc.integer({ min: 0, max: 300 }),
        fc.integer({ min: 0, max: 4 }),
        (panTargetG, lossG, available) => {
          const jars = [{ id: 'pint', fillMl: 473.2, available }, halfPint];
          const y = jarYield({ panTargetG, brix: 65, lossG, jars });
          const filled = y.counts.reduce((sum, c) => sum + c.jars * c.jarG, 0);
          assert.ok(Math.abs(filled + y.leftoverG - Math.max(0, panTargetG - lossG)) < 1e-6);
          assert.ok((y.counts[0]?.jars ?? 0) <= available);
          assert.ok(y.leftoverG < (y.counts[1]?.jarG ?? 0) + 1e-6);
        },
      ),
    );
  });

  it('come with one jar in five either way', () => {
    const y = jarYield({ panTargetG: 3100, brix: 65, lossG: 0, jars: [halfPint] });
    assert.deepEqual([y.low, y.high], [7, 12]);
  });

  it('need a size', () => {
    assert.throws(() => jarYield({ panTargetG: 1, brix: 65, lossG: 0, jars: [] }), RangeError);
    assert.throws(() => jarYield({ panTargetG: 1, brix: 65, lossG: 0, jars: [{ id: 'x', fillMl: 0 }] }), RangeError);
  });
});
