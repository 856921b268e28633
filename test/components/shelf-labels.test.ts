import assert from 'node:assert/strict';
import fc from 'fast-check';
import { test } from 'vitest';
import { placeLabels, shortenLabel } from '#components/shelf-labels.ts';

const NAMES = [
  'Damson jam',
  'Sour cherry-almond conserve',
  'Pears in light syrup',
  'Apple juice, canned',
  'Fig',
  'Frozen raspberries 500 g',
];

test('a name is shortened by its small words first, then to its first word, then with a point', () => {
  assert.equal(shortenLabel('Pears in light syrup', 1000, 10), 'Pears in light syrup');
  assert.equal(shortenLabel('Pears in light syrup', 70, 10), 'Pears syrup');
  assert.equal(shortenLabel('Pears in light syrup', 40, 10), 'Pears');
  assert.equal(shortenLabel('Gooseberry jam', 40, 10), 'Gooseb.');
  assert.equal(shortenLabel('Gooseberry jam', 12, 10), null);
});

test('labels never touch each other and are never cut at the ends, whatever stands on the shelf', () => {
  const slots = fc.array(fc.tuple(fc.constantFrom(...NAMES), fc.integer({ min: 40, max: 300 })), {
    minLength: 1,
    maxLength: 12,
  });
  fc.assert(
    fc.property(slots, fc.integer({ min: 10, max: 30 }), (wanted, size) => {
      let from = 0;
      const placed = placeLabels(
        wanted.map(([text, width]) => {
          const slot = { text, from, width };
          from += width;
          return slot;
        }),
        size,
        8,
      );
      let edge = 0;
      for (const label of placed) {
        assert.ok(label.x >= edge, `${label.text} begins at ${label.x}, the one before ends at ${edge}`);
        edge = label.x + label.width + 7.999;
      }
      assert.ok(edge - 7.999 <= from);
    }),
  );
});
