import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import { litres, perColumn, runCm } from '#lib/forecast/space.ts';
import vectors from '#test/golden/forecast-vectors.json' with { type: 'json' };

describe('room on a shelf', () => {
  test('rows, stack and run are the reference ones', () => {
    for (const v of vectors.shelf) {
      const jar = { diameterCm: v.diameterCm, heightCm: v.heightCm };
      const shelf = { depthCm: v.shelfDepthCm, heightCm: v.shelfHeightCm };
      assert.deepEqual(perColumn(jar, shelf), { rows: v.rows, stack: v.stack, perColumn: v.perColumn });
      assert.ok(Math.abs(runCm(v.jars, jar, shelf) - v.runCm) < 1e-9);
    }
  });

  test('a jar that does not fit is refused with the edge it meets', () => {
    assert.throws(
      () => runCm(1, { diameterCm: 10, heightCm: 18 }, { depthCm: 36, heightCm: 17 }),
      /18 cm high does not fit under 17 cm/,
    );
    assert.throws(() => runCm(1, { diameterCm: 40, heightCm: 18 }, { depthCm: 36, heightCm: 30 }), /40 cm wide/);
  });

  test('no jar takes no room, and jars fill 65 % of a compartment unless told otherwise', () => {
    assert.equal(runCm(0, { diameterCm: 7, heightCm: 10 }, { depthCm: 36, heightCm: 30 }), 0);
    assert.equal(litres({ widthCm: 50, depthCm: 40, heightCm: 20 }), 26);
    assert.equal(litres({ widthCm: 50, depthCm: 40, heightCm: 20 }, 0.5), 20);
  });
});
