import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page, test } from 'playwright/test';
import { freePort } from '../.config/free-port.mjs';
import { draft, type Effort, openShed, tap, type } from './app.ts';
import { enterDemo, heading, moveDay, said } from './ui.ts';

const project = dirname(dirname(fileURLToPath(import.meta.url)));
const port = await freePort(4917, '127.0.0.1');
const [A, B] = ['25255-DAM-A', '25255-DAM-B'] as const;

/** A server of its own on one database file, which may be killed and started again. */
class Server {
  readonly folder = mkdtempSync(join(tmpdir(), 'stillroom-stove-'));
  readonly url = `file:${join(this.folder, 'stillroom.db')}`;
  private running: ChildProcess | null = null;

  async start(): Promise<void> {
    this.running = spawn(
      process.execPath,
      [join(project, 'node_modules', 'next', 'dist', 'bin', 'next'), 'start', '-H', '127.0.0.1', '-p', String(port)],
      {
        cwd: project,
        env: { ...process.env, NODE_ENV: 'production', DATABASE_URL: this.url, NEXT_TELEMETRY_DISABLED: '1' },
        stdio: 'ignore',
      },
    );
    await expect.poll(() => this.answers(), { timeout: 30_000 }).toBe(true);
  }

  answers = (): Promise<boolean> =>
    fetch(`http://127.0.0.1:${port}/icon.svg`).then(
      (r) => r.ok,
      () => false,
    );

  /** The process is killed where it stands, and nothing answers any more. */
  async kill(): Promise<void> {
    const gone = this.running;
    this.running = null;
    if (!gone || gone.exitCode !== null) return;
    gone.kill('SIGKILL');
    await once(gone, 'exit');
    expect(await this.answers()).toBe(false);
  }
}

const server = new Server();
test.use({ viewport: { width: 1024, height: 768 }, baseURL: `http://127.0.0.1:${port}` });
test.beforeAll(async () => {
  execFileSync(process.execPath, [join('prisma', 'migrate.mjs'), 'deploy'], {
    cwd: project,
    env: { ...process.env, DATABASE_URL: server.url },
  });
  await server.start();
});
test.afterAll(async () => {
  await server.kill();
  rmSync(server.folder, { recursive: true, force: true });
});

/**
 * Job J4 and J5 at the tablet, and the kitchen's worst minute: two pans of damson jam on Friday 12 September 2025, the server
 * killed in the middle of the boil and started again on the same file.
 */
test('a boil goes on through reload, kill and restart; three taps at the pan', async ({ page }) => {
  test.setTimeout(180_000);
  await enterDemo(page);
  await test.step('two pans are lit', async () => {
    await openShed(page);
    const effort: Effort = { taps: 0, keys: 0 };
    await tap(page, effort, /Damson/);
    await type(page, effort, '3.62');
    await tap(page, effort, /^soft/);
    await type(page, effort, '3');
    await tap(page, effort, /^Record/);
    await expect(page.getByText(/^All sent, last sent/)).toBeVisible();
    await draft(page, /Damson jam/, 'H-25255-D3-DAM-1', { soft: '3' });
    await page.getByRole('button', { name: 'Work it out again' }).click();
    await page.getByRole('button', { name: 'Start 2 batches' }).click();
    await expect(said(page).first()).toContainText(B);
  });

  const taps: Effort = { taps: 0, keys: 0 };
  await test.step('the page is made for arm’s length: 28 px, knuckle-sized buttons, the next step across the bottom', async () => {
    await page.goto(`/batches/${A}/stove`);
    await expect(heading(page)).toHaveText('Bring it to a hard boil');
    const step = page.getByRole('listitem').first();
    expect(await step.evaluate((e) => Number.parseFloat(getComputedStyle(e).fontSize))).toBeGreaterThanOrEqual(28);
    await expect(page.getByText('Boiling sugar sticks and burns').first()).toBeVisible();
    const button = page.getByRole('button', { name: 'It boils' });
    const box = await button.boundingBox();
    expect(box?.height ?? 0).toBeGreaterThanOrEqual(90);
    expect(box?.width ?? 0).toBeGreaterThanOrEqual(900);
    expect(Math.abs((box?.y ?? 0) + (box?.height ?? 0) - 768)).toBeLessThan(40);
    await scan(page);
    await tap(page, taps, 'It boils');

    await expect(page.getByRole('timer', { name: 'Boiling for' })).toHaveText(/^0:\d\d$/);
    await expect(page.getByText(/The screen stays on|lets the screen go dark/)).toBeVisible();
  });

  await test.step('a set test with the thermometer is one tap; weights draw the curve and the rest of it', async () => {
    await page.getByLabel('Thermometer').fill('101.2');
    await tap(page, taps, 'Runs');
    await expect(said(page).first()).toContainText('set test: runs off the plate at 101.2 °C');
    await scan(page);
    await page.getByLabel('What is in the pan weighs').fill('2.73');
    await page.getByRole('button', { name: 'Log the weight' }).click();
    await expect(page.getByText(/^Logged: 2.73 kg, /)).toBeVisible();
  });

  const before = await boiledS(page);
  await test.step('reload, kill and restart: the timer goes on and no reading is lost', async () => {
    await page.reload();
    expect(await boiledS(page)).toBeGreaterThanOrEqual(before);
    const killed = Date.now();
    await server.kill();
    await server.start();
    await page.reload();
    const awayS = Math.floor((Date.now() - killed) / 1000);
    const after = await boiledS(page);
    expect(after).toBeGreaterThanOrEqual(before + awayS - 2);
    expect(after).toBeLessThanOrEqual(before + awayS + 30);
    await expect(page.getByText('Logged: 2.73 kg')).toContainText('101.2 °C');
    await expect(page.getByText('Logged: 2.73 kg')).toContainText('plate: runs');
    test.info().annotations.push({ type: 'server away, s', description: String(awayS) });
  });

  await test.step('all of it is in reach without a scroll, on a tablet held flat', async () => {
    for (const name of ['Runs', 'Set', 'Log the weight', 'Stop: off the heat'])
      await expect(page.getByRole('button', { name, exact: true })).toBeInViewport();
  });

  await test.step('the other pan has its own clock in the strip', async () => {
    await page.goto(`/batches/${B}/stove`);
    await page.getByRole('button', { name: 'It boils' }).click();
    await expect(page.getByRole('timer', { name: `${A}, left` })).toHaveText(/^\d+:\d\d$/);
    await page.getByRole('link', { name: new RegExp(A) }).click();
    await expect(page.getByRole('timer', { name: `${B}, left` })).toBeVisible();
  });

  await test.step('weighed again after eight minutes, the rest is said; off the heat: three taps in all', async () => {
    const [hours, minutes] = await clockOf(page);
    const later = `${String(hours + Math.floor((minutes + 8) / 60)).padStart(2, '0')}:${String((minutes + 8) % 60).padStart(2, '0')}`;
    await moveDay(page, '2025-09-12', later);
    await page.goto(`/batches/${A}/stove`);
    await page.getByLabel('What is in the pan weighs').fill('2.40');
    await page.getByRole('button', { name: 'Log the weight' }).click();
    await expect(
      page.getByText(/Stop at 2.10 kg: at \d+ g a minute, about \d+ minutes from the last weighing/),
    ).toBeVisible();
    await tap(page, taps, 'Stop: off the heat');
    await expect(heading(page)).toHaveText(/^Fill 6 half-pint jars, hot$/);
    expect(taps.taps).toBe(3);
  });

  await test.step('filled, boiling again, out: the page follows, and a kill in the canner changes no clock', async () => {
    const load: Effort = { taps: 0, keys: 0 };
    await scan(page);
    await expect(page.getByText('Hot jars on cold stone crack').first()).toBeVisible();
    await tap(page, load, 'Filled');
    await expect(heading(page)).toHaveText('Into the canner: 10 min at a full boil');
    await expect(page.getByText('Lift the lid away from you').first()).toBeVisible();
    await tap(page, load, 'Boiling again');
    await expect(page.getByRole('timer', { name: 'At a full boil' })).toHaveText(/^(10:00|9:\d\d)$/);
    await server.kill();
    await server.start();
    await page.reload();
    await expect(page.getByRole('timer', { name: 'At a full boil' })).toHaveText(/^[89]:\d\d$/);
    expect(load.taps).toBe(2);
    // Too early, a knuckle writes nothing.
    await page.getByRole('button', { name: 'Out of the canner' }).click();
    await expect(page.getByRole('alert').filter({ hasText: /of 10 minutes: leave them in/ })).toBeVisible();
    await expect(page.getByRole('timer', { name: 'At a full boil' })).toBeVisible();
  });
});

async function boiledS(page: Page): Promise<number> {
  const timer = page.getByRole('timer', { name: 'Boiling for' });
  await expect(timer).toHaveText(/^\d+:\d\d$/);
  const [m, s] = ((await timer.textContent()) ?? '').split(':').map(Number);
  return (m as number) * 60 + (s as number);
}

/** When the pan was seen last, by the log of its batch. */
async function clockOf(page: Page): Promise<[number, number]> {
  await page.goto(`/batches/${A}`);
  const time = await page.locator('li time').last().textContent();
  const [h, m] = (time ?? '').split(':').map(Number);
  return [h as number, m as number];
}

/** Nothing axe objects to; the whole page high, so that the bar at the bottom covers nothing while it is looked at. */
async function scan(page: Page): Promise<void> {
  const size = page.viewportSize() ?? { width: 1024, height: 768 };
  await page.setViewportSize({ ...size, height: 2400 });
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'])
    .analyze();
  await page.setViewportSize(size);
  expect(violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.target.join(' ')).join(' | ')}`)).toEqual([]);
}
