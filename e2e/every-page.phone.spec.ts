import { AxeBuilder } from '@axe-core/playwright';
import { type Cookie, expect, test } from 'playwright/test';
import { enterDemo, freshDemoOn } from './ui.ts';

const PAGES = [
  '/',
  '/harvest',
  '/harvest/elsewhere',
  '/plan',
  '/plan/wants',
  '/plan/why?recipe=plum-jam',
  '/batches',
  '/batches/new',
  '/batches/late',
  '/set-asides',
  '/set-asides/press',
  '/set-asides/dry',
  '/set-asides/season',
  '/set-asides/blend',
  '/set-asides/S-24275-APC-1',
  '/pantry',
  '/pantry/apple-butter',
  '/pantry/fig-conserve',
  '/labels',
  '/labels?lot=25207-SCH-A&purpose=sale',
  '/print/labels?lot=25207-SCH-A',
  '/stall',
  '/jar/25207-SCH-A/05',
  '/stock-take',
  '/stock-take?shelf=B1-S2&torch=on',
  '/recall',
  '/recall?code=R-25180-SUG-1',
  '/suspect',
  '/suspect/25193-RAS-A/04',
  '/print/calls?code=25193-RAS-A',
  '/outage',
  '/print/recall?code=R-25180-SUG-1',
  '/print/count',
  '/print/wall',
  '/print/batch?code=25207-SCH-A',
  '/trace/25207-SCH-A',
  '/questions',
  '/put-right/wrenlatch%3Aseason%3Apick-cherry-sour-2025-07-19?perfect=0.5&soft=0.1',
  '/trace/season',
  '/season',
  '/season/lists',
  '/season/orders',
  '/season/shelf',
  '/season/flow',
  '/season/what-if',
  '/season/checks',
  '/season/weather',
  '/trace',
  '/trace?code=damson',
  '/place',
  '/place/pan/pan-10?kitchen=home',
  '/place/row/C1-06',
  '/place/house/habits',
  '/place/house/prices',
  '/trust',
  '/recipes',
  '/recipes/damson-jam',
  '/recipes/damson-jam?by=jars&amount=12&pectin=pectin-powder&pectinG=20',
  '/recipes/own',
  '/recipes/own?from=damson-jam',
];

const DESK_WIDTH = 1280;

/** Every page: an answer sentence; on the phone and as wide as at the desk no sideways scroll and nothing axe objects to. */
test.describe('every page of the demonstration', () => {
  // Nothing is written here: each worker takes its half.
  test.describe.configure({ mode: 'parallel' });
  /** Of a browser that has the demonstration open. */
  let entered: Cookie[] = [];
  test.beforeAll(async ({ browser }) => {
    test.setTimeout(120_000);
    const page = await browser.newPage();
    await freshDemoOn(page, '2025-09-12');
    entered = await page.context().cookies();
    await page.close();
  });

  for (const path of PAGES) {
    test(`${path} answers its question and can be used by everyone`, async ({ page, context }) => {
      const faults: string[] = [];
      page.on('pageerror', (error) => faults.push(String(error)));
      page.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
      await context.addCookies(entered);
      await page.goto(path);
      await expect(page.locator('h1')).toHaveText(/\S/);
      for (const width of [page.viewportSize()?.width ?? 390, DESK_WIDTH]) {
        await page.setViewportSize({ width, height: 844 });
        await expect.poll(() => page.evaluate(() => window.innerWidth)).toBe(width);
        // As tall as the page, so that the bar that stays at the bottom covers nothing while the page is looked at.
        const height = await page.evaluate(() => document.documentElement.scrollHeight);
        await page.setViewportSize({ width, height: Math.min(8000, height + 80) });
        const wider = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
        expect(wider, `${width} px`).toBeLessThanOrEqual(0);
        const scan = await new AxeBuilder({ page })
          .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
          // No page has a frame of another origin; without this every scan opens a second page.
          .setLegacyMode(true)
          .analyze();
        const found = scan.violations.map((v) => `${v.id}: ${v.nodes.map((n) => n.target.join(' ')).join(' | ')}`);
        expect(found, `${width} px`).toEqual([]);
      }
      expect(faults).toEqual([]);
    });
  }

  test('a page that does not exist says so and leads back', async ({ page }) => {
    await enterDemo(page);
    const answer = await page.goto('/trace/NO-SUCH-LOT');
    expect(answer?.status()).toBe(404);
    await expect(page.locator('h1')).toHaveText(/There is no such page, jar or batch here/);
  });
});

test('an empty place of one’s own says on every page what to do first', async ({ page }) => {
  await page.goto('/welcome');
  await page.getByLabel(/What is it called/).fill('Tester’s garden');
  await page.getByLabel(/How high/).fill('1345');
  await page.getByLabel(/^In/).selectOption('ft');
  await page.getByRole('button', { name: 'Start empty' }).click();
  await expect(page.getByText('No fruit is waiting').first()).toBeVisible();
  for (const path of [
    '/harvest',
    '/plan',
    '/batches',
    '/set-asides',
    '/pantry',
    '/season',
    '/labels',
    '/stall',
    '/stock-take',
    '/recall',
    '/trace/season',
    '/print/wall',
    '/print/count',
    '/place',
  ]) {
    const answer = await page.goto(path);
    expect(answer?.status(), path).toBe(200);
    await expect(page.locator('h1')).toHaveText(/\S/);
    await expect(page.locator('body')).not.toContainText('Wrenlatch');
  }
  await expect(page.locator('main')).toContainText('410 m above the sea');
});
