import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { powderCarries } from '#lib/science/powder-carries.ts';

describe('33 g of apple powder', () => {
  it('carry 0.18 kg of sugar, 0.10 to 0.30', () => {
    const { typ, low, high } = powderCarries({ powderId: 'apple-powder', grams: 33 });
    assert.deepEqual([Math.round(typ), low, high], [182, 99, 297]);
  });

  it('are refused when the powder is unknown', () => {
    assert.throws(() => powderCarries({ powderId: 'flour', grams: 33 }), RangeError);
  });
});
