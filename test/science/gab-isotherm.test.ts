import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { driedActivity, dryBasis, equilibriumMoisture, wetBasis } from '#lib/science/gab-isotherm.ts';
import { celsius } from '#lib/units/quantity.ts';

describe('the isotherm of dried apple', () => {
  it('holds .0566 to .3709 kg/kg at 25 °C and water activity .2 to .8 (the set as worked elsewhere)', () => {
    const printed = [
      [0.2, 0.0566],
      [0.3, 0.079],
      [0.4, 0.1036],
      [0.5, 0.134],
      [0.6, 0.1763],
      [0.8, 0.3709],
    ] as const;
    for (const [activity, x] of printed) {
      assert.ok(Math.abs(equilibriumMoisture({ activity, t: celsius(25) }) - x) < 2e-4, `${activity}`);
    }
    assert.equal(equilibriumMoisture({ activity: 0.6, t: celsius(60) }).toFixed(4), '0.1113');
  });

  it('puts 20 % moisture at .708 and 15 % at .600 at 25 °C, less in the cool', () => {
    const at = (wet: number, t: number): string => driedActivity({ moisture: dryBasis(wet), t: celsius(t) }).toFixed(2);
    assert.deepEqual([at(0.2, 25), at(0.15, 25), at(0.2, 15), at(0.15, 15)], ['0.71', '0.60', '0.67', '0.55']);
  });

  it('read backwards gives the water activity', () => {
    for (let activity = 0.1; activity < 0.95; activity += 0.1) {
      const moisture = equilibriumMoisture({ activity, t: celsius(20) });
      assert.ok(Math.abs(driedActivity({ moisture, t: celsius(20) }) - activity) < 1e-8);
    }
  });

  it('says how dry a windowsill can get: 11.0, 15.9 and 21.0 % of the wet weight', () => {
    const rooms = [
      [22, 0.45],
      [20, 0.6],
      [18, 0.7],
    ] as const;
    const read = rooms.map(([t, rh]) =>
      (100 * wetBasis(equilibriumMoisture({ activity: rh, t: celsius(t) }))).toFixed(1),
    );
    assert.deepEqual(read, ['11.0', '15.9', '21.0']);
  });

  it('of herbs, citrus peel and powder is their own, by their constants: X of water activity .5 worked by hand', () => {
    // K aw .465, .46, .475: Xm C K aw / ((1 - K aw)(1 - K aw + C K aw))
    const printed = { herb: 0.1243, 'citrus-peel': 0.141, 'peel-core': 0.1171 } as const;
    for (const food of ['herb', 'citrus-peel', 'peel-core'] as const) {
      const x = equilibriumMoisture({ activity: 0.5, t: celsius(25), food });
      assert.ok(Math.abs(x - printed[food]) < 2e-4, `${food} ${x}`);
      assert.ok(Math.abs(driedActivity({ moisture: x, t: celsius(25), food }) - 0.5) < 1e-8);
    }
  });

  it('is refused at and above saturation', () => {
    assert.throws(() => equilibriumMoisture({ activity: 1, t: celsius(20) }), RangeError);
    assert.throws(() => driedActivity({ moisture: 50, t: celsius(20) }), RangeError);
  });
});
