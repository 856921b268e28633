import { expect, test } from 'playwright/test';
import { type Effort, tap, type } from './app.ts';
import { freshDemoOn, moveDay } from './ui.ts';

/** Stories D2 and D3: what cannot be true is refused with the figures in it, and what was typed stays. */
test.describe('bad input at the scale', () => {
  test.beforeEach(async ({ page }) => {
    test.setTimeout(120_000);
    await freshDemoOn(page, '2025-09-12', '18:00');
    await page.goto('/harvest');
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  });

  test('a bucket lighter than its tare is refused and the digits stay', async ({ page }) => {
    const effort: Effort = { taps: 0, keys: 0 };
    await tap(page, effort, /Damson/);
    await type(page, effort, '0.50');
    await tap(page, effort, /^Record/);
    await expect(page.getByRole('status').filter({ hasText: 'Gross less than the bucket: 0.50 < 0.62' })).toBeVisible();
    await expect(page.locator('main')).toContainText('0.50');
    await page.goto('/trace?code=H-25255-D3-DAM');
    await expect(page.getByText('No lot bears that')).toBeVisible();
  });

  test('a look that found nothing ripe is a record of its own', async ({ page }) => {
    await page.getByText('Looked, and nothing was ripe').click();
    const look = page.locator('form').filter({ has: page.getByRole('button', { name: 'Record the look' }) });
    await look.locator('select[name="row"]').selectOption('D3|damson');
    await page.getByRole('button', { name: 'Record the look' }).click();
    await expect(page.getByText('Looked at D3, damson: nothing ripe.')).toBeVisible();
    await page.goto('/harvest');
    await expect(page.getByText('nothing ripe').last()).toBeVisible();
  });

  test('a day in the future is refused, the year that was meant is offered', async ({ page }) => {
    await moveDay(page, '2026-01-15');
    await page.goto('/harvest');
    await page.getByText('Picked on another day?').click();
    await page.getByLabel('Picked on', { exact: true }).fill('2026-09-13');
    const effort: Effort = { taps: 0, keys: 0 };
    // Nothing is ripe in January, so the fold of the rows out of season is open.
    await tap(page, effort, /Damson/);
    await type(page, effort, '5.62');
    await tap(page, effort, /^Record/);
    await expect(
      page.getByRole('status').filter({ hasText: 'that is 34 weeks ahead; did you mean 13 September 2025?' }),
    ).toBeVisible();
    await expect(page.locator('main')).toContainText('5.62');
    await page.getByLabel('Picked on', { exact: true }).fill('2026-01-16');
    // Two taps within 700 ms are one tap.
    await page.waitForTimeout(800);
    await tap(page, effort, /^Record/);
    await expect(page.getByRole('status').filter({ hasText: 'Recorded 5.00 kg' })).toBeVisible();
  });
});
