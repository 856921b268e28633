import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { databaseAddress } from '#lib/store/database/env.ts';
import { type Db, openDatabase } from '#lib/store/database/open-database.ts';
import { deploy, pending } from '#prisma/deploy.mjs';

const SERVER = process.env.STILLROOM_TEST_PG?.trim() ?? '';
const NAME = `stillroom_deploy_${process.pid}`;
const BAD = '29990101000000_note';
const HALF = `CREATE TABLE "Note" ("text" TEXT);\nINSERT INTO "Note" VALUES ('plums; damsons');\n`;

describe.skipIf(!SERVER)('deploy on a PostgreSQL server', () => {
  let migrations: string;
  let admin: Db;
  const url = SERVER && Object.assign(new URL(SERVER), { pathname: `/${NAME}` }).href;
  const write = (sql: string) => {
    mkdirSync(join(migrations, BAD), { recursive: true });
    writeFileSync(join(migrations, BAD, 'migration.sql'), sql);
  };

  beforeEach(async () => {
    migrations = join(mkdtempSync(join(tmpdir(), 'stillroom-deploy-')), 'migrations');
    cpSync('prisma/postgresql/migrations', migrations, { recursive: true });
    admin = openDatabase(databaseAddress(SERVER, ''));
    await admin.$executeRawUnsafe(`CREATE DATABASE ${NAME}`);
    await deploy(url, { folder: migrations });
  });
  afterEach(async () => {
    await admin.$executeRawUnsafe(`DROP DATABASE ${NAME} WITH (FORCE)`);
    await admin.$disconnect();
    rmSync(join(migrations, '..'), { recursive: true, force: true });
  });

  it('rolls a failing migration back as a whole, says why, and tries it again once it is repaired', async () => {
    write(`${HALF}ALTER TABLE "Nowhere" ADD COLUMN "x" TEXT;`);
    await expect(deploy(url, { folder: migrations })).rejects.toThrow(/rolled back as a whole.*Nowhere/);
    expect(await pending(url, { folder: migrations })).toEqual([BAD]);
    write(HALF);
    expect((await deploy(url, { folder: migrations })).applied).toEqual([BAD]);
    const db = openDatabase(databaseAddress(url, ''));
    expect(await db.$queryRawUnsafe('SELECT "text" FROM "Note"')).toEqual([{ text: 'plums; damsons' }]);
    await db.$disconnect();
  });

  it('refuses a database from a newer program', async () => {
    write(HALF);
    await deploy(url, { folder: migrations });
    rmSync(join(migrations, BAD), { recursive: true });
    await expect(deploy(url, { folder: migrations })).rejects.toThrow(new RegExp(`newer Stillroom.*${BAD}`));
  });
});
