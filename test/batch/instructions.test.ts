import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import type { BatchQuestion } from '#lib/batch/batch-question.ts';
import { batchSheet } from '#lib/batch/batch-sheet.ts';
import { instructions } from '#lib/batch/instructions.ts';
import { RECIPES } from '#lib/reference/recipes/recipe-book.ts';
import { homeBatch, PINT, QUART } from './home-kitchen.ts';

const stepsOf = (q: BatchQuestion) => instructions(batchSheet(q), q);
const textOf = (q: BatchQuestion): string =>
  stepsOf(q)
    .map((s) => `${s.text} ${s.caution ?? ''}`)
    .join('\n');

describe('instructions', () => {
  const damson = homeBatch('damson-jam', [{ foodId: 'damson', grams: 3000, grade: 'blemished', trimG: 240, brix: 14 }]);
  it('say the amounts, the pan weight first, then Brix, then the temperature of today', () => {
    const text = textOf(damson);
    assert.match(text, /2 equal batches/);
    assert.match(text, /1\.38 kg of fruit, 1\.20 kg sugar, 150 g water/);
    const [weight, brix, temperature] = [
      text.indexOf('2.14 kg'),
      text.indexOf('65 °Bx'),
      text.indexOf('103.0 °C (217.5 °F)'),
    ];
    assert.ok(weight > 0 && weight < brix && brix < temperature);
  });
  it('put the cautions for sugar, steam and hot glass where the act happens', () => {
    const steps = stepsOf(damson);
    assert.ok(steps.some((s) => s.part === 'finish' && s.caution?.includes('burns')));
    assert.ok(steps.some((s) => s.part === 'process' && s.caution?.includes('steam')));
    assert.ok(steps.some((s) => s.part === 'fill' && s.caution?.includes('crack')));
  });
  it('give the headspace in both units, the minutes with the band, and the household line', () => {
    const text = textOf(damson);
    assert.match(text, /0\.25 in \(6 mm\)/);
    assert.match(text, /10 min from a full boil \(1,001-6,000 ft\)/);
    assert.match(text, /no tested recipe/);
  });
  it('stop at the reason for picked-up fruit', () => {
    const q = homeBatch(
      'apple-juice',
      [{ foodId: 'apple-cider-sweet', grams: 9000, grade: 'perfect', groundFall: true }],
      { jar: QUART },
    );
    assert.equal(stepsOf(q).length, 1);
    assert.match(textOf(q), /hens/);
  });
  it('heat juice to 71 °C and repeat the acid dose for figs', () => {
    assert.match(
      textOf(homeBatch('apple-juice', [{ foodId: 'apple-dessert', grams: 9000, grade: 'perfect' }], { jar: QUART })),
      /71 °C/,
    );
    assert.match(
      textOf(homeBatch('figs-acidified', [{ foodId: 'fig', grams: 5000, grade: 'perfect' }], { jar: PINT })),
      /1 tbsp \(15 mL\)/,
    );
  });
  it('exist for every recipe of the book and give no canner time where the gate gives none', () => {
    for (const recipe of RECIPES) {
      const fruit = recipe.fruits.map((p) => ({
        foodId: p.foodIds[0] as string,
        grams: 3000 * p.share.typ,
        grade: 'perfect' as const,
      }));
      const q = homeBatch(recipe.id, fruit, recipe.jarSizes[0] === 'pint' ? { jar: PINT } : {});
      const steps = stepsOf(q);
      assert.ok(steps.length >= 3, recipe.id);
      if (!recipe.process) assert.ok(!steps.some((s) => s.part === 'process'), recipe.id);
      assert.doesNotMatch(
        steps.map((s) => `${s.text} ${s.caution ?? ''}`).join(' '),
        /\b(safe|probably|likely)\b|NaN|undefined/i,
      );
    }
  });
});
