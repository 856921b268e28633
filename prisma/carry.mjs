// Carries all records of a SQLite file over to an empty PostgreSQL database, table by table, in one transaction.
import { existsSync } from 'node:fs';
import { deploy, pending } from './deploy.mjs';
import { isPostgresql } from './migrations-folder.mjs';
import { postgresqlServer } from './postgresql-server.mjs';
import { isUnwritten, sqlitePath, withFile } from './sqlite-file.mjs';

const ROWS_AT_ONCE = 1000;

/**
 * @param {string} from `file:` URL; it is only read, and must be up to date (npm start brings it there)
 * @param {string} to `postgresql:` URL of a database without records; the schema is brought there first
 * @param {(line: string) => void} [say] told after each table
 * @returns {Promise<Record<string, number>>} rows by table
 * @throws Error with a sentence for the keeper; the database is then as empty as before.
 */
export async function carry(from, to, say = () => undefined) {
  if (!isPostgresql(to)) throw new Error('The second address must begin with postgresql://.');
  const path = sqlitePath(from);
  if (!existsSync(path) || isUnwritten(path)) throw new Error(`There is no data in ${path}.`);
  if ((await pending(from)).length > 0)
    throw new Error(`${path} is from an older Stillroom. Run npm start on it once, then carry it over.`);
  await deploy(to);
  const connection = await postgresqlServer(to).connect();
  const server = await connection.client.connect();
  try {
    return await withFile(path, (file) => carryRows(file, server, say));
  } finally {
    server.release();
    await connection.dispose();
  }
}

/**
 * @param file connection of the SQLite adapter
 * @param server whatever has `query(sql, params)`, with one session
 */
export async function carryRows(file, server, say) {
  const tables = await tablesOf(server);
  const full = [];
  for (const { name } of tables) if ((await countOf(server, name)) > 0) full.push(name);
  if (full.length > 0)
    throw new Error(`That database has records already (${full.join(', ')}). Give the name of an empty one.`);
  const carried = {};
  await server.query('BEGIN');
  try {
    for (const table of tables) {
      carried[table.name] = await carryTable(file, server, table);
      const arrived = await countOf(server, table.name);
      if (arrived !== carried[table.name])
        throw new Error(`${table.name}: ${carried[table.name]} rows were sent and ${arrived} arrived.`);
      say(`${table.name}: ${arrived}`);
    }
    await server.query('COMMIT');
    return carried;
  } catch (error) {
    await server.query('ROLLBACK');
    throw error;
  }
}

async function carryTable(file, server, { name, columns }) {
  const list = columns.map((c) => `"${c.name}"`).join(', ');
  let count = 0;
  for (;;) {
    const sql = `SELECT ${list} FROM "${name}" ORDER BY rowid LIMIT ${ROWS_AT_ONCE} OFFSET ${count}`;
    const { rows } = await file.queryRaw({ sql, args: [], argTypes: [] });
    if (rows.length === 0) return count;
    const records = rows.map((row) => Object.fromEntries(columns.map((c, i) => [c.name, valueFor(c.type, row[i])])));
    await server.query(
      `INSERT INTO "${name}" (${list}) SELECT ${list} FROM jsonb_populate_recordset(NULL::"${name}", $1::jsonb)`,
      [JSON.stringify(records)],
    );
    count += rows.length;
  }
}

/** SQLite keeps truth as 0 and 1, instants as text or milliseconds, and JSON as text. */
function valueFor(type, value) {
  if (value === null) return null;
  if (type === 'boolean') return value === true || Number(value) === 1;
  if (type.startsWith('timestamp')) return new Date(value).toISOString();
  if (type === 'jsonb') return typeof value === 'string' ? JSON.parse(value) : value;
  return typeof value === 'bigint' ? Number(value) : value;
}

const COLUMNS = `SELECT table_name, column_name, data_type FROM information_schema.columns
  WHERE table_schema = current_schema() AND table_name NOT LIKE '\\_prisma%' ORDER BY table_name, ordinal_position`;
const REFERENCES = `SELECT child.relname AS child, parent.relname AS parent FROM pg_constraint k
  JOIN pg_class child ON child.oid = k.conrelid JOIN pg_class parent ON parent.oid = k.confrelid WHERE k.contype = 'f'`;

/** Tables with their columns, each after those it refers to. */
async function tablesOf(server) {
  const columns = (await server.query(COLUMNS)).rows;
  const references = (await server.query(REFERENCES)).rows.filter((r) => r.child !== r.parent);
  const left = new Set(columns.map((c) => c.table_name));
  const ordered = [];
  while (left.size > 0) {
    const free = [...left].filter((t) => !references.some((r) => r.child === t && left.has(r.parent)));
    if (free.length === 0) throw new Error(`These tables refer to each other in a ring: ${[...left].join(', ')}.`);
    for (const name of free) {
      left.delete(name);
      const own = columns.filter((c) => c.table_name === name);
      ordered.push({ name, columns: own.map((c) => ({ name: c.column_name, type: c.data_type })) });
    }
  }
  return ordered;
}

const countOf = async (server, table) => Number((await server.query(`SELECT count(*) AS n FROM "${table}"`)).rows[0].n);
