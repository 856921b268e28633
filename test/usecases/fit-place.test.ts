import { describe, expect, it } from 'vitest';
import { type FittingKind, type FittingValues, fittingForm, HABIT_FIELDS, shownText } from '#lib/forms/fittings.ts';
import type { Db } from '#lib/store/database/open-database.ts';
import { receive } from '#lib/usecases/change-place.ts';
import { type Context, openContext } from '#lib/usecases/context.ts';
import { dropFitting, type FittingAddress, fittingAddress, keepFitting, readFitting } from '#lib/usecases/fit-place.ts';
import { habitsOf, keepHabits } from '#lib/usecases/keep-habits.ts';
import { openOwnPlace } from '#lib/usecases/open-places.ts';
import { forEachDatabase } from '#test/support/database.ts';
import { doneOf, refusalOf } from '#test/support/demo-database.ts';

const at = (kind: FittingKind, code: string, more: { kitchen?: string; as?: string } = {}): FittingAddress => {
  const address = fittingAddress(kind, code, more);
  if (!address) throw new Error(`no address ${kind} ${code}`);
  return address;
};

forEachDatabase((_name, open) => {
  const contextOf = async (db: Db): Promise<Context> => {
    const ctx = await openContext(db, 'ours', new Date('2025-09-12T18:00:00Z'));
    if (!ctx) throw new Error('the place is not there');
    return ctx;
  };
  const ours = async () => {
    const db = await open();
    await openOwnPlace(db, { id: 'ours', name: 'Our garden', timeZone: 'Europe/London', altitudeM: 410 });
    return db;
  };
  const pan: FittingValues = {
    label: 'Copper pan',
    ml: 9000,
    diameterMm: 380,
    maxFillPercent: 45,
    evapGPerMin: null,
  };

  describe('fitting out a place', () => {
    it('adds a pan, changes it, and takes it away, each once', async () => {
      const db = await ours();
      const kitchen = (await contextOf(db)).place.kitchens[0]?.code ?? '';
      const pans = async () => (await contextOf(db)).place.kitchens[0]?.pans ?? [];
      const before = (await pans()).length;
      const add = { id: 'fit-pan-1', at: at('pan', 'new', { kitchen }), values: pan };
      expect(doneOf(await keepFitting(await contextOf(db), add))).toEqual({
        said: 'Copper pan is noted.',
        code: 'copper-pan',
      });
      expect(await keepFitting(await contextOf(db), add)).toMatchObject({ replayed: true });
      expect((await pans()).length).toBe(before + 1);
      const here = at('pan', 'copper-pan', { kitchen });
      expect(readFitting(await contextOf(db), here)?.stored).toMatchObject({ ml: 9000, evapGPerMin: null });
      doneOf(
        await keepFitting(await contextOf(db), { id: 'fit-pan-2', at: here, values: { ...pan, evapGPerMin: 52 } }),
      );
      expect((await pans()).find((p) => p.code === 'copper-pan')?.evapGPerMin).toBe(52);
      doneOf(await dropFitting(await contextOf(db), { id: 'fit-pan-3', at: here }));
      expect((await pans()).length).toBe(before);
      expect(refusalOf(await dropFitting(await contextOf(db), { id: 'fit-pan-4', at: here }))).toBe(
        'there is no pan copper-pan here',
      );
    });

    it('gives a second thing of the same name a code of its own', async () => {
      const db = await ours();
      const values = { label: 'Blue bucket', tareG: 620, volumeMl: 10_000 };
      const codes: string[] = [];
      for (const n of [1, 2])
        codes.push(
          doneOf(await keepFitting(await contextOf(db), { id: `fit-bucket-${n}`, at: at('container', 'new'), values }))
            .code,
        );
      expect(codes).toEqual(['blue-bucket', 'blue-bucket-2']);
    });

    it('has one main kitchen, and keeps one that is the only one', async () => {
      const db = await ours();
      const first = (await contextOf(db)).place.kitchens[0]?.code ?? '';
      expect(refusalOf(await dropFitting(await contextOf(db), { id: 'fit-k-0', at: at('kitchen', first) }))).toMatch(
        /it is the only kitchen/,
      );
      const values = { label: 'Barn', altitudeM: 12, main: true };
      doneOf(await keepFitting(await contextOf(db), { id: 'fit-k-1', at: at('kitchen', 'new'), values }));
      const kitchens = (await contextOf(db)).place.kitchens;
      expect(kitchens.filter((k) => k.main).map((k) => k.code)).toEqual(['barn']);
      doneOf(
        await keepFitting(await contextOf(db), {
          id: 'fit-k-2',
          at: at('kitchen', 'barn'),
          values: { ...values, main: false },
        }),
      );
      expect((await contextOf(db)).place.kitchens.filter((k) => k.main).length).toBe(1);
    });

    it('refuses what contradicts itself', async () => {
      const db = await ours();
      const ctx = await contextOf(db);
      const kitchen = ctx.place.kitchens[0]?.code ?? '';
      const why = async (id: string, address: FittingAddress, values: FittingValues) =>
        refusalOf(await keepFitting(ctx, { id, at: address, values }));
      expect(
        await why('fit-x-1', at('store', 'new', { as: 'freezer' }), {
          label: 'Chest',
          litres: 200,
          lowC: -10,
          highC: -18,
        }),
      ).toBe('the coldest, -10 °C, is above the warmest, -18 °C');
      expect(
        await why('fit-x-2', at('canner', 'new', { kitchen }), {
          label: 'Pot',
          method: 'boiling-water',
          'loads.HP': null,
          heatUpS: 600,
          reheatS: 300,
        }),
      ).toMatch(/at least one kind of jar/);
      expect(
        await why('fit-x-3', at('jar', 'new'), {
          label: 'Shop jar',
          size: null,
          fillMl: 300,
          pitchMm: 80,
          heightMm: 100,
          canning: true,
        }),
      ).toMatch(/no minutes are printed for another/);
    });

    it('keeps the house’s habits, shares as fractions, and starts a place of one’s own with losses', async () => {
      const db = await ours();
      const before = habitsOf(await contextOf(db));
      expect(before).toMatchObject({ panLossG: 100, invertedShare: 0.3, 'jarsBack.given': 0.4 });
      const typed = {
        ...Object.fromEntries(HABIT_FIELDS.map((f) => [f.name, shownText(f, before[f.name])])),
        breakage: '2.5',
      };
      const values = fittingForm(HABIT_FIELDS).parse(typed);
      doneOf(await keepHabits(await contextOf(db), { id: 'habits-1', values }));
      const settings = (await contextOf(db)).place.settings;
      expect(settings.breakage).toBeCloseTo(0.025, 12);
      expect(settings.jarsBack).toEqual({ eaten: 1, given: 0.4, sold: 0.15 });
      expect(settings.dayEndsAt).toBe('04:00');
    });

    it('keeps a store that lots stand in', async () => {
      const db = await ours();
      const ctx = await contextOf(db);
      const dry = ctx.place.rooms.find((r) => r.kind === 'dry');

      doneOf(await receive(ctx, { id: 'bought-sugar-1', item: 'sugar', qty: 2, supplier: null }));
      expect(refusalOf(await dropFitting(ctx, { id: 'fit-dry-1', at: at('store', dry?.code ?? '') }))).toBe(
        `${dry?.label} stays: 1 lots stand or stood there`,
      );
    });
  });
});
