import { expect, test } from 'playwright/test';
import { freshDemoOn, heading } from './ui.ts';

/** January: what runs out, what will not fit, from the ledger and simulated seasons; the same pictures as tables. */
test('the season is worked out from the ledger and answers in a sentence', async ({ page }) => {
  test.setTimeout(120_000);
  await freshDemoOn(page, '2026-01-15');
  await page.goto('/season');
  await expect(page.getByRole('heading', { name: 'What runs out, when?' })).toBeVisible({ timeout: 60_000 });
  await expect(page.getByText(/4,000 possible seasons/)).toBeVisible({ timeout: 60_000 });
  await expect(heading(page)).toHaveText(/\S/);
  await expect(page.getByRole('heading', { name: 'Will it fit?' })).toBeVisible();
  await expect(page.getByRole('heading', { name: 'What to buy' })).toBeVisible();
  await page.getByText('The same as a table').first().click();
  await expect(page.locator('table').first()).toBeVisible();
  await expect(page.locator('main')).not.toContainText(/\blikely\b|\bprobably\b|\bsafe\b/i);
});
