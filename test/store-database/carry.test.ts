import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PGlite } from '@electric-sql/pglite';
import { PrismaPGlite } from 'pglite-prisma-adapter';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { databaseAddress } from '#lib/store/database/env.ts';
import { type Db, openDatabase } from '#lib/store/database/open-database.ts';
import { rebuildBalances } from '#lib/store/ledger-store.ts';
import { loadPlace } from '#lib/store/place-store.ts';
import { DEMO_PLACE } from '#lib/usecases/open-demo.ts';
import { carry, carryRows } from '#prisma/carry.mjs';
import { PrismaClient as PostgresqlClient } from '#prisma/generated/postgresql/client.ts';
import { withFile } from '#prisma/sqlite-file.mjs';
import { demoOn } from '#test/support/demo-database.ts';
import { makeFile } from '#test/support/sqlite-file.ts';

const SERVER = process.env.STILLROOM_TEST_PG?.trim() ?? '';
const NAME = `stillroom_carry_${process.pid}`;
const quiet = () => undefined;

/** Every row of every table that the store reads, in one order. */
const everything = async (db: Db) => ({
  place: await loadPlace(db, DEMO_PLACE),
  acts: await db.act.findMany({ orderBy: { id: 'asc' } }),
  lots: await db.lot.findMany({ orderBy: { id: 'asc' } }),
  movements: await db.movement.findMany({ orderBy: { id: 'asc' } }),
  batches: await db.batch.findMany({ orderBy: { id: 'asc' } }),
  readings: await db.reading.findMany({ orderBy: { id: 'asc' } }),
  rates: await db.useRate.findMany({ orderBy: { id: 'asc' } }),
});

const pathOf = async (db: Db): Promise<string> => {
  const [main] = await db.$queryRawUnsafe<{ file: string }[]>('PRAGMA database_list');
  await db.$queryRawUnsafe('PRAGMA wal_checkpoint(TRUNCATE)');
  return main?.file ?? '';
};

describe('carrying records to PostgreSQL', () => {
  const demo = demoOn('2025-08-20');

  it('brings every row of the demo’s season over as it was, and refuses a database that has records', async () => {
    const server = new PGlite();
    const folder = 'prisma/postgresql/migrations';
    for (const entry of readdirSync(folder, { withFileTypes: true }).sort((a, b) => a.name.localeCompare(b.name)))
      if (entry.isDirectory()) await server.exec(readFileSync(join(folder, entry.name, 'migration.sql'), 'utf8'));
    const from = await demo();
    const before = await everything(from);
    const path = await pathOf(from);
    const carried = await withFile(path, (file: unknown) => carryRows(file, server, quiet));
    expect(carried).toMatchObject({
      Act: before.acts.length,
      Lot: before.lots.length,
      Movement: before.movements.length,
    });
    expect(before.movements.length).toBeGreaterThan(500);
    const to = new PostgresqlClient({ adapter: new PrismaPGlite(server) }) as unknown as Db;
    expect(await everything(to)).toEqual(before);
    expect(await rebuildBalances(to, DEMO_PLACE)).toEqual([]);
    await expect(withFile(path, (file: unknown) => carryRows(file, server, quiet))).rejects.toThrow(
      /has records already \(.*Act/,
    );
    await to.$disconnect();
    await server.close();
  }, 60_000);

  it('says what is wrong with an address', async () => {
    await expect(carry('file:/nowhere/at-all.db', 'postgresql://h/d')).rejects.toThrow(/no data in .*at-all\.db/);
    await expect(carry('file:a.db', 'file:b.db')).rejects.toThrow(/must begin with postgresql/);
  });
});

describe.skipIf(!SERVER)('carrying records to a PostgreSQL server', () => {
  const demo = demoOn('2025-08-20');
  const url = SERVER && Object.assign(new URL(SERVER), { pathname: `/${NAME}` }).href;
  let admin: Db;
  let folder: string;
  beforeEach(async () => {
    folder = mkdtempSync(join(tmpdir(), 'stillroom-carry-'));
    admin = openDatabase(databaseAddress(SERVER, ''));
    await admin.$executeRawUnsafe(`CREATE DATABASE ${NAME}`);
  });
  afterEach(async () => {
    await admin.$executeRawUnsafe(`DROP DATABASE ${NAME} WITH (FORCE)`);
    await admin.$disconnect();
    rmSync(folder, { recursive: true, force: true });
  });

  it('makes the schema there, brings every row over, and leaves the file as it was', async () => {
    const from = await demo();
    const before = await everything(from);
    await carry(`file:${await pathOf(from)}`, url);
    const to = openDatabase(databaseAddress(url, ''));
    expect(await everything(to)).toEqual(before);
    expect(await everything(from)).toEqual(before);
    await to.$disconnect();
  }, 60_000);

  it('leaves the database empty when a row cannot be carried', async () => {
    const from = await demo();
    await from.$executeRawUnsafe('PRAGMA foreign_keys = OFF');
    await from.$executeRawUnsafe(`UPDATE "Movement" SET "actId" = 'nowhere-' || "id" WHERE "seq" = 0`);
    await expect(carry(`file:${await pathOf(from)}`, url)).rejects.toThrow();
    const to = openDatabase(databaseAddress(url, ''));
    expect(await to.place.count()).toBe(0);
    await to.$disconnect();
  }, 60_000);

  it('carries an empty file', async () => {
    await makeFile(join(folder, 'empty.db'));
    expect(Object.values(await carry(`file:${join(folder, 'empty.db')}`, url)).every((n) => n === 0)).toBe(true);
  }, 60_000);
});
