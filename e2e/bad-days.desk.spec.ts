import { expect, test } from 'playwright/test';
import { type Effort, tap } from './app.ts';
import { wordsOf } from './printed.ts';
import { enterDemo, freshDemoOn, heading, said } from './ui.ts';

/** The bad days: a jar that looks wrong in December, a freezer that stood still since the night. */
test.describe('the bad days', () => {
  test.beforeAll(async ({ browser }) => {
    test.setTimeout(120_000);
    const page = await browser.newPage();
    await freshDemoOn(page, '2025-12-12');
    await page.close();
  });
  test.beforeEach(async ({ page }) => enterDemo(page));

  test('a mouldy jar goes whole, its five sisters are listed, a second one holds the batch (story B3)', async ({
    page,
  }) => {
    await page.goto('/jar/25193-RAS-A/04');
    await page.getByRole('link', { name: 'It looks wrong' }).click();
    const first: Effort = { taps: 1, keys: 0 };
    for (const sign of ['Lid flat', 'Streaks from the rim', 'Moving bubbles', 'Odour on opening'])
      await expect(page.getByRole('button', { name: sign })).toBeVisible();
    await tap(page, first, 'Mould');
    expect(first.taps).toBeLessThanOrEqual(2);
    await expect(heading(page)).toHaveText('Throw 25193-RAS-A/04 away, the whole jar');
    await expect(page.getByRole('note')).toContainText('Do not scrape the mould off, and do not taste');
    await expect(page.getByText('5 others: 4 sold, 1 eaten.')).toBeVisible();
    await expect(page.locator('tbody tr')).toHaveCount(5);
    await expect(page.locator('tbody tr').first()).toContainText('25193-RAS-A/01');
    await expect(page.locator('tbody tr').first()).toContainText('sold, the stall, Sat 16 Aug 2025');
    await expect(page.getByRole('heading', { name: 'The batch is on hold' })).toHaveCount(0);

    await page.goto('/suspect?code=25209-ras-a');
    await expect(heading(page)).toHaveText('Which jar of 25209-RAS-A looks wrong?');
    for (const told of ['thrown away.', 'That is 2 jars of the batch: all of it is on hold']) {
      await page
        .locator('tbody tr')
        .filter({ hasText: 'on B2-S2' })
        .first()
        .getByRole('link', { name: /looks wrong/ })
        .click();
      await tap(page, first, 'Lid flat');
      await expect(said(page).first()).toContainText(told);
    }
    await page.goto('/jar/25209-RAS-A');
    await expect(page.getByText('Not for sale: on hold: 2 or more jars of this batch spoiled')).toBeVisible();
    await page.goto('/suspect/25209-RAS-A');
    await page.getByRole('link', { name: 'Call list' }).click();
    await expect(heading(page)).toHaveText(/^Call list, 25209-RAS-A: \d+ jars? with other people$/);
    const { pages, words } = await wordsOf(await page.pdf({ format: 'A4' }));
    expect(pages).toBe(1);
    const sheet = words.map((w) => w.text).join(' ');
    expect(sheet).toContain('given');
    expect(sheet).toContain('on B2-S2');
    expect(sheet).toContain('Do not open it, do not taste it');
  });
});
