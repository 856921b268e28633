import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { countedJuice, fruitMinimum } from '#lib/science/fruit-minimum.ts';

const jam = { name: 'jam', group: 'II', brix: 65 } as const;

describe('a name by composition', () => {
  it('is jam from 47:55 for group I and from 45:55 for group II', () => {
    assert.ok(fruitMinimum({ ...jam, fruitG: 45, sweetenerG: 55 }).allowed);
    assert.ok(!fruitMinimum({ ...jam, fruitG: 44.9, sweetenerG: 55 }).allowed);
    assert.ok(!fruitMinimum({ ...jam, group: 'I', fruitG: 46, sweetenerG: 55 }).allowed);
    assert.ok(fruitMinimum({ ...jam, group: 'I', fruitG: 47, sweetenerG: 55 }).allowed);
  });

  it('asks 0.855 and 0.818', () => {
    assert.equal(fruitMinimum({ ...jam, group: 'I', fruitG: 1, sweetenerG: 1 }).ratioNeeded.toFixed(3), '0.855');
    assert.equal(fruitMinimum({ ...jam, fruitG: 1, sweetenerG: 1 }).ratioNeeded.toFixed(3), '0.818');
  });

  it('is no jam below 65 % solids, no butter below 43 % or 5:2', () => {
    assert.ok(!fruitMinimum({ ...jam, fruitG: 60, sweetenerG: 40, brix: 64 }).allowed);
    const butter = { name: 'fruit butter', group: 'II', sweetenerG: 2 } as const;
    assert.ok(fruitMinimum({ ...butter, fruitG: 5, brix: 43 }).allowed);
    assert.ok(!fruitMinimum({ ...butter, fruitG: 5, brix: 42 }).allowed);
    assert.ok(!fruitMinimum({ ...butter, fruitG: 4.9, brix: 43 }).allowed);
  });

  it('counts juice of the assumed °Bx as its own weight', () => {
    assert.ok(Math.abs(countedJuice({ grams: 1000, brix: 100 / 7.5, cfrFactor: 7.5 }) - 1000) < 1e-9);
    assert.ok(countedJuice({ grams: 1000, brix: 9, cfrFactor: 7.5 }) < 1000);
  });

  it('is for sweetened spreads', () => {
    assert.throws(() => fruitMinimum({ ...jam, fruitG: 1, sweetenerG: 0 }), RangeError);
  });
});
