import { copyFileSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PGlite } from '@electric-sql/pglite';
import { PrismaPGlite } from 'pglite-prisma-adapter';
import { afterAll, afterEach, beforeAll, describe } from 'vitest';
import { databaseAddress } from '#lib/store/database/env.ts';
import { type Db, openDatabase } from '#lib/store/database/open-database.ts';
import { deploy } from '#prisma/deploy.mjs';
import { PrismaClient as PostgresqlClient } from '#prisma/generated/postgresql/client.ts';

export type DatabaseName = 'sqlite' | 'postgresql';

/** Gives an empty, migrated database of its own; it is closed and dropped after the test. */
export type OpenDatabase = () => Promise<Db>;

/** Address of a PostgreSQL server on which databases may be made and dropped; without it PGlite stands in. */
const SERVER = process.env.STILLROOM_TEST_PG?.trim();

/**
 * Runs the same tests on SQLite and on PostgreSQL.
 * @example forEachDatabase((name, open) => { describe(`acts on ${name}`, () => { it('…', async () => { const db = await open(); }) }) })
 */
export function forEachDatabase(tests: (name: DatabaseName, open: OpenDatabase) => void): void {
  describe('on SQLite', () => tests('sqlite', withCleanUp(sqliteTemplate)));
  describe(`on PostgreSQL${SERVER ? '' : ' (PGlite)'}`, () =>
    tests('postgresql', withCleanUp(SERVER ? serverTemplate : pgliteTemplate)));
}

/** A SQLite database only, for what exists on SQLite alone (files, WAL). */
export function onSqlite(tests: (open: OpenDatabase) => void): void {
  describe('on SQLite', () => tests(withCleanUp(sqliteTemplate)));
}

interface Template {
  readonly copy: () => Promise<{ db: Db; drop: () => Promise<void> }>;
  readonly close: () => Promise<void>;
}

/** Makes the template before the first test of the file and a copy per call. */
function withCleanUp(makeTemplate: () => Promise<Template>): OpenDatabase {
  let template: Template;
  const drops: (() => Promise<void>)[] = [];
  beforeAll(async () => {
    template = await makeTemplate();
  });
  afterEach(async () => {
    for (const drop of drops.splice(0)) await drop();
  });
  afterAll(async () => {
    await template?.close();
  });
  return async () => {
    const { db, drop } = await template.copy();
    drops.push(drop);
    return db;
  };
}

async function sqliteTemplate(): Promise<Template> {
  const folder = mkdtempSync(join(tmpdir(), 'stillroom-store-'));
  const template = join(folder, 'template.db');
  await deploy(`file:${template}`);
  let count = 0;
  return {
    copy: async () => {
      const path = join(folder, `copy-${++count}.db`);
      copyFileSync(template, path);
      const db = openDatabase(databaseAddress(`file:${path}`, folder));
      return { db, drop: () => db.$disconnect() };
    },
    close: async () => rmSync(folder, { recursive: true, force: true }),
  };
}

async function serverTemplate(): Promise<Template> {
  const server = SERVER as string;
  const admin = openDatabase(databaseAddress(server, ''));
  const stem = `stillroom_${process.pid}_${Math.random().toString(36).slice(2, 8)}`;
  const addressOf = (name: string) => Object.assign(new URL(server), { pathname: `/${name}` }).href;
  await admin.$executeRawUnsafe(`CREATE DATABASE ${stem}`);
  await deploy(addressOf(stem));
  let count = 0;
  return {
    copy: async () => {
      const name = `${stem}_${++count}`;
      await admin.$executeRawUnsafe(`CREATE DATABASE ${name} TEMPLATE ${stem}`);
      const db = openDatabase(databaseAddress(addressOf(name), ''));
      const drop = async () => {
        await db.$disconnect();
        await admin.$executeRawUnsafe(`DROP DATABASE ${name} WITH (FORCE)`);
      };
      return { db, drop };
    },
    close: async () => {
      await admin.$executeRawUnsafe(`DROP DATABASE ${stem} WITH (FORCE)`);
      await admin.$disconnect();
    },
  };
}

async function pgliteTemplate(): Promise<Template> {
  const made = new PGlite();
  for (const sql of migrationTexts()) await made.exec(sql);
  const snapshot = await made.dumpDataDir('none');
  await made.close();
  return {
    copy: async () => {
      const server = await PGlite.create({ loadDataDir: snapshot });
      const db = new PostgresqlClient({ adapter: new PrismaPGlite(server) }) as unknown as Db;
      const drop = async () => {
        await db.$disconnect();
        await server.close();
      };
      return { db, drop };
    },
    close: async () => undefined,
  };
}

function migrationTexts(): string[] {
  const folder = 'prisma/postgresql/migrations';
  const names = readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory() ? [entry.name] : [],
  );
  return names.sort().map((name) => readFileSync(join(folder, name, 'migration.sql'), 'utf8'));
}
