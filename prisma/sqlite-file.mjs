// What a migration does to a SQLite file apart from the SQL: prove it sound, copy it aside, put the new one in its place.
import { copyFileSync, existsSync, mkdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { PrismaLibSql } from '@prisma/adapter-libsql';

const projectFolder = fileURLToPath(new URL('..', import.meta.url));

/** Path of the file in a `file:` URL; a relative one is meant from the project folder. */
export function sqlitePath(url) {
  if (!url.startsWith('file:')) {
    throw new Error(`DATABASE_URL must begin with file: or postgresql://, not "${url.split(':')[0]}".`);
  }
  return resolve(projectFolder, url.startsWith('file://') ? fileURLToPath(url) : url.slice('file:'.length));
}

/** True when nothing has been stored under this path yet. */
export const isUnwritten = (path) => !existsSync(path) || statSync(path).size === 0;

/**
 * Opens the file for `use(connection)` and closes it again. One connection per file and process: the driver lets go of
 * a closed one only at the next garbage collection, and until then it would count as another user of the file.
 */
export async function withFile(path, use) {
  const connection = await new PrismaLibSql({ url: `file:${path}`, timeout: 5000 }).connect();
  try {
    return await use(connection);
  } finally {
    await connection.dispose();
  }
}

const firstRow = async (connection, sql) => {
  const { rows } = await connection.queryRaw({ sql, args: [], argTypes: [] });
  return rows[0]?.map(String) ?? [];
};

/** Throws a sentence for the keeper when the file is damaged or is not a database. */
export async function proveSound(connection, path) {
  const [verdict] = await firstRow(connection, 'PRAGMA quick_check(1)').catch((error) => [wording(error)]);
  if (verdict === 'ok') return;
  throw new Error(
    `${path} is damaged (${verdict}). Nothing was changed. Put the newest good copy from ${backupFolder(path)} in its place, or restore your own backup.`,
  );
}

export const backupFolder = (path) => join(dirname(path), 'backup');

/** Makes a new file: `change(workingPath)` fills it beside its place, where it is moved when it is whole. */
export async function makeFile(path, change) {
  mkdirSync(dirname(path), { recursive: true });
  await beside(path, async (working) => {
    await change(working);
    await settle(working);
    renameSync(working, path);
  });
}

/**
 * Changes the file in one step: `change(workingPath)` works on a copy, which takes the file's place only when it ended
 * well and is sound. A failure or a killed process leaves the file as it was.
 * @param connection the one open on `path`; it keeps everybody else out meanwhile
 * @returns path of the copy of the state before, which is kept
 */
export async function replaceFile({ path, connection, now, change }) {
  await lockOut(connection, path);
  try {
    const kept = copyAside(path, now);
    await beside(path, async (working) => {
      copyFileSync(path, working);
      await change(working);
      await settle(working);
      // Windows cannot rename over an open file; elsewhere the lock is kept until the new file is in place.
      if (process.platform === 'win32') await connection.dispose();
      renameSync(working, path);
    });
    return kept;
  } finally {
    await firstRow(connection, 'ROLLBACK').catch(() => undefined);
  }
}

async function beside(path, use) {
  const working = `${path}.migrating-${process.pid}`;
  removeDatabase(working);
  try {
    await use(working);
  } finally {
    removeDatabase(working);
  }
}

/** Folds the write-ahead log in, which only the last user of a file can, and keeps everybody else out. */
async function lockOut(connection, path) {
  try {
    await firstRow(connection, 'PRAGMA busy_timeout = 1000');
    await firstRow(connection, 'PRAGMA journal_mode = DELETE');
    await firstRow(connection, 'BEGIN EXCLUSIVE');
  } catch (error) {
    if (!/locked|busy|SocketTimeout/i.test(wording(error))) throw error;
    throw new Error(`${path} is in use, perhaps by a Stillroom that is still running. Stop that one and start again.`);
  }
}

function copyAside(path, now) {
  mkdirSync(backupFolder(path), { recursive: true });
  const stamp = now.toISOString().slice(0, 19).replace(/:/g, '');
  const kept = join(backupFolder(path), `${basename(path, '.db')}-${stamp}-before-update.db`);
  copyFileSync(path, kept);
  return kept;
}

/** Everything in the one file, and that file sound. */
const settle = (path) =>
  withFile(path, async (connection) => {
    await firstRow(connection, 'PRAGMA journal_mode = DELETE');
    await proveSound(connection, path);
  });

function removeDatabase(path) {
  for (const suffix of ['', '-wal', '-shm', '-journal']) rmSync(path + suffix, { force: true });
}

const wording = (error) => `${error.message} ${error.cause ? JSON.stringify(error.cause) : ''}`.trim();
