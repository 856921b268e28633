/** The demo's year: 5.39 kg of core and peel kept on sauce day dry to 1172 g; 300 g of last autumn's powder went into two batches. */
import { describe, expect, it } from 'vitest';
import { isLot } from '#lib/ledger/movement.ts';
import { readSetAsideSeason } from '#lib/usecases/read-set-aside-season.ts';
import { seasonSnapshot } from '#lib/usecases/season-snapshot.ts';
import { demoContext, demoOn } from '#test/support/demo-database.ts';

describe('the set-asides of the demo’s year', () => {
  const demo = demoOn('2026-02-20');

  it('come from the pans, dry to powder, and stand in for bought pectin within the band of the table', async () => {
    const ctx = await demoContext(await demo());
    const view = await readSetAsideSeason(ctx);
    expect(view.answer).toBe('5.39\u00a0kg kept from the compost, 11\u00a0g of bought pectin not needed');
    expect([view.keptG, view.fromCompostG]).toEqual([5386, 5386]);
    // 300 g x 5.5 (3 to 9) g of sugar a gram / 150
    expect(view.pectin).toEqual({ typ: 11, low: 6, high: 18 });
    expect(view.used.map((u) => [u.code, u.usedG])).toEqual([['S-24275-APC-1', 300]]);
    expect(view.used[0]?.strength).toMatch(/5\.5 g sugar a gram \(3\.0 to 9\.0\): estimate, review on value-added/);
    const grams = (from: string, to: string) => view.flow.links.find((l) => l.from === from && l.to === to)?.grams;
    expect(grams('pans', 'from apple-peel-core')).toBe(5386);
    expect(grams('from apple-peel-core', 'vapour')).toBe(5386 - 1172);
    expect(grams('now powder', 'left')).toBe(1172);
    expect(grams('now powder', 'used')).toBe(300);
  });

  it('count as come off every gram of trim that left a pan, kept or thrown', async () => {
    const ctx = await demoContext(await demo());
    const { lots, movements } = await seasonSnapshot(ctx);
    const kind = new Map(lots.map((l) => [l.id, l.kind]));
    const offPans = movements.filter(
      (m) =>
        isLot(m.from) &&
        kind.get(m.from.lot) === 'batch' &&
        (isLot(m.to) ? kind.get(m.to.lot) === 'set-aside' : m.to.sink === 'trim'),
    );
    const view = await readSetAsideSeason(ctx);
    expect(view.cameOffG).toBe(offPans.reduce((g, m) => g + (m.grams ?? 0), 0));
  });
});
