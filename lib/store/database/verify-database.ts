import { readdirSync } from 'node:fs';
import type { DatabaseAddress } from './env.ts';
import type { Db } from './open-database.ts';

/** Folder of the migrations that belong to an address. */
export const migrationsFolder = (address: DatabaseAddress, projectFolder: string): string =>
  `${projectFolder}/prisma/${address.kind === 'sqlite' ? '' : 'postgresql/'}migrations`;

const namesIn = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => (entry.isDirectory() ? [entry.name] : []));

/**
 * Refuses a database this program must not work on: a damaged file, one written by a newer program, one that has not
 * been brought up to date. Reads only.
 * @param folder the migrations this program knows
 * @throws Error with a sentence for the keeper
 */
export async function verifyDatabase(db: Db, address: DatabaseAddress, folder: string): Promise<void> {
  if (address.kind === 'sqlite') await refuseDamaged(db, address.path);
  const known = new Set(namesIn(folder));
  const applied = await appliedNames(db);
  const unknown = applied.filter((name) => !known.has(name));
  if (unknown.length > 0) {
    throw new Error(
      `This database was written by a newer Stillroom (it knows ${unknown.join(', ')}, which this program does not). Nothing was changed. Update the program, or open an older copy of the data.`,
    );
  }
  const missing = [...known].filter((name) => !applied.includes(name));
  if (missing.length > 0) {
    throw new Error(
      `The database is not up to date (${missing.join(', ')} is missing). Stop Stillroom and run \`npm start\`.`,
    );
  }
}

async function refuseDamaged(db: Db, path: string): Promise<void> {
  const rows = await db.$queryRawUnsafe<{ quick_check: string }[]>('PRAGMA quick_check(1)');
  const verdict = rows[0]?.quick_check;
  if (verdict !== 'ok') {
    throw new Error(
      `${path} is damaged (${verdict}). Put the newest good copy from the backup folder beside it in its place.`,
    );
  }
}

/** The migrations the database has applied; none when it has never been brought up to date. */
async function appliedNames(db: Db): Promise<string[]> {
  try {
    const rows = await db.$queryRawUnsafe<{ migration_name: string }[]>(
      'SELECT migration_name FROM _prisma_migrations WHERE finished_at IS NOT NULL AND rolled_back_at IS NULL',
    );
    return rows.map((row) => row.migration_name);
  } catch (error) {
    if (/no such table|does not exist/i.test(String(error))) return [];
    throw error;
  }
}
