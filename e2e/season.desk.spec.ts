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
  await expect(page.getByRole('link', { name: 'What to order' })).toBeVisible();
  await page.getByText('The same as a table').first().click();
  await expect(page.locator('table').first()).toBeVisible();
  await expect(page.locator('main')).not.toContainText(/\blikely\b|\bprobably\b|\bsafe\b/i);
});

/** September: what a person sees hanging is counted into the forecast of that crop. */
test('an estimate by eye is taken, said back, and named among the reasons', async ({ page }) => {
  test.setTimeout(180_000);
  await freshDemoOn(page, '2025-09-12');
  await page.goto('/season');
  await expect(page.getByText(/4,000 possible seasons/)).toBeVisible({ timeout: 90_000 });
  const damson = page.locator('form').filter({ hasText: 'About how much hangs there now? Damson' });
  await damson.getByRole('textbox').fill('about forty');
  await damson.getByRole('button', { name: 'Count it in' }).click();
  await expect(page.getByText(/what you see hanging, in kg/)).toBeVisible();
  await damson.getByRole('textbox').fill('40');
  await damson.getByRole('button', { name: 'Count it in' }).click();
  await expect(page.getByText('Damson: about 40 kg seen hanging.')).toBeVisible();
  await expect(page.getByText(/4,000 possible seasons/)).toBeVisible({ timeout: 90_000 });
  await expect(page.getByText(/Seen hanging on 12 September 2025, about 40 kg/)).toBeAttached();
});
