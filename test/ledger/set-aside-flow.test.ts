/** Grams by hand: 5.39 kg of peel and core dry to 1.05 kg (82 to 8 % water leaves 18/92), of which 60 g go into a pan. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Lot, newLot } from '#lib/ledger/lot.ts';
import { type Movement, moveGrams } from '#lib/ledger/movement.ts';
import { type SetAsideSort, setAsideFlow } from '#lib/ledger/set-aside-flow.ts';
import { plainDate } from '#lib/units/plain-date.ts';

const lot = (id: string, kind: Lot['kind'], onHand = 0, known: Partial<Lot> = {}) => ({
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
  onHand,
});
const sort = (material: string | null, now: string, trim = true): SetAsideSort => ({
  material: material ? { id: material, label: material } : null,
  now: { id: now, label: now },
  trim,
});
const SORTS: Record<string, SetAsideSort> = {
  peel: sort('peel', 'powder'),
  old: sort('peel', 'powder'),
  boiled: sort('peel', 'fresh'),
  stock: sort(null, 'stock', false),
  rings: sort('rings', 'dried fruit', false),
  packs: sort(null, 'stock', false),
};
const at = (id: string) => ({ lot: id });
const inAct = (actId: string, ms: Movement[]) => ms.map((m) => ({ ...m, actId }));
const flowOf = (movements: (Movement & { actId: string })[], lots: ReturnType<typeof lot>[]) =>
  setAsideFlow(movements, lots, (l) => SORTS[l.id] as SetAsideSort);
const between = (f: ReturnType<typeof flowOf>, from: string, to: string) =>
  f.flow.links.find((l) => l.from === from && l.to === to)?.grams ?? 0;

describe('the flow of set-asides', () => {
  const fruitAndPans = [lot('apples', 'fruit'), lot('pan', 'batch'), lot('jam', 'batch')];

  it('goes from the pan to powder, vapour, the batch and the jar that is still here', () => {
    const f = flowOf(
      [
        ...inAct('fill', [moveGrams(at('pan'), at('peel'), 5390), moveGrams(at('pan'), { sink: 'trim' }, 400)]),
        ...inAct('dry', [moveGrams(at('peel'), { sink: 'vapour' }, 4335)]),
        ...inAct('cook', [moveGrams(at('peel'), at('jam'), 60)]),
      ],
      [...fruitAndPans, lot('peel', 'set-aside', 995)],
    );
    expect([f.cameOffG, f.keptG, f.fromCompostG]).toEqual([5790, 5390, 5390]);
    expect([...f.intoBatchesG]).toEqual([['peel', 60]]);
    expect(between(f, 'pans', 'from peel')).toBe(5390);
    expect(between(f, 'pans', 'thrown')).toBe(400);
    expect(between(f, 'from peel', 'vapour')).toBe(4335);
    expect(between(f, 'from peel', 'now powder')).toBe(1055);
    expect(between(f, 'now powder', 'used')).toBe(60);
    expect(between(f, 'now powder', 'left')).toBe(995);
  });

  it('counts pulp of a stock against what was kept, and not the water that was put to it', () => {
    const f = flowOf(
      [
        ...inAct('fill', [moveGrams(at('pan'), at('boiled'), 2100)]),
        ...inAct('boil', [
          moveGrams({ sink: 'tap' }, at('boiled'), 2000),
          moveGrams(at('boiled'), at('stock'), 1500),
          moveGrams(at('boiled'), { sink: 'compost' }, 2600),
        ]),
      ],
      [...fruitAndPans, lot('boiled', 'set-aside'), lot('stock', 'set-aside', 1500)],
    );
    expect([f.keptG, f.fromCompostG]).toEqual([2100, 1500]);
    expect(between(f, 'from peel', 'now stock')).toBe(1500);
    expect(between(f, 'now stock', 'left')).toBe(1500);
  });

  it('leaves rings out of the trim, and fruit that went bad out of the picture', () => {
    const f = flowOf(
      [
        ...inAct('cut', [moveGrams(at('apples'), at('rings'), 7000), moveGrams(at('apples'), { sink: 'trim' }, 2100)]),
        ...inAct('bad', [moveGrams(at('apples'), { sink: 'compost' }, 900)]),
      ],
      [...fruitAndPans, lot('rings', 'set-aside', 7000)],
    );
    expect([f.cameOffG, f.keptG, f.fromCompostG]).toEqual([2100, 0, 0]);
    expect(between(f, 'board', 'thrown')).toBe(2100);
  });

  it('shows what was there before, and weighs packs as they came', () => {
    const f = flowOf(
      [
        ...inAct('cook', [moveGrams(at('old'), at('jam'), 145)]),
        ...inAct('boil', [{ from: { sink: 'tap' as const }, to: at('packs'), qty: 9, grams: 4500, piece: null }]),
        ...inAct('use', [{ from: at('packs'), to: at('jam'), qty: 2, grams: 1000, piece: null }]),
      ],
      [...fruitAndPans, lot('old', 'set-aside', 5), lot('packs', 'set-aside', 7, { unit: 'pack' })],
    );
    expect(between(f, 'before', 'from peel')).toBe(150);
    expect(between(f, 'now stock', 'left')).toBe(3500);
    expect(f.keptG).toBe(0);
  });

  it('lets no gram in or out between its first and its last column', () => {
    const grams = fc.integer({ min: 1, max: 9000 });
    fc.assert(
      fc.property(grams, grams, grams, grams, (dried, hens, used, left) => {
        const f = flowOf(
          [
            ...inAct('fill', [moveGrams(at('pan'), at('peel'), dried + hens + used + left)]),
            ...inAct('dry', [moveGrams(at('peel'), { sink: 'vapour' }, dried)]),
            ...inAct('feed', [moveGrams(at('peel'), { sink: 'hens' }, hens)]),
            ...inAct('cook', [moveGrams(at('peel'), at('jam'), used)]),
          ],
          [...fruitAndPans, lot('peel', 'set-aside', left)],
        );
        for (const n of f.flow.nodes.filter((x) => x.id === 'from peel' || x.id === 'now powder')) {
          const sum = (end: 'from' | 'to') => f.flow.links.reduce((g, l) => (l[end] === n.id ? g + l.grams : g), 0);
          expect(sum('from')).toBe(sum('to'));
        }
      }),
    );
  });
});
