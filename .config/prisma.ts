import { resolve } from 'node:path';
import { defineConfig } from 'prisma/config';

/** Plain `npx prisma migrate deploy|status` acts on the schema, migrations and file that belong to DATABASE_URL. */
const given = process.env.DATABASE_URL?.trim() || 'file:./data/stillroom.db';
const postgresql = /^postgres(ql)?:/.test(given);
// Prisma would read a relative path from this folder; it is meant from the project folder, where the command is given.
const relative = /^file:(?!\/)(.*)$/.exec(given)?.[1];

export default defineConfig({
  schema: resolve(postgresql ? 'prisma/postgresql/schema.prisma' : 'prisma/schema.prisma'),
  migrations: { path: resolve(postgresql ? 'prisma/postgresql/migrations' : 'prisma/migrations') },
  datasource: { url: relative === undefined ? given : `file:${resolve(relative)}` },
});
