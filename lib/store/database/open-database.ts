import { PrismaPg } from '@prisma/adapter-pg';
import { PrismaClient as PostgresqlClient } from '#prisma/generated/postgresql/client.ts';
import { type Prisma, PrismaClient as SqliteClient } from '#prisma/generated/sqlite/client.ts';
import type { DatabaseAddress } from './env.ts';
import { Sqlite } from './sqlite.ts';

/** The SQLite client's types are the narrower ones: what compiles against them runs on PostgreSQL too. */
export type Db = SqliteClient;
/** What a function gets that must run inside the caller's transaction; a `Db` will do as well. */
export type Tx = Prisma.TransactionClient;

/** A new client on a database that has been brought up to date already. It connects at the first query. */
export function openDatabase(address: DatabaseAddress): Db {
  if (address.kind === 'sqlite') return new SqliteClient({ adapter: new Sqlite({ url: address.url }) });
  const client = new PostgresqlClient({ adapter: new PrismaPg({ connectionString: address.url }) });
  return client as unknown as Db;
}
