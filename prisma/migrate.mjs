// node prisma/migrate.mjs deploy | status     on the database of DATABASE_URL
// node prisma/migrate.mjs new <name> | check  on scratch databases, for SQLite and PostgreSQL together
// node prisma/migrate.mjs carry <file:…> <postgresql://…>  all records of a file to an empty PostgreSQL database
import { missingSql, newMigration, PROVIDERS } from './author-migrations.mjs';
import { carry } from './carry.mjs';
import { deploy, pending } from './deploy.mjs';

const COMMANDS = { deploy: runDeploy, status: runStatus, new: runNew, check: runCheck, carry: runCarry };
const databaseUrl = () => process.env.DATABASE_URL?.trim() || 'file:./data/stillroom.db';

async function runDeploy() {
  const { applied, kept } = await deploy(databaseUrl());
  if (kept) console.log(`Kept a copy of the data from before the update: ${kept}`);
  console.log(applied.length > 0 ? `Database brought up to date: ${applied.join(', ')}` : 'Database is up to date.');
}

async function runStatus() {
  const names = await pending(databaseUrl());
  console.log(names.length > 0 ? `Not yet applied: ${names.join(', ')}` : 'Database is up to date.');
  return names.length > 0 ? 1 : 0;
}

async function runNew(name = '') {
  const written = await newMigration(name, new Date());
  console.log(
    written.length > 0
      ? `Wrote, please read:\n${written.join('\n')}`
      : 'The schema has not changed: no migration is needed.',
  );
}

async function runCheck() {
  let code = 0;
  for (const provider of PROVIDERS) {
    const sql = await missingSql(provider);
    if (sql) {
      code = 1;
      console.error(
        `${provider}: the migrations do not lead to the schema. Run \`node prisma/derive-postgresql.mjs\` and \`node prisma/migrate.mjs new <name>\`. Missing:\n${sql}`,
      );
    } else console.log(`${provider}: the migrations lead to the schema`);
  }
  return code;
}

async function runCarry(from = databaseUrl(), to = '') {
  const carried = await carry(from, to, console.log);
  const rows = Object.values(carried).reduce((sum, n) => sum + n, 0);
  console.log(`${rows} rows carried over. Start with DATABASE_URL set to the new database; the file is as it was.`);
}

async function main([command = '', ...rest]) {
  const run = COMMANDS[command];
  if (run) return (await run(...rest)) ?? 0;
  console.error(`Usage: node prisma/migrate.mjs ${Object.keys(COMMANDS).join(' | ')}`);
  return 2;
}

// PGlite sets process.exitCode when it closes, so the code is always given.
main(process.argv.slice(2)).then(
  (code) => process.exit(code),
  (error) => {
    console.error(error.message);
    process.exit(1);
  },
);
