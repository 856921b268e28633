// Writes prisma/postgresql/schema.prisma from prisma/schema.prisma, the only source. `--check` writes nothing and
// fails when the derived file is not what the source gives today.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const SOURCE = new URL('./schema.prisma', import.meta.url);
const TARGET = new URL('./postgresql/schema.prisma', import.meta.url);

/**
 * The PostgreSQL schema that belongs to a SQLite schema: the provider and the client's folder differ, nothing else.
 * Throws when either line is missing or stands there twice, so that a renamed generator is noticed.
 */
export function postgresqlSchema(source) {
  const swapped = swapOnce(
    swapOnce(source, 'provider = "sqlite"', 'provider = "postgresql"'),
    '"./generated/sqlite"',
    '"../generated/postgresql"',
  );
  const body = swapped.replace(/^(\/\/.*\n)+/, '');
  return `// Derived from prisma/schema.prisma by prisma/derive-postgresql.mjs: edit that file, not this one.\n${body}`;
}

function swapOnce(text, from, to) {
  const parts = text.split(from);
  if (parts.length !== 2)
    throw new Error(`prisma/schema.prisma must contain ${from} exactly once, not ${parts.length - 1} times.`);
  return parts.join(to);
}

function main() {
  const wanted = postgresqlSchema(readFileSync(SOURCE, 'utf8'));
  if (!process.argv.includes('--check')) {
    mkdirSync(new URL('.', TARGET), { recursive: true });
    writeFileSync(TARGET, wanted);
    return console.log('Wrote prisma/postgresql/schema.prisma');
  }
  if (read(TARGET) === wanted) return console.log('prisma/postgresql/schema.prisma follows prisma/schema.prisma');
  console.error(
    'prisma/postgresql/schema.prisma is out of date: run `node prisma/derive-postgresql.mjs` and commit it.',
  );
  process.exitCode = 1;
}

function read(file) {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return null;
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) main();
