import { expect, it } from 'vitest';
import { openContext } from '#lib/usecases/context.ts';
import { openOwnPlace } from '#lib/usecases/open-places.ts';
import { packsText } from '#lib/usecases/plan-making.ts';
import { wantedInAYear } from '#lib/usecases/plan-wants.ts';
import { readWants, stateWant } from '#lib/usecases/state-wants.ts';
import { forEachDatabase } from '#test/support/database.ts';
import { doneOf, refusalOf } from '#test/support/demo-database.ts';

forEachDatabase((_name, open) => {
  it('goes by what the household says of a line until it takes that back', async () => {
    const db = await open();
    await openOwnPlace(db, { id: 'ours', name: 'Our garden', timeZone: 'Europe/London', altitudeM: 410 });
    const ctx = await openContext(db, 'ours', new Date('2025-07-18T19:30:00Z'));
    if (!ctx) throw new Error('the place is not there');
    expect((await wantedInAYear(ctx)).size).toBe(0);

    const said = await stateWant(ctx, { id: 'a', recipe: 'raspberry-jam', pieces: 48 });
    expect(doneOf(said).said).toBe('Raspberry jam: 48 wanted in a year.');
    expect((await wantedInAYear(ctx)).get('raspberry-jam')).toBe(48);
    expect((await readWants(ctx)).lines).toEqual([
      { id: 'raspberry-jam', title: 'Raspberry jam', stated: 48, recorded: null },
    ]);

    doneOf(await stateWant(ctx, { id: 'b', recipe: 'raspberry-jam', pieces: 20 }));
    expect((await wantedInAYear(ctx)).get('raspberry-jam')).toBe(20);
    doneOf(await stateWant(ctx, { id: 'c', recipe: 'raspberry-jam', pieces: null }));
    expect((await wantedInAYear(ctx)).size).toBe(0);
    expect(refusalOf(await stateWant(ctx, { id: 'd', recipe: 'moon-jam', pieces: 1 }))).toContain('not in the book');
  });
});

it('fills packs alike when that is near enough, else says what the last one holds', () => {
  expect(packsText(3800, 500)).toBe('8 packs of 475 g');
  expect(packsText(3581, 500)).toBe('7 packs of 500 g and one of 81 g');
  expect(packsText(1500, 500)).toBe('3 packs of 500 g');
  expect(packsText(120, 500)).toBe('one pack of 120 g');
});
