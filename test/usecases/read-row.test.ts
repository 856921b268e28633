import { describe, expect, it } from 'vitest';
import { readRow } from '#lib/usecases/read-row.ts';
import { demoContext, demoOn } from '#test/support/demo-database.ts';

const open = demoOn('2026-01-15');

describe('a row over the years (J20)', () => {
  it('answers for a row and for a tree in it, with the row’s own kilograms and jars', async () => {
    const ctx = await demoContext(await open());
    const row = await readRow(ctx, 'C1');
    const tree = await readRow(ctx, 'c1-06');
    expect(row?.answer).toMatch(
      /^Row C1: [\d.]+ kg a tree in 2025, (about|above|below) the [\d.]+ of an ordinary year$/,
    );
    expect(tree?.answer).toMatch(/^C1-06: /);
    expect(tree?.sub).toContain('weighed by the row');
    expect(tree?.offYear).toContain('1 year on record');
    expect(tree?.finishedSays).toMatch(/\d+ of \d+ jars|jars people finished|Fewer than 6 jars/);
    expect(await readRow(ctx, 'Z9')).toBeNull();
  });

  it('the jars of all rows together are no more than were made', async () => {
    const ctx = await demoContext(await open());
    const rows = [...new Set(ctx.place.crops.flatMap((c) => c.plantings.map((p) => p.row)))];
    const views = await Promise.all(rows.slice(0, 6).map((r) => readRow(ctx, r)));
    for (const v of views)
      for (const y of v?.years ?? []) {
        const [finished, made] = y.finished.split(' of ').map(Number);
        if (y.finished) expect(finished).toBeLessThanOrEqual(made as number);
      }
  });
});
