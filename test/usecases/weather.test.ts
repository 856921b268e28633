import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { it, test } from 'vitest';
import { plainDate } from '#lib/units/plain-date.ts';
import { type Context, openContext } from '#lib/usecases/context.ts';
import { cropWeather, cropWeatherSays } from '#lib/usecases/crop-weather.ts';
import { openDemo } from '#lib/usecases/open-demo.ts';
import { readWeatherPage } from '#lib/usecases/read-weather.ts';
import { recordWeather, weatherDays } from '#lib/usecases/weather-record.ts';
import { onSqlite } from '#test/support/database.ts';

const INSTANT = new Date('2025-09-12T10:00:00Z');
const FILE = new URL('../../node_modules/vega-datasets/data/seattle-weather.csv', import.meta.url);
/** Seattle 2012-2015 (vega-datasets), its years moved on by ten so that they end on the demonstration's day. */
const seattle = readFileSync(FILE, 'utf8').replaceAll(/^(\d{4})/gm, (y) => String(Number(y) + 10));

const apples = { foodId: 'apple-cooking', windowFrom: plainDate('2025-09-10'), windowTo: plainDate('2025-10-10') };

onSqlite((open) => {
  it('a file becomes an act once; the later record of a day counts; the page adds up the year beside those before', async () => {
    const db = await open();
    await openDemo(db, plainDate('2025-09-12'), INSTANT);
    const ctx = (await openContext(db, 'wrenlatch', INSTANT)) as Context;
    assert.equal((await readWeatherPage(ctx)).answer, 'No weather on record yet');
    const text = seattle
      .split('\n')
      .filter((l) => l.slice(0, 10).replaceAll('/', '-') <= '2025-09-12' || l.startsWith('date'))
      .filter((l) => !/^2024.02.29|^2022.02.29/.test(l))
      .join('\n');
    const input = { id: 'weather-1', unit: 'C' as const, text };
    const [first, again] = [await recordWeather(ctx, input), await recordWeather(ctx, input)];
    assert.ok('done' in first && 'done' in again && again.replayed, JSON.stringify(first));
    assert.match(first.done.said, /^1350 days of weather taken, 1 January 2022 to 12 September 2025/);
    const refused = await recordWeather(ctx, { id: 'weather-2', unit: 'C', text: '2025-04-20,9,1' });
    assert.ok('refused' in refused && /below the lowest/.test(refused.refused));

    const view = await readWeatherPage(ctx);
    // 2,455.4, and 343.0 over the mean of the three before, reckoned apart from the same file: single sine above 5 °C.
    assert.equal(view.answer, '2455 degree-days to 12 September: 343 more than the mean of 3 years before');
    assert.deepEqual(
      view.years.map((y) => y.year),
      ['2025', '2024', '2023', '2022'],
    );
    assert.match(view.helps.at(-1) as string, /has not been shown to help/);

    await recordWeather(ctx, { id: 'weather-3', unit: 'F', text: '2025-05-03,26,50' });
    const day = (await weatherDays(ctx)).find((d) => d.day === '2025-05-03');
    assert.ok(day && Math.abs(day.low - -3.3333) < 1e-3);
    const says = cropWeatherSays(cropWeather(await weatherDays(ctx), apples) as never);
    assert.match(says, /1 night down to -2.2 °C or below, the coldest -3.3 °C on 3 May 2025/);
    assert.match(says, /The forecast does not move by it/);
  });
});

test('without the days of blossom no frost is ruled out, and a fruit without a figure says nothing', () => {
  const days = [{ day: plainDate('2025-05-02'), low: 3, high: 14, rain: null }];
  assert.match(cropWeatherSays(cropWeather(days, apples) as never), /only 1 day of it on record/);
  assert.equal(cropWeather(days, { ...apples, foodId: 'fig' }), null);
  assert.equal(cropWeather([], apples), null);
});
