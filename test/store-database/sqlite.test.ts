import { describe, expect, it } from 'vitest';
import type { Db } from '#lib/store/database/open-database.ts';
import { onSqlite } from '#test/support/database.ts';

const pragma = async (db: Db, name: string): Promise<unknown> =>
  Object.values((await db.$queryRawUnsafe<object[]>(`PRAGMA ${name}`))[0] ?? {})[0];
const openFiles = async (): Promise<number> => (await import('node:fs')).readdirSync('/proc/self/fd').length;

onSqlite((open) => {
  describe('the SQLite connection', () => {
    it('writes ahead, syncs each commit, minds foreign keys and waits for another writer', async () => {
      const db = await open();
      expect(await pragma(db, 'journal_mode')).toBe('wal');
      expect(Number(await pragma(db, 'synchronous'))).toBe(2);
      expect(Number(await pragma(db, 'foreign_keys'))).toBe(1);
      expect(Number(await pragma(db, 'busy_timeout'))).toBe(5000);
      expect(await pragma(db, 'integrity_check')).toBe('ok');
    });

    it('keeps its settings after transactions, failed ones among them', async () => {
      const db = await open();
      await db.$transaction((tx) => tx.place.create({ data: { id: 'p', name: 'P', settings: {} } }));
      await expect(
        db.$transaction((tx) => tx.place.create({ data: { id: 'p', name: 'P', settings: {} } })),
      ).rejects.toThrow();
      expect(Number(await pragma(db, 'foreign_keys'))).toBe(1);
      expect(Number(await pragma(db, 'synchronous'))).toBe(2);
    });

    it.runIf(process.platform === 'linux')('opens no file per transaction', async () => {
      const db = await open();
      const one = () => db.$transaction((tx) => tx.place.count());
      await one();
      const before = await openFiles();
      for (let i = 0; i < 200; i += 1) await one();
      expect((await openFiles()) - before).toBeLessThan(5);
    });

    it('keeps statements from outside out of a running transaction', async () => {
      const db = await open();
      const order: string[] = [];
      const inside = db.$transaction(async (tx) => {
        await tx.place.create({ data: { id: 'p', name: 'P', settings: {} } });
        await new Promise((resolve) => setTimeout(resolve, 50));
        order.push('inside');
        throw new Error('undo');
      });
      const outside = new Promise((resolve) => setTimeout(resolve, 10)).then(async () => {
        const count = await db.place.count();
        order.push('outside');
        return count;
      });
      await expect(inside).rejects.toThrow('undo');
      expect(await outside).toBe(0);
      expect(order).toEqual(['inside', 'outside']);
    });
  });
});
