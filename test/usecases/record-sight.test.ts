import assert from 'node:assert/strict';
import { it } from 'vitest';
import { plainDate } from '#lib/units/plain-date.ts';
import { type Context, openContext } from '#lib/usecases/context.ts';
import { posteriorOf } from '#lib/usecases/forecast-fruit.ts';
import { openDemo } from '#lib/usecases/open-demo.ts';
import { recordSight } from '#lib/usecases/record-sight.ts';
import { seasonCrops } from '#lib/usecases/season-crops.ts';
import { seasonSnapshot } from '#lib/usecases/season-snapshot.ts';
import { onSqlite } from '#test/support/database.ts';

const INSTANT = new Date('2025-09-12T10:00:00Z');

onSqlite((open) => {
  it('what is seen hanging pulls the forecast to it and narrows it; said twice it counts once; a later look takes its place', async () => {
    const db = await open();
    await openDemo(db, plainDate('2025-09-12'), INSTANT);
    const ctx = (await openContext(db, 'wrenlatch', INSTANT)) as Context;
    const quince = ctx.place.crops.find((c) => c.code === 'quince');
    assert.ok(quince);
    const outlook = async () => {
      const crop = seasonCrops(await seasonSnapshot(ctx)).find((c) => c.id === quince.id);
      const season = crop?.seasons[0];
      assert.ok(season);
      const { remaining } = posteriorOf(season).means();
      return { remaining, sights: season.sight };
    };
    const before = await outlook();
    assert.equal(before.sights, null);
    const half = Math.round(before.remaining / 2);
    const input = { id: 'sight-1', cropId: quince.id, kg: half };
    const [first, again] = [await recordSight(ctx, input), await recordSight(ctx, input)];
    assert.ok('done' in first && 'done' in again && again.replayed);
    const seen = await outlook();
    assert.ok(
      seen.remaining < before.remaining && seen.remaining > half * 0.8,
      `${before.remaining} to ${seen.remaining}`,
    );
    await recordSight(ctx, { id: 'sight-2', cropId: quince.id, kg: half * 3 });
    assert.ok((await outlook()).remaining > before.remaining);
    const refused = await recordSight(ctx, { id: 'sight-3', cropId: 'no such', kg: 5 });
    assert.ok('refused' in refused);
  });
});
