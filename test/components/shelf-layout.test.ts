import assert from 'node:assert/strict';
import fc from 'fast-check';
import { test } from 'vitest';
import { jarsDeep, jarsHigh, type ShelfJars, shelfCapacity, shelfLayout } from '#components/shelf-layout.ts';

/** The stillroom's shelf and the jar pitches and heights of the jar tables (square of band and lid). */
const SHELF = { widthMm: 900, depthMm: 320, clearMm: 230 };
const QUARTER_PINT = { pitchMm: 73, heightMm: 60 };
const HALF_PINT = { pitchMm: 75, heightMm: 97 };
const PINT = { pitchMm: 83, heightMm: 130 };
const QUART = { pitchMm: 96, heightMm: 178 };

const line = (count: number, jarKind = HALF_PINT): ShelfJars => ({
  line: 'x',
  label: 'x',
  foodColour: '#000000',
  jarKind,
  count,
});

test('a shelf of 900 x 320 x 230 mm holds 96 half-pints or quarter-pints, 30 pints, 27 quarts', () => {
  assert.equal(shelfCapacity(SHELF, HALF_PINT), 96);
  assert.equal(shelfCapacity(SHELF, QUARTER_PINT), 96);
  assert.equal(shelfCapacity(SHELF, PINT), 30);
  assert.equal(shelfCapacity(SHELF, QUART), 27);
});

test('a jar taller than the shelf has no place on it', () => {
  assert.equal(shelfCapacity(SHELF, { pitchMm: 112, heightMm: 235 }), 0);
  const layout = shelfLayout(SHELF, [line(3, { pitchMm: 112, heightMm: 235 })]);
  assert.deepEqual([layout.groups.length, layout.left[0]?.count], [0, 3]);
});

test('jars are never stacked three high, however low they are', () => {
  assert.equal(jarsHigh(SHELF, { pitchMm: 73, heightMm: 20 }), 2);
});

test('a full shelf is full to the last jar and the next one has no room', () => {
  assert.deepEqual(shelfLayout(SHELF, [line(96)]).left, []);
  assert.equal(shelfLayout(SHELF, [line(97)]).left[0]?.count, 1);
  assert.equal(shelfLayout(SHELF, [line(96)]).fullness, 1);
});

test('ten half-pints stand in two columns: eight behind and above each other, and two', () => {
  const fronts = shelfLayout(SHELF, [line(10)]).groups[0]?.fronts.map((f) => [f.x, f.bottom, f.behind]);
  assert.deepEqual(fronts, [
    [0, 0, 4],
    [0, 97, 4],
    [75, 0, 2],
  ]);
});

test('no jar is lost or invented, none stands outside the shelf, no two lines share a place', () => {
  const kinds = fc.constantFrom(QUARTER_PINT, HALF_PINT, PINT, QUART);
  const stock = fc.array(fc.tuple(fc.integer({ min: 0, max: 80 }), kinds), { maxLength: 10 });
  fc.assert(
    fc.property(stock, (lines) => {
      const layout = shelfLayout(
        SHELF,
        lines.map(([n, kind]) => line(n, kind)),
      );
      const drawn = layout.groups.flatMap((g) => g.fronts.map((f) => f.behind)).reduce((a, b) => a + b, 0);
      const left = layout.left.reduce((a, b) => a + b.count, 0);
      assert.equal(
        drawn + left,
        lines.reduce((a, [n]) => a + n, 0),
      );
      let edge = 0;
      for (const g of layout.groups) {
        assert.ok(g.x >= edge && g.x + g.widthMm <= SHELF.widthMm);
        edge = g.x + g.widthMm;
        for (const f of g.fronts) {
          assert.ok(f.x >= g.x && f.x + g.jars.jarKind.pitchMm <= edge);
          assert.ok(f.bottom + g.jars.jarKind.heightMm <= SHELF.clearMm);
          assert.ok(f.behind >= 1 && f.behind <= jarsDeep(SHELF, g.jars.jarKind));
        }
      }
    }),
  );
});
