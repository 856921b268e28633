// The two migration folders and the schema each belongs to.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = dirname(fileURLToPath(import.meta.url));

export const isPostgresql = (url) => /^postgres(ql)?:/.test(url);

/** `sqlite` or `postgresql` to the folder that holds its migrations. */
export const migrationsFolder = (provider) => join(here, provider === 'sqlite' ? '.' : provider, 'migrations');
export const schemaText = (provider) =>
  readFileSync(join(here, provider === 'sqlite' ? '.' : provider, 'schema.prisma'), 'utf8');

/** Names of the migrations this program knows, oldest first. */
export function migrationNames(folder) {
  if (!existsSync(folder)) return [];
  const entries = readdirSync(folder, { withFileTypes: true });
  return entries.flatMap((entry) => (entry.isDirectory() ? [entry.name] : [])).sort();
}

/** The folder in the form the schema engine asks for. */
export function migrationList(folder) {
  const lock = join(folder, 'migration_lock.toml');
  return {
    baseDir: folder,
    lockfile: { path: 'migration_lock.toml', content: existsSync(lock) ? readFileSync(lock, 'utf8') : null },
    shadowDbInitScript: '',
    migrationDirectories: migrationNames(folder).map((name) => ({
      path: name,
      migrationFile: {
        path: 'migration.sql',
        content: { tag: 'ok', value: readFileSync(join(folder, name, 'migration.sql'), 'utf8') },
      },
    })),
  };
}
