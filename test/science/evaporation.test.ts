import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { boilMinutes } from '#lib/science/evaporation.ts';

describe('boiling off', () => {
  it('takes its grams over the loss of the pan', () => {
    assert.equal(boilMinutes({ evaporateG: 450, panGPerMin: 45 }), 10);
  });

  it('of nothing takes no time', () => {
    assert.equal(boilMinutes({ evaporateG: -20, panGPerMin: 45 }), 0);
  });

  it('needs a pan that loses water', () => {
    assert.throws(() => boilMinutes({ evaporateG: 1, panGPerMin: 0 }), RangeError);
    assert.throws(() => boilMinutes({ evaporateG: 1, panGPerMin: Number.NaN }), RangeError);
  });
});
