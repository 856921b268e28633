import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'vitest';
import { colouredFoods, contrastRatio, fruitColour, labelColour, NO_FRUIT } from '#components/fruit-colour.ts';

const PRODUCTS = [
  'jam',
  'jelly',
  'butter',
  'paste',
  'sauce',
  'juice',
  'fruit-in-syrup',
  'frozen',
  'dried',
  'leather',
  'marmalade',
];

test('black on white is 21 to 1 and mid grey #767676 on white is 4.54 to 1 (WCAG 2.2, published examples)', () => {
  assert.equal(contrastRatio('#000000', '#ffffff'), 21);
  assert.equal(contrastRatio('#767676', '#ffffff').toFixed(2), '4.54');
});

test('a label reads on every fruit and product at 4.5 to 1 or better', () => {
  for (const food of colouredFoods()) {
    for (const product of [undefined, ...PRODUCTS]) {
      const ground = fruitColour(food, product);
      assert.ok(contrastRatio(ground, labelColour(ground)) >= 4.5, `${food} ${product}`);
    }
  }
});

test('an unknown food is grey-blue, never another fruit', () => {
  assert.equal(fruitColour('not-a-fruit'), NO_FRUIT);
  assert.ok(!colouredFoods().some((f) => fruitColour(f) === NO_FRUIT));
});

test('the tokens keep figures, actions and quiet text readable: 7 to 1 (WCAG 2.2 AAA), edges of controls 3 to 1', () => {
  const css = readFileSync(new URL('../../app/globals.css', import.meta.url), 'utf8');
  const light = css.slice(css.indexOf(':root'), css.indexOf('}', css.indexOf(':root')));
  const torch = css.slice(css.indexOf('[data-mode="torch"]'), css.indexOf('}', css.indexOf('[data-mode="torch"]')));
  for (const theme of [light, light + torch]) {
    const token = (name: string): string => {
      const found = [...theme.matchAll(new RegExp(`--${name}: (#[0-9a-f]{6});`, 'g'))].at(-1)?.[1];
      assert.ok(found, name);
      return found;
    };
    const reads = (ink: string, ground: string, least: number) =>
      assert.ok(
        contrastRatio(token(ink), token(ground)) >= least,
        `${ink} on ${ground}: ${contrastRatio(token(ink), token(ground)).toFixed(2)}`,
      );
    for (const ink of ['ink', 'rim']) for (const ground of ['table', 'enamel']) reads(ink, ground, 7);
    for (const ground of ['table', 'enamel']) reads('quiet', ground, 6.5);
    reads('on-rim', 'rim', 7);
    reads('caution-ink', 'caution-ground', 7);
    reads('refuse-ink', 'refuse-ground', 7);
    reads('refuse-ink', 'enamel', 7);
    for (const ground of ['table', 'enamel']) reads('edge', ground, 3);
  }
});
