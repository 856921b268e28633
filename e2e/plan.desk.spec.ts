import { expect, type Locator, test } from 'playwright/test';
import { enterDemo, freshDemoOn, heading } from './ui.ts';

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

/** Needs J3: open, pick a plan, swap a batch, accept: two to four taps. Goes on from the day set above. */
test('a plan is gone by in two taps, with a batch swapped in four; and a recipe that is not in it is asked after', async ({
  page,
}) => {
  test.setTimeout(90_000);
  await enterDemo(page);
  let taps = 0;
  const tap = async (what: Locator) => {
    await what.click();
    taps += 1;
  };
  await tap(page.getByRole('link', { name: 'Plan the next days' }));
  await expect(heading(page)).toHaveText(/keeps [\d.]+ of [\d.]+ kg/);
  const batch = page
    .getByRole('listitem')
    .filter({ has: page.getByText('Swap it') })
    .first();
  const former = (await batch.locator('b').first().textContent()) ?? '';
  await tap(batch.getByText('Swap it'));
  const other = batch
    .getByRole('list', { name: /^In place of/ })
    .getByRole('link')
    .first();
  const wanted = (await other.textContent()) ?? '';
  await tap(other);
  await expect(page.getByText(new RegExp(`Kept:.*${wanted}`))).toBeVisible();
  await expect(page.getByText(new RegExp(`No ${former}, `))).toBeVisible();
  await tap(page.getByRole('button', { name: 'Go by this plan' }).first());
  await expect(page.getByText('This is the plan to go by now.')).toBeVisible();
  expect(taps).toBeLessThanOrEqual(4);

  await page.goto('/');
  taps = 0;
  await tap(page.getByRole('link', { name: 'Plan the next days' }));
  await tap(page.getByRole('button', { name: 'Go by this plan' }).first());
  await expect(page.getByText('This is the plan to go by now.')).toBeVisible();
  expect(taps).toBe(2);

  await page.goto('/plan');
  await page.getByLabel('Recipe', { exact: true }).selectOption({ index: 3 });
  await page.getByRole('button', { name: 'What stops it?' }).click();
  await expect(page.getByText(/What stops it|Planned again with it/).first()).toBeVisible();
  await expect(page.getByText('Being worked out')).toHaveCount(0, { timeout: 30_000 });
  await expect(page.getByText(/worth|takes|process|No /).first()).toBeVisible();
});
