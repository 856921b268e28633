import { describe, expect, it } from 'vitest';
import { isRefusal } from '#lib/ledger/entry.ts';
import type { BatchAsk } from '#lib/usecases/batch-ask.ts';
import { draftBatch } from '#lib/usecases/draft-batch.ts';
import { demoOn } from '#test/support/demo-database.ts';
import { damsonAsk, weighedIn } from './damson-day.ts';

const open = demoOn('2025-09-12');

/** One batch of 1.50 kg in one pan. */
const ask = (change: Partial<BatchAsk>): BatchAsk =>
  damsonAsk({ draws: [{ lotId: 'harvest-damsons.blemished', grams: 1500 }], trimG: 120, ...change });

describe('another pectin or acid on the sheet', () => {
  it('goes in by the amount typed, changes the set and the pan weight, and makes the batch the household’s own', async () => {
    const ctx = await weighedIn(await open());
    const written = await draftBatch(ctx, ask({}));
    const exchanged = await draftBatch(
      ctx,
      ask({
        exchange: { pectin: 'apple-powder', acid: 'citric-acid' },
        measures: { pectin: { amount: 30, unit: 'g' }, acid: { amount: 4, unit: 'g' } },
      }),
    );
    if (isRefusal(written) || isRefusal(exchanged)) throw new Error('refused');
    const doses = (d: typeof written) =>
      Object.fromEntries((d.sheet.pans[0]?.doses ?? []).map((x) => [x.item, x.grams.value]));
    expect(doses(written)).toEqual({ sugar: 1200, water: 150 });
    expect(doses(exchanged)).toEqual({ sugar: 1200, water: 150, 'apple-powder': 30, 'citric-acid': 4 });
    expect(exchanged.sheet.pans[0]?.balance.finalG.value).toBeGreaterThan(
      written.sheet.pans[0]?.balance.finalG.value as number,
    );
    expect(exchanged.sheet.set?.ratio?.value).toBeGreaterThan(written.sheet.set?.ratio?.value as number);
    expect(exchanged.sheet.householdOnly).toBe(true);
  });

  it('is refused without an amount', async () => {
    const ctx = await weighedIn(await open());
    expect(await draftBatch(ctx, ask({ exchange: { pectin: 'pectin-powder' } }))).toEqual({
      refused: 'how much of the other pectin goes in is missing',
    });
  });
});
