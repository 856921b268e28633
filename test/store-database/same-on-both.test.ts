import { describe, expect, it } from 'vitest';
import type { Db } from '#lib/store/database/open-database.ts';
import { forEachDatabase } from '#test/support/database.ts';

const placeRow = (id: string) => ({ id, name: 'Test holding', settings: { b: 1, a: [2] } });
const actRow = (id: string) => ({
  id,
  placeId: 'p',
  kind: 'harvest',
  day: '2026-09-12',
  at: new Date('2026-09-12T08:15:30.123Z'),
  enteredAt: new Date('2026-09-12T08:15:31Z'),
  payload: {},
  outcome: {},
});
const withPlace = async (db: Db) => {
  await db.place.create({ data: placeRow('p') });
  return db;
};

forEachDatabase((_name, open) => {
  describe('a database', () => {
    it('is empty in each test, whatever the test before it wrote', async () => {
      const first = await withPlace(await open());
      expect(await first.place.count()).toBe(1);
      expect(await (await open()).place.count()).toBe(0);
    });

    it('refuses a second act with the same id and keeps the first', async () => {
      const db = await withPlace(await open());
      await db.act.create({ data: actRow('a') });
      await expect(db.act.create({ data: { ...actRow('a'), kind: 'compost' } })).rejects.toMatchObject({
        code: 'P2002',
      });
      expect((await db.act.findUniqueOrThrow({ where: { id: 'a' } })).kind).toBe('harvest');
    });

    it('refuses a movement that belongs to no act', async () => {
      const db = await withPlace(await open());
      const stray = { id: 'm', placeId: 'p', actId: 'none', day: '2026-09-12', seq: 0, qty: 5 };
      await expect(db.movement.create({ data: stray })).rejects.toMatchObject({ code: 'P2003' });
    });

    it('undoes every row of a transaction that throws', async () => {
      const db = await withPlace(await open());
      const attempt = db.$transaction(async (tx) => {
        await tx.act.create({ data: actRow('a') });
        await tx.movement.create({ data: { id: 'm', placeId: 'p', actId: 'a', day: '2026-09-12', seq: 0, qty: 5 } });
        throw new Error('the pan boiled over');
      });
      await expect(attempt).rejects.toThrow('the pan boiled over');
      expect([await db.act.count(), await db.movement.count()]).toEqual([0, 0]);
      await db.act.create({ data: actRow('b') });
      expect(await db.act.count()).toBe(1);
    });

    it('loses none of twenty increments made at the same time', async () => {
      const db = await withPlace(await open());
      await db.kitchen.create({ data: { id: 'k', placeId: 'p', code: 'K', label: 'Kitchen', altitudeM: 0 } });
      const one = () =>
        db.$transaction((tx) => tx.kitchen.update({ where: { id: 'k' }, data: { altitudeM: { increment: 1 } } }));
      await Promise.all(Array.from({ length: 20 }, one));
      expect((await db.kitchen.findUniqueOrThrow({ where: { id: 'k' } })).altitudeM).toBe(20);
    });

    it('lets one of two simultaneous writers of the same act id win', async () => {
      const db = await withPlace(await open());
      const write = () => db.$transaction((tx) => tx.act.create({ data: actRow('a') }));
      const ends = await Promise.allSettled([write(), write(), write()]);
      expect(ends.map((end) => end.status).sort()).toEqual(['fulfilled', 'rejected', 'rejected']);
      expect(await db.act.count()).toBe(1);
    });

    it('gives back instants to the millisecond and JSON by structure', async () => {
      const db = await withPlace(await open());
      await db.act.create({
        data: { ...actRow('a'), payload: { grams: 1250, note: 'Äpfel', list: [1, null, { x: true }] } },
      });
      const act = await db.act.findUniqueOrThrow({ where: { id: 'a' } });
      expect(act.at.toISOString()).toBe('2026-09-12T08:15:30.123Z');
      expect(act.payload).toEqual({ grams: 1250, note: 'Äpfel', list: [1, null, { x: true }] });
    });

    it('finds days by range as text', async () => {
      const db = await withPlace(await open());
      for (const day of ['2025-12-31', '2026-01-01', '2026-09-30', '2026-10-01']) {
        await db.act.create({ data: { ...actRow(day), day } });
      }
      const found = await db.act.findMany({
        where: { day: { gte: '2026-01-01', lt: '2026-10-01' } },
        orderBy: { day: 'asc' },
      });
      expect(found.map((act) => act.day)).toEqual(['2026-01-01', '2026-09-30']);
    });
  });
});
