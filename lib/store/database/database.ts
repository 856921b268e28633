import { databaseAddress } from './env.ts';
import { type Db, openDatabase } from './open-database.ts';
import { migrationsFolder, verifyDatabase } from './verify-database.ts';

/** Pages, actions and route handlers are separate module graphs: only globalThis is one per process. */
const perProcess = globalThis as typeof globalThis & { stillroomDatabase?: Promise<Db> };

/**
 * The one client of this process on the database of DATABASE_URL, opened and verified at the first call.
 * (Two clients on one SQLite file in one process would block each other.)
 * @throws Error with a sentence for the keeper when the database must not be used; the next call tries again.
 */
export function database(): Promise<Db> {
  perProcess.stillroomDatabase ??= open().catch((error: unknown) => {
    delete perProcess.stillroomDatabase;
    throw error;
  });
  return perProcess.stillroomDatabase;
}

async function open(): Promise<Db> {
  const projectFolder = process.cwd();
  const address = databaseAddress(process.env.DATABASE_URL, projectFolder);
  const db = openDatabase(address);
  try {
    await verifyDatabase(db, address, migrationsFolder(address, projectFolder));
    return db;
  } catch (error) {
    await db.$disconnect();
    throw error;
  }
}
