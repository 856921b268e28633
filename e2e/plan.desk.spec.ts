import { expect, test } from 'playwright/test';
import { freshDemoOn, heading } from './ui.ts';

/** The collision weeks, 1 to 14 September 2025: a plan at once, better ones as they come, the gap said, the time limit extended. */
test('the plan for the collision weeks is there at once and gets better', async ({ page }) => {
  test.setTimeout(180_000);
  await freshDemoOn(page, '2025-09-01');
  const began = Date.now();
  await page.goto('/plan');
  await expect(heading(page)).toHaveText(/keeps [\d.]+ of [\d.]+ kg/);
  await expect(page.getByText('A careful person’s rule').first()).toBeVisible();
  expect(Date.now() - began).toBeLessThan(8000);

  await expect(page.getByText(/better ones? found|Proven: no plan keeps more/).first()).toBeVisible({
    timeout: 40_000,
  });
  await expect(page.getByText(/within [\d.]+ % of the proven bound/i).first()).toBeVisible({ timeout: 40_000 });
  const more = page.getByRole('button', { name: /20 s more/ });
  await expect(more).toBeVisible({ timeout: 60_000 });
  await page.reload();
  await expect(page.getByRole('heading', { name: /best plan found/i }).first()).toBeVisible();
  await expect(page.getByText(/What stops more/).first()).toBeVisible();

  await page.getByText('The plain plan, to compare').click();
  const worth = async (title: RegExp): Promise<number> => {
    const card = page.locator('article').filter({ has: page.getByRole('heading', { name: title }) });
    return Number(/Worth ([\d.]+)/.exec((await card.first().textContent()) ?? '')?.[1]);
  };
  const [best, careful] = [await worth(/best plan found/i), await worth(/careful person/)];
  expect(careful).toBeGreaterThan(0);
  expect(best).toBeGreaterThan(careful);
  await expect(page.locator('body')).not.toContainText(/\boptimal\b/i);

  await page.getByRole('button', { name: /20 s more/ }).click();
  await expect(page.getByText(/of \d+ s/).first()).toBeVisible();
});
