import { describe, expect, it } from 'vitest';
import { mainKitchen, roomOfKind } from '#lib/store/place.ts';
import { addCrop, createPlace, listPlaces, loadPlace, removePlace, setPlaceDay } from '#lib/store/place-store.ts';
import {
  choosePlan,
  forecastOf,
  loadPlan,
  newestPlan,
  type StoredPlan,
  saveForecast,
  savePlan,
} from '#lib/store/plan-store.ts';
import { plainDate } from '#lib/units/plain-date.ts';
import { openOwnPlace } from '#lib/usecases/open-places.ts';
import { forEachDatabase } from '#test/support/database.ts';
import { smallPlace } from '#test/support/small-place.ts';

const day = plainDate('2025-09-13');
const plan = (id: string, on = day, createdAt = '2025-09-13T08:00:00.000Z'): StoredPlan => ({
  id,
  day: on,
  createdAt,
  state: 'done',
  options: { days: 3 },
  snapshot: { lots: [] },
  result: { jars: 12 },
  chosen: false,
  solver: 'exact',
});

forEachDatabase((_name, open) => {
  describe('a place', () => {
    it('is read back with its kitchens, stores, jars, people and rows', async () => {
      const db = await open();
      await openOwnPlace(db, { id: 'ours', name: 'Our garden', timeZone: 'America/Los_Angeles', altitudeM: 410 });
      const place = await loadPlace(db, 'ours');
      if (!place) throw new Error('no place');
      expect(place).toMatchObject({
        name: 'Our garden',
        demo: false,
        day: null,
        timeZone: 'America/Los_Angeles',
        crops: [],
      });
      expect(mainKitchen(place)).toMatchObject({
        altitudeM: 410,
        pans: [{ code: 'pan-1', maxFillPercent: 50 }],
        canners: [{ loads: { HP: 8, PT: 7, QT: 4 }, method: 'boiling-water' }],
      });
      expect(roomOfKind(place, 'shelf')).toMatchObject({ bays: 1, shelvesPerBay: 3 });
      expect(place.settings.targetBrix).toBe(65);
      expect(place.jarKinds.map((j) => j.fillMl)).toEqual(place.jarKinds.map((j) => j.fillMl).sort((a, b) => a - b));
      expect(await loadPlace(db, 'nowhere')).toBeNull();
    });

    it('can be written again from what was read', async () => {
      const db = await open();
      await smallPlace(db);
      const before = await loadPlace(db, 'p');
      if (!before) throw new Error('no place');
      const { createdAt: _, ...plain } = before as typeof before & { createdAt: Date };
      await db.$transaction((tx) => removePlace(tx, 'p'));
      expect(await listPlaces(db)).toEqual([]);
      await db.$transaction((tx) => createPlace(tx, { ...plain, kitchens: [], crops: [] }));
      expect((await loadPlace(db, 'p'))?.containers.map((c) => c.tareG)).toEqual([620]);
    });

    it('taken away leaves nothing behind and its neighbour whole', async () => {
      const db = await open();
      await smallPlace(db, 'p');
      await smallPlace(db, 'q');
      await savePlan(db, 'q', plan('plan-q'));
      const neighbour = await loadPlace(db, 'q');
      await db.$transaction((tx) => removePlace(tx, 'p'));
      expect(await listPlaces(db)).toEqual([{ id: 'q', name: 'Place q', demo: false }]);
      expect(await loadPlace(db, 'q')).toEqual(neighbour);
      expect(await loadPlan(db, 'q', 'plan-q')).not.toBeNull();
      expect(await db.container.count()).toBe(1);
    });

    it('gets a crop with its row, once, and a second row beside it', async () => {
      const db = await open();
      await smallPlace(db);
      const quince = {
        code: 'quince-c3',
        foodId: 'quince',
        label: 'Quince',
        unit: 'tree',
        count: 3,
        gPerUnit: 28_000,
        windowFrom: '10-10',
        windowTo: '10-25',
        row: 'C3',
      };
      for (const count of [3, 4]) await db.$transaction((tx) => addCrop(tx, 'p', { ...quince, count }));
      const crop = (await loadPlace(db, 'p'))?.crops.find((c) => c.foodId === 'quince');
      expect([crop?.count, crop?.plantings.map((p) => [p.row, p.count])]).toEqual([4, [['C3', 4]]]);
    });

    it('keeps its settings when its day is set', async () => {
      const db = await open();
      await smallPlace(db);
      await db.$transaction((tx) => setPlaceDay(tx, 'p', day, { time: '18:00', setAt: '2026-06-01T08:00:00.000Z' }));
      const place = await loadPlace(db, 'p');
      expect([place?.day, place?.settings.targetBrix, place?.settings.clock?.time]).toEqual([day, 65, '18:00']);
    });
  });

  describe('plans and forecasts', () => {
    it('are kept as they were computed and belong to their place', async () => {
      const db = await open();
      await smallPlace(db, 'p');
      await smallPlace(db, 'q');
      await savePlan(db, 'p', plan('a'));
      await savePlan(db, 'p', plan('b', day, '2025-09-13T09:00:00.000Z'));
      await savePlan(db, 'p', plan('later', plainDate('2025-09-20')));
      expect(await loadPlan(db, 'p', 'a')).toEqual(plan('a'));
      expect(await loadPlan(db, 'q', 'a')).toBeNull();
      expect((await newestPlan(db, 'p', day))?.id).toBe('b');
      await choosePlan(db, 'p', 'a');
      await choosePlan(db, 'p', 'b');
      expect([(await loadPlan(db, 'p', 'a'))?.chosen, (await loadPlan(db, 'p', 'b'))?.chosen]).toEqual([false, true]);
      const forecast = {
        id: 'f',
        day,
        createdAt: '2025-09-13T08:00:00.000Z',
        seed: 1,
        seasons: 2000,
        modelVersion: '1',
        inputHash: 'h',
        summary: { lines: [] },
      };
      await saveForecast(db, 'p', forecast);
      expect(await forecastOf(db, 'p', 'h')).toEqual(forecast);
      expect(await forecastOf(db, 'q', 'h')).toBeNull();
    });
  });
});
