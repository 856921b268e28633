import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import { boardsAtWeek, type LineAhead } from '#components/shelf-ahead-layout.ts';

const board = (address: string) => ({ address, widthMm: 900, depthMm: 320, clearMm: 230 });
const halfPint = { pitchMm: 75, heightMm: 97 };
const line = (slug: string, half: number[], tenth: number[]): LineAhead => ({
  slug,
  label: slug,
  foodColour: '#000',
  jarKind: halfPint,
  half,
  tenth,
});

/** A board of 900 x 320 x 230 mm holds 12 x 4 x 2 = 96 half-pints. */
describe('the shelves at a week to come', () => {
  test('a line that fills a board goes on on the next, and what is over stands on the floor', () => {
    const { boards, floor } = boardsAtWeek([board('B1-S1'), board('B1-S2')], [line('damson', [200], [210])], 0);
    assert.deepEqual(
      boards.map((b) => b.jars.map((j) => j.count)),
      [[96], [96]],
    );
    assert.deepEqual(floor, [
      { label: 'damson', count: 8, planned: false },
      { label: 'damson', count: 10, planned: true },
    ]);
  });
  test('solid is what half of the seasons have, dashed what one in ten has more, and no jar is lost', () => {
    const lines = [line('a', [10, 0], [14, 3]), line('b', [96, 5], [96, 5])];
    const { boards, floor } = boardsAtWeek([board('B1-S1'), board('B1-S2')], lines, 0);
    const all = boards.flatMap((b) => b.jars);
    assert.equal(
      all.filter((j) => !j.planned).reduce((n, j) => n + j.count, 0),
      106,
    );
    assert.equal(
      all.filter((j) => j.planned).reduce((n, j) => n + j.count, 0),
      4,
    );
    assert.equal(floor.length, 0);
    assert.deepEqual(
      boardsAtWeek([board('B1-S1')], lines, 1).boards[0]?.jars.map((j) => [j.line, j.count, j.planned ?? false]),
      [
        ['a', 3, true],
        ['b', 5, false],
      ],
    );
  });
});
