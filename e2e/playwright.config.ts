import { defineConfig } from 'playwright/test';

/** One server, with a database of its own, for each worker. */
const servers = (process.env.E2E_PORTS ?? process.env.E2E_PORT ?? '3917')
  .split(',')
  .map((port) => ({ port, url: `http://127.0.0.1:${port}` }));
/** Of the worker that reads this; the first one outside of a worker. */
const baseURL = servers[Number(process.env.TEST_PARALLEL_INDEX ?? 0)]?.url;
const chromium = process.env.CHROMIUM_PATH?.trim();
const report = process.env.E2E_REPORT?.trim();

/** Quiet, and able to run as root in a closed network: the browser asks nothing of its maker. */
const ARGUMENTS = [
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
  ...(process.getuid?.() === 0 ? ['--no-sandbox'] : []),
];

/**
 * Journeys in a real browser over the production build. The files of one worker follow one another: they share its server and database.
 * A file named `*.phone.spec.ts` runs on the phone, `*.desk.spec.ts` at the desk, any other on both.
 */
export default defineConfig({
  testDir: '.',
  testMatch: '*.spec.ts',
  outputDir: '../test-results',
  fullyParallel: false,
  workers: servers.length,
  retries: 0,
  forbidOnly: Boolean(process.env.CI),
  timeout: 60_000,
  expect: { timeout: 10_000 },
  reporter: [['list'], ...(report ? [['json', { outputFile: report }] as ['json', { outputFile: string }]] : [])],
  use: {
    baseURL,
    browserName: 'chromium',
    locale: 'en-GB',
    timezoneId: 'UTC',
    trace: 'off',
    video: 'off',
    screenshot: 'only-on-failure',
    launchOptions: { args: ARGUMENTS, ...(chromium ? { executablePath: chromium } : {}) },
  },
  projects: [
    {
      name: 'desk',
      testIgnore: '*.phone.spec.ts',
      use: { viewport: { width: 1280, height: 900 } },
    },
    {
      name: 'phone',
      testIgnore: '*.desk.spec.ts',
      use: { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true },
    },
  ],
  webServer: servers.map(({ port, url }) => ({
    command: 'node e2e/server.mjs',
    cwd: '..',
    env: { E2E_PORT: port },
    url: `${url}/icon.svg`,
    reuseExistingServer: false,
    timeout: 60_000,
    gracefulShutdown: { signal: 'SIGTERM', timeout: 5000 },
    stdout: 'ignore',
    stderr: 'pipe',
  })),
});
