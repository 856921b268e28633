import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { storageMoisture, storedActivity } from '#lib/science/storage-moisture.ts';
import { celsius } from '#lib/units/quantity.ts';

const apple = (wet: number, t: number) => storedActivity({ wet, t: celsius(t), food: 'apple' });

describe('the moisture dried food may be stored at', () => {
  it('for apple at 25 °C is 15 %, at 15 °C more, by the set worked elsewhere', () => {
    assert.equal(storageMoisture({ t: celsius(25), food: 'apple' }).typ.toFixed(3), '0.150');
    const cool = storageMoisture({ t: celsius(15), food: 'apple' });
    assert.ok(cool.typ > 0.16 && cool.typ < 0.18, `${cool.typ}`);
    assert.ok(Math.abs(cool.typ - cool.low - 0.03) < 1e-12);
  });

  it('gives a water activity whose band is three points of moisture either way', () => {
    const { typ, low, high } = apple(0.18, 25);
    assert.ok(Math.abs(typ - 0.67) < 0.002);
    assert.ok(Math.abs(low - 0.6) < 0.002, 'that of 15 %');
    assert.ok(high > 0.72);
    assert.equal(apple(0.02, 25).low, 0);
  });

  it('differs by food: powder at 8 % is drier than the limit, with room', () => {
    const powder = storedActivity({ wet: 0.08, t: celsius(20), food: 'peel-core' });
    assert.ok(powder.typ > 0.25 && powder.high < 0.6, JSON.stringify(powder));
  });

  it('is refused for what is no moisture of dried food', () => {
    for (const wet of [0, -0.1, 0.5]) assert.throws(() => apple(wet, 20), RangeError);
  });
});
