import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { databaseAddress } from '#lib/store/database/env.ts';
import { type Db, openDatabase } from '#lib/store/database/open-database.ts';
import { verifyDatabase } from '#lib/store/database/verify-database.ts';
import { deploy, pending } from '#prisma/deploy.mjs';

const OURS = 'prisma/migrations';
const NOW = new Date('2026-11-05T06:07:08Z');

let folder: string;
let file: string;
let migrations: string;
const opened: Db[] = [];
const open = (): Db => {
  const db = openDatabase(databaseAddress(`file:${file}`, folder));
  opened.push(db);
  return db;
};
/** The driver lets go of a closed file at the next garbage collection only; a process that ends does the same at once. */
const closeAll = async () => {
  for (const db of opened.splice(0)) await db.$disconnect();
  setFlagsFromString('--expose-gc');
  for (let round = 0; round < 3; round += 1) {
    runInNewContext('gc')();
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
};
const addMigration = (name: string, sql: string) => {
  mkdirSync(join(migrations, name));
  writeFileSync(join(migrations, name, 'migration.sql'), sql);
};
const update = () => deploy(`file:${file}`, { now: NOW, folder: migrations });
/** As at a start: in a process of its own. Gives what it wrote to its error output. */
const updateElsewhere = (): string => {
  const call = `deploy(${JSON.stringify(`file:${file}`)}, { folder: ${JSON.stringify(migrations)} })`;
  const program = `import { deploy } from './prisma/deploy.mjs'; await ${call};`;
  return spawnSync(process.execPath, ['--input-type=module', '-e', program], { encoding: 'utf8' }).stderr;
};
const addPlace = () => open().place.create({ data: { id: 'p', name: 'Kept through updates', settings: {} } });
const placeColumns = async (db: Db): Promise<string[]> => {
  const columns = await db.$queryRaw<{ name: string }[]>`SELECT name FROM pragma_table_info('Place')`;
  return columns.map((column) => column.name);
};
const strays = () => readdirSync(join(folder, 'data')).filter((name) => name !== 'jars.db' && name !== 'backup');

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'stillroom-deploy-'));
  file = join(folder, 'data', 'jars.db');
  migrations = join(folder, 'migrations');
  cpSync(OURS, migrations, { recursive: true });
});
afterEach(async () => {
  await closeAll();
  rmSync(folder, { recursive: true, force: true });
});

describe('deploy on SQLite', () => {
  it('makes the folder and the file, keeps no copy of nothing, and is content the second time', async () => {
    expect(await pending(`file:${file}`, { folder: migrations })).toEqual(
      readdirSync(OURS).filter((n) => /^\d/.test(n)),
    );
    expect((await update()).applied).toHaveLength(readdirSync(OURS).filter((n) => /^\d/.test(n)).length);
    expect(await update()).toEqual({ applied: [], kept: null });
    expect(existsSync(join(folder, 'data', 'backup'))).toBe(false);
    expect(strays()).toEqual([]);
  });

  it('copies the file aside before a pending migration, with what was written last', async () => {
    await update();
    await addPlace();
    await closeAll();
    addMigration('29990101000000_shelf_note', 'ALTER TABLE "Place" ADD COLUMN "shelfNote" TEXT;');
    const { applied, kept } = await update();
    expect(applied).toEqual(['29990101000000_shelf_note']);
    expect(kept).toBe(join(folder, 'data', 'backup', 'jars-2026-11-05T060708-before-update.db'));
    const before = openDatabase(databaseAddress(`file:${kept}`, folder));
    opened.push(before);
    expect(await before.place.count()).toBe(1);
    expect(await placeColumns(before)).not.toContain('shelfNote');
    expect(await placeColumns(open())).toContain('shelfNote');
    expect(await open().place.count()).toBe(1);
  });

  it('leaves the file as it was, byte for byte like the copy, when the second of two migrations fails', async () => {
    await update();
    await addPlace();
    await closeAll();
    addMigration('29990101000000_good', 'ALTER TABLE "Place" ADD COLUMN "good" TEXT;');
    addMigration('29990102000000_bad', 'CREATE TABLE "Half" ("id" TEXT);\nALTER TABLE "Nowhere" ADD COLUMN "x" TEXT;');
    await expect(update()).rejects.toThrow(/is as it was before.*Nowhere/s);
    const [copy] = readdirSync(join(folder, 'data', 'backup'));
    expect(readFileSync(file).equals(readFileSync(join(folder, 'data', 'backup', copy as string)))).toBe(true);
    expect(await placeColumns(open())).not.toContain('good');
    expect(await open().place.count()).toBe(1);
    expect(strays().filter((name) => !/-(wal|shm)$/.test(name))).toEqual([]);
    await closeAll();
    rmSync(join(migrations, '29990102000000_bad'), { recursive: true });
    expect((await update()).applied).toEqual(['29990101000000_good']);
  });

  it('refuses a file from a newer program and does not touch it', async () => {
    addMigration('29990101000000_from_the_future', 'CREATE TABLE "Future" ("id" TEXT);');
    await update();
    const before = readFileSync(file);
    rmSync(join(migrations, '29990101000000_from_the_future'), { recursive: true });
    await expect(update()).rejects.toThrow(/newer Stillroom.*29990101000000_from_the_future.*Nothing was changed/);
    expect(readFileSync(file).equals(before)).toBe(true);
  });

  it('refuses a migration that was edited after it had been applied', async () => {
    await update();
    const first = readdirSync(migrations).find((name) => name.endsWith('_first')) as string;
    writeFileSync(join(migrations, first, 'migration.sql'), '-- emptied\n');
    await expect(update()).rejects.toThrow(`changed after the database had applied them: ${first}`);
  });

  it('refuses to change a file that another client has open', async () => {
    await update();
    await addPlace();
    addMigration('29990101000000_good', 'ALTER TABLE "Place" ADD COLUMN "good" TEXT;');
    expect(updateElsewhere()).toMatch(/jars\.db is in use/);
    await closeAll();
    expect((await update()).applied).toEqual(['29990101000000_good']);
  });

  it('refuses a damaged file, and a file that is no database', async () => {
    await update();
    const bytes = readFileSync(file);
    bytes.fill(0x5a, 8192, 12288);
    writeFileSync(file, bytes);
    await expect(update()).rejects.toThrow(/is damaged/);
    writeFileSync(file, 'apples, pears, quinces\n'.repeat(500));
    await expect(update()).rejects.toThrow(/is damaged.*not a database/);
  });
});

describe('verifyDatabase', () => {
  const verify = () => verifyDatabase(open(), databaseAddress(`file:${file}`, folder), migrations);

  it('accepts a file that is up to date', async () => {
    await update();
    await expect(verify()).resolves.toBeUndefined();
  });

  it('refuses a file from a newer program', async () => {
    addMigration('29990101000000_from_the_future', 'CREATE TABLE "Future" ("id" TEXT);');
    await update();
    rmSync(join(migrations, '29990101000000_from_the_future'), { recursive: true });
    await expect(verify()).rejects.toThrow(/newer Stillroom.*29990101000000_from_the_future/);
  });

  it('sends the keeper to npm start when the file is behind or empty', async () => {
    await update();
    addMigration('29990101000000_good', 'ALTER TABLE "Place" ADD COLUMN "good" TEXT;');
    await expect(verify()).rejects.toThrow(/29990101000000_good is missing.*npm start/);
    await closeAll();
    rmSync(file);
    await expect(verify()).rejects.toThrow(/_first.*npm start/);
  });

  it('refuses a damaged file', async () => {
    await update();
    const bytes = readFileSync(file);
    bytes.fill(0x5a, bytes.length - 4096);
    writeFileSync(file, bytes);
    await expect(verify()).rejects.toThrow(/is damaged|malformed/);
  });
});
