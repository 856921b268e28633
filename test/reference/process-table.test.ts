/**
 * The table as the project noted it in words, one line a row, compared with the data: USDA Complete Guide to Home
 * Canning (AIB 539) and its extension reprints. Columns: product, pack, jars, minutes by altitude band, headspace in inches,
 * acid in the jar, V read / M from memory of the publication.
 * Taken from this project's notes of the publications, not a fresh copy: guards the transcription, not the reading.
 */
import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { PROCESS_PRODUCTS, type ProcessProductRow } from '#lib/reference/process-products.ts';
import { PROCESS_TABLE, type PrintedProcessRow } from '#lib/reference/process-table.ts';

const PRINTED = `
jam-or-preserve-no-added-pectin | hot | half-pint, pint | 5/10/15 | 0.25 |  | V
jam-with-added-pectin | hot | half-pint, pint | 5/10/15 | 0.25 |  | V
jelly-with-or-without-added-pectin | hot | half-pint, pint | 5/10/15 | 0.25 |  | V
marmalade | hot | half-pint, pint | 5/10/15 | 0.25 |  | V
conserve-incl-nuts | hot | half-pint, pint | 5/10/15 | 0.25 |  | V
fruit-butter-apple | hot | half-pint, pint | 5/10/15 | 0.25 |  | V
fruit-butter-apple | hot | quart | 10/15/20 | 0.25 |  | V
fruit-butter-other-acid-fruit | hot | half-pint, pint | 5/10/15 | 0.25 |  | M
applesauce | hot | pint | 15/20/20/25 | 0.5 |  | V
applesauce | hot | quart | 20/25/30/35 | 0.5 |  | V
apples-sliced | hot | pint, quart | 20/25/30/35 | 0.5 |  | V
apple-juice | hot | pint, quart | 5/10/15 | 0.25 |  | V
apple-juice | hot | half-gallon | 10/15/20 | 0.25 |  | V
grape-juice | hot | pint, quart | 5/10/15 | 0.25 |  | M
grape-juice | hot | half-gallon | 10/15/20 | 0.25 |  | M
berries-whole | hot | pint, quart | 15/20/20/25 | 0.5 |  | V
berries-whole | raw | pint | 15/20/20/25 | 0.5 |  | V
berries-whole | raw | quart | 20/25/30/35 | 0.5 |  | V
berry-or-cherry-or-grape-syrup | hot | half-pint, pint | 10/15/20 | 0.5 |  | V
cherries-sweet-or-sour | hot | pint | 15/20/20/25 | 0.5 |  | V
cherries-sweet-or-sour | hot | quart | 20/25/30/35 | 0.5 |  | V
cherries-sweet-or-sour | raw | pint, quart | 25/30/35/40 | 0.5 |  | V
cranberry-sauce | hot | half-pint, pint | 15/20/20/25 | 0.5 |  | V
peaches-yellow-flesh | hot | pint | 20/25/30/35 | 0.5 |  | V
peaches-yellow-flesh | hot | quart | 25/30/35/40 | 0.5 |  | V
peaches-yellow-flesh | raw | pint | 25/30/35/40 | 0.5 |  | V
peaches-yellow-flesh | raw | quart | 30/35/40/45 | 0.5 |  | V
nectarines-yellow-flesh | hot | pint | 20/25/30/35 | 0.5 |  | V
nectarines-yellow-flesh | hot | quart | 25/30/35/40 | 0.5 |  | V
nectarines-yellow-flesh | raw | pint | 25/30/35/40 | 0.5 |  | V
nectarines-yellow-flesh | raw | quart | 30/35/40/45 | 0.5 |  | V
apricots | hot | pint | 20/25/30/35 | 0.5 |  | M
apricots | hot | quart | 25/30/35/40 | 0.5 |  | M
apricots | raw | pint | 25/30/35/40 | 0.5 |  | M
apricots | raw | quart | 30/35/40/45 | 0.5 |  | M
pears | hot | pint | 20/25/30/35 | 0.5 |  | V
pears | hot | quart | 25/30/35/40 | 0.5 |  | V
asian-pears | hot | pint | 20/25/30/35 | 0.5 | acid | V
asian-pears | hot | quart | 25/30/35/40 | 0.5 | acid | V
plums | hot or raw | pint | 20/25/30/35 | 0.5 |  | V
plums | hot or raw | quart | 25/30/35/40 | 0.5 |  | V
grapes-whole | hot | pint, quart | 10/15/15/20 | 1 |  | V
grapes-whole | raw | pint | 15/20/20/25 | 1 |  | V
grapes-whole | raw | quart | 20/25/30/35 | 1 |  | V
rhubarb-stewed | hot | pint, quart | 15/20/25 | 0.5 |  | V
fruit-puree | hot | pint, quart | 15/20/25 | 0.25 |  | V
citrus-sections-grapefruit-orange | raw | pint, quart | 10/15/20 | 0.5 |  | V
figs | hot | pint | 45/50/55/60 | 0.5 | acid | V
figs | hot | quart | 50/55/60/65 | 0.5 | acid | V
pineapple | hot | pint | 15/20/20/25 | 0.5 |  | M
pineapple | hot | quart | 20/25/30/35 | 0.5 |  | M
fruit-cocktail-mixed | raw | half-pint, pint | 20/25/30/35 | 0.5 |  | M
spiced-crab-apples | hot | pint | 20/25/30/35 | 0.5 |  | M
spiced-apple-rings | hot | half-pint, pint | 10/15/20 | 0.5 |  | M
pie-filling-apple | hot | pint, quart | 25/30/35/40 | 1 | acid | V
pie-filling-blueberry | hot | pint, quart | 30/35/40/45 | 1 | acid | V
pie-filling-cherry | hot | pint, quart | 30/35/40/45 | 1 | acid | M
pie-filling-peach | hot | pint, quart | 30/35/40/45 | 1 | acid | M
tomatoes-crushed | hot | pint | 35/40/45/50 | 0.5 | acid | M
tomatoes-crushed | hot | quart | 45/50/55/60 | 0.5 | acid | M
tomato-juice | hot | pint | 35/40/45/50 | 0.5 | acid | V
tomato-juice | hot | quart | 40/45/50/55 | 0.5 | acid | V
tomatoes-whole-in-water | hot or raw | pint | 40/45/50/55 | 0.5 | acid | V
tomatoes-whole-in-water | hot or raw | quart | 45/50/55/60 | 0.5 | acid | V
tomatoes-whole-in-juice-or-raw-no-liquid | hot or raw | pint, quart | 85/90/95/100 | 0.5 | acid | M
`;

const printedLine = (row: PrintedProcessRow): string => {
  const product: ProcessProductRow = PROCESS_PRODUCTS[row.product];
  return [
    row.product,
    row.packs.join(' or '),
    row.jars.join(', '),
    row.minutes.join('/'),
    product.headspaceIn,
    product.acidRequired ? 'acid' : '',
    row.status === 'verified' ? 'V' : 'M',
  ].join(' | ');
};

describe('the process table', () => {
  it('holds the 65 printed rows, figure for figure', () => {
    assert.deepEqual(PROCESS_TABLE.map(printedLine), PRINTED.trim().split('\n'));
    assert.equal(PROCESS_TABLE.length, 65);
  });

  it('gives every row one figure per band of its product', () => {
    for (const row of PROCESS_TABLE) {
      const { band } = PROCESS_PRODUCTS[row.product];
      assert.equal(row.minutes.length, band === 'three' ? 3 : 4, row.product);
    }
  });

  it('keeps repeated figures as printed instead of adding five minutes a band', () => {
    const sauce = PROCESS_TABLE.find((r) => r.product === 'applesauce');
    assert.deepEqual(sauce?.minutes, [15, 20, 20, 25]);
  });

  it('uses every product at least once', () => {
    const used = new Set(PROCESS_TABLE.map((r) => r.product));
    assert.deepEqual(
      Object.keys(PROCESS_PRODUCTS).filter((p) => !used.has(p as never)),
      [],
    );
  });

  it('puts acid in the jar of tomatoes, figs, Asian pears and pie fillings, and of nothing else', () => {
    const acid = Object.entries(PROCESS_PRODUCTS).filter(([, p]) => p.acidRequired);
    assert.deepEqual(
      acid.map(([id]) => id).filter((id) => !/^(tomato|figs|asian-pears|pie-filling-)/.test(id)),
      [],
    );
    assert.equal(acid.length, 10);
  });
});
