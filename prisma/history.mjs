// What a database says of the migrations it has applied, held against the folder of this program.
import { createHash } from 'node:crypto';
import { migrationList } from './migrations-folder.mjs';

const SQL =
  'SELECT migration_name, checksum, CASE WHEN finished_at IS NULL THEN 0 ELSE 1 END FROM _prisma_migrations WHERE rolled_back_at IS NULL';

/**
 * Names of the migrations in `folder` that the database has not applied, oldest first.
 * @throws Error with a sentence for the keeper: newer than the program, an edited migration, one that failed half-way.
 */
export async function pendingOrRefuse(connection, folder) {
  const applied = await appliedMigrations(connection);
  const known = new Map(migrationList(folder).migrationDirectories.map((m) => [m.path, m.migrationFile.content.value]));
  const unknown = applied.filter(({ name }) => !known.has(name));
  if (unknown.length > 0) throw new Error(newerDatabase(unknown));
  const failed = applied.filter(({ finished }) => !finished);
  if (failed.length > 0) {
    throw new Error(
      `The migration ${list(failed)} failed half-way in this database. Restore the database from a backup, then start again.`,
    );
  }
  const edited = applied.filter(({ name, checksum }) => checksum !== sha256(known.get(name)));
  if (edited.length > 0) {
    throw new Error(
      `These migrations were changed after the database had applied them: ${list(edited)}. Put their files back as they were; a change belongs in a new migration.`,
    );
  }
  const names = new Set(applied.map(({ name }) => name));
  return [...known.keys()].filter((name) => !names.has(name));
}

async function appliedMigrations(connection) {
  try {
    const { rows } = await connection.queryRaw({ sql: SQL, args: [], argTypes: [] });
    return rows.map(([name, checksum, finished]) => ({ name, checksum, finished: Number(finished) === 1 }));
  } catch (error) {
    if (/no such table|TableDoesNotExist|does not exist/i.test(error.message + JSON.stringify(error.cause ?? '')))
      return [];
    throw error;
  }
}

const sha256 = (text) => createHash('sha256').update(text).digest('hex');
const list = (migrations) => migrations.map(({ name }) => name).join(', ');
const newerDatabase = (unknown) =>
  `This database was written by a newer Stillroom (it knows ${list(unknown)}, which this program does not). Nothing was changed. Update the program, or open an older copy of the data.`;
