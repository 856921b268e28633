/**
 * A recipe thought ahead. The boiling water of the two kitchens is the standard atmosphere's (98.6 °C at 410 m, 100.0 °C at 6 m) and
 * a full-sugar jam stops 8 °F above it (USDA); jam minutes by altitude are the row of MSU Extension 01600890.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { recipeOf } from '#lib/reference/recipes/recipe-book.ts';
import type { Context } from '#lib/usecases/context.ts';
import { swapped } from '#lib/usecases/exchange-dose.ts';
import { type AheadAsk, leastGrams, thinkAhead } from '#lib/usecases/think-ahead.ts';
import { demoContext, demoOn } from '#test/support/demo-database.ts';

const ASK: AheadAsk = {
  jars: null,
  fillPan: false,
  kg: null,
  kitchen: null,
  pan: null,
  jar: null,
  pectin: null,
  acid: null,
  measuredPh: null,
};
const damson = recipeOf('damson-jam');

describe('least weight', () => {
  it('is where enough begins, whatever the threshold', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 190_000 }), (edge) => leastGrams((g) => g >= edge) === edge),
      { numRuns: 300 },
    );
    expect(leastGrams(() => false)).toBeNull();
  });
});

describe('a recipe thought ahead', () => {
  const demo = demoOn('2025-09-12');
  const ahead = async (ctx: Context, ask: Partial<AheadAsk>, recipe = damson) => {
    const told = await thinkAhead(ctx, recipe, { ...ASK, ...ask });
    if ('refused' in told) throw new Error(told.refused);
    return told;
  };
  const figure = (list: readonly { label: string; figure: { value: number } }[], label: string) =>
    list.find((f) => f.label === label)?.figure.value;

  it('gives the jars asked for, and a gram less of fruit does not', async () => {
    const ctx = await demoContext(await demo());
    for (const jars of [1, 6, 7, 12, 30]) {
      const told = await ahead(ctx, { jars });
      const grams = told.fruit.reduce((s, f) => s + f.grams, 0);
      expect(figure(told.jars, 'Jars')).toBeGreaterThanOrEqual(jars);
      const less = await ahead(ctx, { kg: (grams - 1) / 1000 });
      expect(figure(less.jars, 'Jars')).toBeLessThan(jars);
    }
  });

  it('fills one pan and not a gram more', async () => {
    const ctx = await demoContext(await demo());
    const told = await ahead(ctx, { fillPan: true });
    expect(told.pans).toBe(1);
    const grams = told.fruit.reduce((s, f) => s + f.grams, 0);
    expect((await ahead(ctx, { kg: (grams + 1) / 1000 })).pans).toBe(2);
    // 6 cups of 235 g of prepared fruit; damsons lose a tenth in stones.
    expect(grams).toBeCloseTo((6 * 235) / 0.9, -1);
  });

  it('stops hotter by the sea and takes the minutes of its altitude', async () => {
    const ctx = await demoContext(await demo());
    const [home, quay] = [await ahead(ctx, { kitchen: 'home' }), await ahead(ctx, { kitchen: 'quay' })];
    expect(figure(home.finish, 'Temperature')).toBeCloseTo(98.64 + 4.44, 1);
    expect(figure(quay.finish, 'Temperature')).toBeCloseTo(99.98 + 4.44, 1);
    expect([figure(home.jars, 'Process at a full boil'), figure(quay.jars, 'Process at a full boil')]).toEqual([10, 5]);
    expect([figure(home.jars, 'Boil the empty jars'), figure(quay.jars, 'Boil the empty jars')]).toEqual([
      undefined,
      10,
    ]);
  });

  it('shows beside each other what an exchange changes, and nothing when there is none', async () => {
    const ctx = await demoContext(await demo());
    expect((await ahead(ctx, {})).changes).toEqual([]);
    const told = await ahead(ctx, { pectin: { item: 'apple-powder', gPerKg: 25 } });
    const powder = told.changes.find((c) => c.what === 'apple peel and core powder');
    expect(powder).toMatchObject({ was: 'none', now: '34 g' });
    const high = (text: string | undefined) => Number(/to ([\d.]+) of the pectin/.exec(text ?? '')?.[1]);
    const set = told.changes.find((c) => c.what === 'set by the tables');
    expect(high(set?.now)).toBeGreaterThan(high(set?.was));
  });

  it('reckons the cost from the house’s prices, and names what has none', async () => {
    const db = await demo();
    const ctx = await demoContext(db);
    expect((await ahead(ctx, {})).cost).toBeNull();
    ctx.place.settings.prices = { currency: '£', perKg: { sugar: 110 } };
    const told = await ahead(ctx, { kg: 1.5 });
    const sugarG = told.doses.find((d) => d.label.startsWith('sugar'))?.figure.value ?? 0;
    expect(told.cost).toMatchObject({ total: `£ ${((sugarG * 1.1) / 1000).toFixed(2)}`, unpriced: ['lids'] });
  });

  it('gives a pH only from a measured start, lower with more acid, and never as a ground', async () => {
    const ctx = await demoContext(await demo());
    expect((await ahead(ctx, {})).phAfter).toBeNull();
    const ph = async (gPerKg: number) =>
      (await ahead(ctx, { measuredPh: 3.4, acid: { item: 'citric-acid', gPerKg } })).phAfter?.value ?? Number.NaN;
    expect(await ph(0.001)).toBeCloseTo(3.4, 2);
    expect(await ph(5)).toBeLessThan(await ph(2));
    expect((await ahead(ctx, { measuredPh: 3.4 })).goes).toBe((await ahead(ctx, {})).goes);
  });
});

describe('an exchange', () => {
  it('leaves the recipe itself alone when nothing is exchanged', () => {
    expect(swapped(damson, { pectin: null, acid: null })).toBe(damson);
  });
  it('never touches a tested acid dose', () => {
    for (const id of ['apple-pie-filling', 'asian-pears-acidified'])
      expect(swapped(recipeOf(id), { pectin: null, acid: { item: 'citric-acid', gPerKg: 50 } })).toHaveProperty(
        'refused',
      );
  });
  it('asks for the grams it cannot know', () => {
    expect(swapped(damson, { pectin: { item: 'pectin-stock', gPerKg: null }, acid: null })).toEqual({
      refused: 'how much of the other pectin goes in is missing',
    });
  });
});
