import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import { drawSeasons } from '#lib/forecast/season-draws.ts';
import { type Change, compare } from '#lib/forecast/what-if.ts';
import { holding } from './toy-scenario.ts';

const { sc, paths } = holding('best');
const draws = drawSeasons(sc, { paths, rows: paths.map(() => 64) }, { n: 400, seed: 7 });
const change = (changes: Record<string, Change>, name: string) => changes[name] as Change;

describe('what if', () => {
  test('a lever that changes nothing is said to have done nothing', () => {
    const changes = compare(sc, { scenario: (s) => ({ ...s }) }, draws);
    for (const c of Object.values(changes)) assert.ok(!c.moved && !c.clear && c.mean === 0 && c.se === 0);
    assert.ok(change(changes, 'used').before > 20);
  });

  test('jars given away leave as many fewer, on the same random numbers', () => {
    const gift = { id: 'gift', week: 0, product: 3, mean: 5, fixed: true, returnProb: 0 };
    const changes = compare(sc, { scenario: (s) => ({ ...s, events: [...s.events, gift] }) }, draws);
    assert.equal(change(changes, 'given').mean > 4, true);
    assert.ok(change(changes, 'used').clear && change(changes, 'used').mean < 0);
  });

  test('a heavier crop brings more lost fruit and the paired margin is far narrower than the spread between seasons', () => {
    const changes = compare(sc, { cropScale: [1, 1.4, 1] }, draws);
    const lost = change(changes, 'fruitLostKg');
    assert.ok(lost.clear && lost.mean > 0);
    const mean = lost.bySeason.reduce((s, x) => s + x, 0) / 400;
    assert.ok(Math.abs(mean - lost.mean) < 1e-9);
  });

  test('another draw of the same market day moves seasons without a clear difference', () => {
    const renamed = sc.events.map((e) => (e.id === 'market' ? { ...e, id: 'market moved' } : e));
    const given = change(compare(sc, { scenario: (s) => ({ ...s, events: renamed }) }, draws), 'given');
    assert.ok(given.moved && !given.clear, `${given.mean} +- ${given.se}`);
    assert.ok(given.se > 0.02 && given.se < 0.3);
  });

  test('a shorter shelf is over capacity more often and changes nothing else', () => {
    const changes = compare(
      sc,
      { scenario: (s) => ({ ...s, stores: s.stores.map((x) => (x.id === 'shelf' ? { ...x, capacity: 30 } : x)) }) },
      draws,
    );
    assert.ok(change(changes, 'over shelf').mean > 0);
    assert.ok(!change(changes, 'used').moved);
  });

  test('taking a product out of the lists is refused: its random numbers would not match', () => {
    assert.throws(
      () => compare(sc, { scenario: (s) => ({ ...s, products: s.products.slice(1) }) }, draws),
      /keeps the products/,
    );
  });
});
