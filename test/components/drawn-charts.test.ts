import assert from 'node:assert/strict';
import fc from 'fast-check';
import { test } from 'vitest';
import { fanRows, monthTicks } from '#components/fan-chart-data.ts';
import { boardHours, clock } from '#components/plan-board-layout.ts';
import { linePath, percentOf, roundTicks } from '#components/plot-scale.ts';
import { dotStacks } from '#components/quantile-dots-layout.ts';
import { sankeyLayout } from '#components/sankey-layout.ts';
import { timerText } from '#components/timer-text.ts';
import { addDays, plainDate } from '#lib/units/plain-date.ts';

test('ticks are round, inside the span and evenly spaced', () => {
  assert.deepEqual(roundTicks({ from: 0, to: 420 }, 5), [0, 100, 200, 300, 400]);
  assert.deepEqual(roundTicks({ from: 2.1, to: 2.8 }, 4), [2.2, 2.4, 2.6, 2.8]);
  fc.assert(
    fc.property(
      fc.double({ min: -1e4, max: 1e4, noNaN: true }),
      fc.double({ min: 0.01, max: 1e4, noNaN: true }),
      (from, length) => {
        const ticks = roundTicks({ from, to: from + length }, 5);
        assert.ok(ticks.length <= 6);
        for (const t of ticks) assert.ok(t >= from - length * 1e-6 && t <= from + length * (1 + 1e-6));
      },
    ),
  );
});

test('a point in the middle of both spans is drawn in the middle, higher figures higher up', () => {
  assert.equal(percentOf({ from: 10, to: 20 }, 15), 50);
  assert.equal(
    linePath(
      [
        { x: 5, y: 5 },
        { x: 10, y: 10 },
      ],
      { from: 0, to: 10 },
      { from: 0, to: 10 },
    ),
    'M50.00 50.00L100.00 0.00',
  );
});

test('every year is one dot, and no two dots lie on each other', () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 20 }), (shares) => {
      const dots = dotStacks(shares);
      assert.equal(dots.length, shares.length);
      assert.equal(new Set(dots.map((d) => `${d.at}/${d.level}`)).size, dots.length);
    }),
  );
});

test('a flow carries its mass: links into a node are as wide together as the node is high, and nodes do not overlap', () => {
  const node = (id: string, column: number) => ({ id, label: id, column, colour: '#000000' });
  const flow = sankeyLayout(
    [node('tree', 0), node('jar', 1), node('vapour', 1), node('nothing', 1)],
    [
      { from: 'tree', to: 'jar', grams: 3000 },
      { from: 'tree', to: 'vapour', grams: 1000 },
    ],
    { width: 400, height: 200, nodeWidth: 10, gap: 20 },
  );
  assert.deepEqual(
    flow.nodes.map((n) => [n.id, n.grams]),
    [
      ['tree', 4000],
      ['jar', 3000],
      ['vapour', 1000],
    ],
  );
  const height = (id: string) => flow.nodes.find((n) => n.id === id)?.height ?? 0;
  assert.ok(Math.abs(height('jar') - 3 * height('vapour')) < 1e-9);
  assert.ok(Math.abs(flow.links.reduce((s, l) => s + l.width, 0) - height('tree')) < 1e-9);
  const [jar, vapour] = [flow.nodes[1], flow.nodes[2]];
  assert.ok(jar && vapour && vapour.y >= jar.y + jar.height + 20 - 1e-9);
});

test('hours of the board are whole, and the time after midnight is marked', () => {
  assert.deepEqual(boardHours([{ start: 1145, finish: 1275 }]), {
    from: 1140,
    to: 1320,
    ticks: [1140, 1200, 1260, 1320],
  });
  assert.equal(clock(1470), '00:30 +1');
  assert.equal(clock(1085), '18:05');
});

test('a timer shows whole seconds rounded up and reaches 0:00 only at the end', () => {
  assert.equal(timerText(600_000), '10:00');
  assert.equal(timerText(1), '0:01');
  assert.equal(timerText(0), '0:00');
  assert.equal(timerText(3_725_000), '1:02:05');
});

test('a fan row carries its bands and sample years, and the axis names each month once', () => {
  const weeks = Array.from({ length: 10 }, (_, i) => ({
    week: addDays(plainDate('2025-05-05'), 7 * i),
    p10: 1,
    p25: 2,
    p50: 3,
    p75: 4,
    p90: 5,
  }));
  assert.deepEqual(
    monthTicks(weeks).map((d) => d.slice(0, 7)),
    ['2025-05', '2025-06', '2025-07'],
  );
  const [first] = fanRows(weeks, [weeks.map((_, i) => i + 7)]);
  assert.deepEqual([first?.eight, first?.five, first?.middle, first?.year0], [[1, 5], [2, 4], 3, 7]);
});
