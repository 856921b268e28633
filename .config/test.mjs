// `npm test`: the same set-up as `npm start`, then every check there is, in one row. Ends with the counts.
import { rmSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { installFromDebian } from './apt.mjs';
import { findChromium } from './chromium.mjs';
import { ensureBuilt, ensureGenerated, ensureInstalled, ensureNode } from './ensure.mjs';
import { cacheFolder, inProject } from './environment.mjs';
import { freePort } from './free-port.mjs';
import { programsFolder, startPostgresql } from './postgresql.mjs';
import { runNode } from './run-program.mjs';
import { findSolvers } from './solvers.mjs';
import { makeSteps } from './steps.mjs';
import { countsLine, playwrightCounts, sumCounts, vitestCounts } from './test-counts.mjs';

const say = (text) => console.log(text);
const { step, report } = makeSteps(say);
const reports = { vitest: join(cacheFolder(), 'vitest.json'), playwright: join(cacheFolder(), 'playwright.json') };
const tool = (...parts) => inProject('node_modules', ...parts);
const stopAtEnd = [];
let postgresqlUsed = '';
let chromium = '';

/** Runs a tool; when it fails, its own words have been printed and `advice` says what to do with them. */
async function check(args, advice, options) {
  const { code } = await runNode(args, options);
  if (code !== 0) throw new Error(advice);
}

async function main() {
  for (const path of Object.values(reports)) rmSync(path, { force: true });
  await step('Set-up', async () => {
    ensureNode();
    const installed = await ensureInstalled(say);
    const generated = await ensureGenerated(say);
    return installed || generated ? '' : 'Packages and database clients are there.';
  });
  const needs = ['Set-up'];
  await step('Format and lint', lint, { needs });
  await step('Types', types, { needs });
  await step('Arrows between the rooms', arrows, { needs });
  await step(
    'Derived schema',
    () => check(['prisma/derive-postgresql.mjs', '--check'], 'Run the command named above.'),
    { needs },
  );
  await step(
    'Migrations',
    () => check(['prisma/migrate.mjs', 'check'], 'Write the missing migration as named above.'),
    { needs },
  );
  await step('Other solvers', () => findSolvers(say), { needs });
  await step('Tests', tests, { needs });
  await step('Build', async () => ((await ensureBuilt(say)) ? '' : 'Up to date.'), { needs });
  await step('Chromium', async () => (chromium = await findChromium(say)), { needs });
  await step('Browser tests', browserTests, { needs: ['Build', 'Chromium'] });
}

const lint = () =>
  check(
    [tool('@biomejs', 'biome', 'bin', 'biome'), 'check', '--config-path=.biome.json', '--error-on-warnings', '.'],
    'Run `npx biome check --write --config-path=.biome.json .`, then correct by hand what it leaves.',
  );

async function types() {
  // Next writes the types of routes and style sheets; on a fresh clone they are not there yet.
  await check([tool('next', 'dist', 'bin', 'next'), 'typegen'], 'Correct the route that Next names above.', {
    quiet: true,
  });
  await check(
    [tool('typescript-native', 'bin', 'tsc'), '--noEmit', '--incremental', 'false', '-p', 'tsconfig.json'],
    'Correct the types named above.',
  );
}

async function arrows() {
  const cruise = [tool('dependency-cruiser', 'bin', 'dependency-cruise.mjs'), '--config', '.dependency-cruiser.cjs'];
  const { code, output } = await runNode([...cruise, 'app', 'components', 'lib', 'test', 'e2e', 'prisma'], {
    quiet: true,
  });
  const modules = Number(/(\d+) modules/.exec(output)?.[1] ?? 0);
  if (code !== 0)
    throw new Error(
      `${output}\nAn import above goes against the arrows in .dependency-cruiser.cjs: move the code to the room it belongs to.`,
    );
  // With a TypeScript it does not know, the tool sees nothing and is content.
  if (modules === 0)
    throw new Error('dependency-cruiser saw no module at all: check that the package `typescript` is older than 7.');
  return `${modules} modules, all arrows as they should be.`;
}

async function tests() {
  const url = await postgresqlForTests();
  await check(
    [
      tool('vitest', 'vitest.mjs'),
      'run',
      '--config',
      'test/vitest.config.ts',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${reports.vitest}`,
    ],
    'A test above failed. Run it alone with `npx vitest run --config test/vitest.config.ts <its file>`.',
    { env: { STILLROOM_TEST_PG: url } },
  );
  return `Store tests ran on SQLite and on ${postgresqlUsed}.`;
}

/** Address of a server of our own; empty when there is none, in which case the tests take PGlite. */
async function postgresqlForTests() {
  try {
    if (!programsFolder()) {
      say('No PostgreSQL here: trying apt-get install postgresql …');
      const problem = await installFromDebian(['postgresql']);
      if (problem) throw new Error(problem);
    }
    const server = await startPostgresql(programsFolder());
    stopAtEnd.push(server.stop);
    postgresqlUsed = server.version;
    return server.url;
  } catch (error) {
    postgresqlUsed = `PGlite (PostgreSQL in this process; no server could be started: ${error.message})`;
    return '';
  } finally {
    say(`PostgreSQL for the store tests: ${postgresqlUsed}`);
  }
}

async function browserTests() {
  await check(
    [tool('playwright', 'cli.js'), 'test', '-c', 'e2e/playwright.config.ts'],
    'A browser test above failed; its picture is in test-results. Run it alone with `npx playwright test -c e2e/playwright.config.ts <its file>`.',
    {
      env: {
        CHROMIUM_PATH: chromium,
        E2E_PORTS: (await portsForBrowserTests()).join(),
        E2E_REPORT: reports.playwright,
      },
    },
  );
}

/** One for each server: two journeys at a time where there are two cores, as a browser mostly waits. */
async function portsForBrowserTests() {
  const first = await freePort(3917, '127.0.0.1');
  return availableParallelism() > 1 ? [first, await freePort(first + 1, '127.0.0.1')] : [first];
}

/** Prints how each step ended and the counts, last; a step that failed without a failing test counts as one failure. */
function close() {
  const counted = { Tests: vitestCounts(reports.vitest), 'Browser tests': playwrightCounts(reports.playwright) };
  const badly = report().filter((step) => step.state !== 'done');
  say('\n== Summary');
  for (const { name, state, seconds } of report())
    say(`${name.padEnd(26)} ${state.padEnd(12)} ${seconds.toFixed(1)} s`);
  if (postgresqlUsed) say(`Store tests on SQLite and ${postgresqlUsed}`);
  for (const [name, counts] of Object.entries(counted)) say(`${name}: ${countsLine(counts)}`);
  const uncounted = badly.filter(({ name }) => !(counted[name]?.failed > 0));
  if (uncounted.length > 0)
    say(`Steps that did not end well, each counted as one failure: ${uncounted.map(({ name }) => name).join(', ')}`);
  const total = sumCounts([...Object.values(counted), { passed: 0, failed: uncounted.length, skipped: 0 }]);
  say(countsLine(total));
  return badly.length > 0 || total.failed > 0 || total.passed === 0 ? 1 : 0;
}

for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => process.exit(130));
process.on('exit', () => {
  for (const stop of stopAtEnd) stop();
});
await main();
process.exit(close());
