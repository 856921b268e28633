// Brings a database to the schema of this program, or says why not.
import { PrismaLibSql } from '@prisma/adapter-libsql';
import { pendingOrRefuse } from './history.mjs';
import { isPostgresql, migrationList, migrationNames, migrationsFolder, schemaText } from './migrations-folder.mjs';
import { postgresqlServer } from './postgresql-server.mjs';
import { withEngine } from './schema-engine.mjs';
import { isUnwritten, makeFile, proveSound, replaceFile, sqlitePath, withFile } from './sqlite-file.mjs';

/**
 * Applies the pending migrations to the database of `url`.
 * SQLite: the file is proved sound, copied aside, and changed in one step (all pending migrations or none).
 * PostgreSQL: each migration is one transaction; the server's own backup is the copy.
 * @param {string} url `file:` or `postgresql:`
 * @param {{ now?: Date, folder?: string }} [options] instant in the name of the copy; folder of the migrations (tests)
 * @returns {Promise<{ applied: string[], kept: string | null }>} names applied and path of the copy
 * @throws Error with a sentence for the keeper: damaged, in use, newer than the program, edited or failed migration.
 */
export async function deploy(url, { now = new Date(), folder = folderOf(url) } = {}) {
  if (isPostgresql(url)) return { applied: await deployToServer(url, folder), kept: null };
  const path = sqlitePath(url);
  let applied = [];
  const change = async (file) => {
    applied = await applyToFile(file, folder);
  };
  if (isUnwritten(path)) {
    await makeFile(path, change);
    return { applied, kept: null };
  }
  return withFile(path, async (connection) => {
    await proveSound(connection, path);
    if ((await pendingOrRefuse(connection, folder)).length === 0) return { applied, kept: null };
    const kept = await replaceFile({ path, connection, now, change });
    return { applied, kept };
  });
}

/**
 * Names of the migrations that `deploy` would apply. Throws where `deploy` would; writes nothing.
 * @param {string} url
 * @param {{ folder?: string }} [options]
 * @returns {Promise<string[]>}
 */
export async function pending(url, { folder = folderOf(url) } = {}) {
  if (isPostgresql(url)) return withServer(url, (connection) => pendingOrRefuse(connection, folder));
  const path = sqlitePath(url);
  if (isUnwritten(path)) return migrationNames(folder);
  return withFile(path, async (connection) => {
    await proveSound(connection, path);
    return pendingOrRefuse(connection, folder);
  });
}

const folderOf = (url) => migrationsFolder(isPostgresql(url) ? 'postgresql' : 'sqlite');

async function applyToFile(path, folder) {
  const factory = new PrismaLibSql({ url: `file:${path}`, timeout: 5000 });
  try {
    return await withEngine({ schema: schemaText('sqlite'), factory }, (engine) => apply(engine, folder));
  } catch (error) {
    throw new Error(`The data file could not be brought up to date and is as it was before: ${sentence(error)}`);
  }
}

/** A migration that failed was one transaction, so it is marked as rolled back and tried again at the next start. */
async function deployToServer(url, folder) {
  const names = await withServer(url, (connection) => pendingOrRefuse(connection, folder));
  if (names.length === 0) return [];
  const target = { schema: schemaText('postgresql'), factory: postgresqlServer(url) };
  try {
    return await withEngine(target, (engine) => apply(engine, folder));
  } catch (error) {
    await withServer(url, (connection) => connection.executeScript(MARK_FAILED_AS_ROLLED_BACK)).catch(() => undefined);
    throw new Error(
      `The database could not be brought up to date; the migration that failed was rolled back as a whole: ${sentence(error)}`,
    );
  }
}

const MARK_FAILED_AS_ROLLED_BACK =
  'UPDATE _prisma_migrations SET rolled_back_at = now() WHERE finished_at IS NULL AND rolled_back_at IS NULL';

async function withServer(url, use) {
  const connection = await postgresqlServer(url).connect();
  try {
    return await use(connection);
  } finally {
    await connection.dispose();
  }
}

async function apply(engine, folder) {
  const filters = { externalTables: [], externalEnums: [] };
  return (await engine.applyMigrations({ migrationsList: migrationList(folder), filters })).appliedMigrationNames;
}

/** An engine error on one line: it may be an Error, an object or many lines. */
function sentence(error) {
  const text = [error?.message, error?.cause?.message].filter(Boolean).join(' ') || JSON.stringify(error);
  return text.replace(/\s+/g, ' ').slice(0, 600);
}
