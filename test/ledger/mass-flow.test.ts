import { describe, expect, it } from 'vitest';
import { newLot } from '#lib/ledger/lot.ts';
import { batchFlow, type MassFlow, seasonFlow } from '#lib/ledger/mass-flow.ts';
import { counterMovement, moveGrams, movePieces } from '#lib/ledger/movement.ts';
import { plainDate } from '#lib/units/plain-date.ts';

const lot = (id: string, kind: Parameters<typeof newLot>[0]['kind'], known: object = {}) => ({
  ...newLot({
    id,
    code: id,
    kind,
    label: id,
    unit: 'g',
    parentActId: 'a',
    madeOn: plainDate('2025-09-13'),
    since: '2025-09-13T10:00:00Z',
    ...known,
  }),
  onHand: 0,
});
const LOTS = new Map(
  [
    lot('damsons', 'fruit', { row: 'D3', foodId: 'damson' }),
    lot('sugar', 'supply'),
    lot('pan', 'batch'),
    lot('jam', 'jars'),
    lot('powder', 'set-aside'),
  ].map((l) => [l.id, l]),
);
const lotOf = (id: string) => LOTS.get(id);
const at = (id: string) => ({ lot: id });
const into = (f: MassFlow, id: string) => f.links.filter((l) => l.to === id).reduce((g, l) => g + l.grams, 0);
const outOf = (f: MassFlow, id: string) => f.links.filter((l) => l.from === id).reduce((g, l) => g + l.grams, 0);

// Story A1: 1.50 kg of damsons less 8 % stones, 1.20 kg sugar, 0.15 water; 6 jars of 311.5 g, 274 g over, the rest vapour.
const BATCH = [
  moveGrams(at('damsons'), at('pan'), 1500),
  moveGrams(at('sugar'), at('pan'), 1200),
  moveGrams({ sink: 'tap' }, at('pan'), 150),
  { from: at('pan'), to: at('jam'), qty: 6, grams: 1869, piece: null },
  moveGrams(at('pan'), { sink: 'trim' }, 120),
  moveGrams(at('pan'), { sink: 'vapour' }, 861),
];

describe('the mass of a batch', () => {
  it('goes in and comes out to the gram, the fruit by its row', () => {
    const flow = batchFlow({ id: 'pan', label: 'Damson jam' }, BATCH, lotOf);
    expect(into(flow, 'pan')).toBe(2850);
    expect(outOf(flow, 'pan')).toBe(2850);
    expect(flow.nodes.map((n) => [n.column, n.label])).toEqual([
      [0, 'damsons, D3'],
      [0, 'sugar'],
      [0, 'water'],
      [1, 'in the pan'],
      [2, 'jam'],
      [2, 'vapour'],
      [2, 'trim, thrown'],
    ]);
  });
});

describe('the mass of a season', () => {
  const picked = [
    moveGrams({ sink: 'harvest' }, at('damsons'), 5000),
    moveGrams({ sink: 'harvest' }, { sink: 'sold' }, 800),
    moveGrams(at('damsons'), { sink: 'compost' }, 300),
  ];

  it('is whole: what the trees gave is sold, composted, cooked, or still in the store', () => {
    const flow = seasonFlow([...picked, ...BATCH, movePieces({ sink: 'in-use' }, at('sugar'), 3)], lotOf);
    expect(outOf(flow, 'trees')).toBe(5800);
    expect(into(flow, 'store')).toBe(outOf(flow, 'store'));
    expect(into(flow, 'left')).toBe(5000 - 300 - 1500);
    expect(into(flow, 'pans')).toBe(outOf(flow, 'pans'));
    expect(into(flow, 'jars')).toBe(1869);
    expect(flow.nodes.map((n) => n.label)).toContain('fruit sold fresh');
  });

  it('forgets what was put right', () => {
    const wrong = moveGrams(at('damsons'), at('pan'), 700);
    const flow = seasonFlow([...picked, ...BATCH, wrong, counterMovement(wrong)], lotOf);
    expect(into(flow, 'pans')).toBe(2850);
    expect(into(flow, 'left')).toBe(3200);
  });

  it('names what stood in the store before, where more left it than came in', () => {
    const flow = seasonFlow(BATCH, lotOf);
    expect(outOf(flow, 'before')).toBe(1500);
    expect(into(flow, 'store')).toBe(outOf(flow, 'store'));
  });

  it('leaves jars out once they are made', () => {
    const eaten = { from: at('jam'), to: { sink: 'eaten' as const }, qty: 1, grams: 311, piece: 1 };
    expect(seasonFlow([...BATCH, eaten], lotOf)).toEqual(seasonFlow(BATCH, lotOf));
  });
});
