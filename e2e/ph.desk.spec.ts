import { expect, test } from 'playwright/test';
import { draft, type Effort, openShed, tap, type } from './app.ts';
import { freshDemoOn, heading, moveDay, said } from './ui.ts';

const CODE = '25256-PER-A';

/**
 * Story D10, the pH meter: pear-ginger reads 4.71 with the buffers at 4.02 and 6.72, which is void; calibrated and read
 * again it is 4.22, which counts. A second jar at 4.71 with good buffers puts the batch on hold. What the batch taught is
 * then shown and forgotten.
 */
test('a pH reading counts only with good buffers, and decides about the shelf', async ({ page }) => {
  test.setTimeout(120_000);
  await freshDemoOn(page, '2025-09-12', '18:00');

  await test.step('pear-ginger is cooked from pears weighed in, and weighed at the boil', async () => {
    await openShed(page);
    const effort: Effort = { taps: 0, keys: 0 };
    await tap(page, effort, /^Pear \(mid\)/);
    await type(page, effort, '2.12');
    await tap(page, effort, /^perfect/);
    await type(page, effort, '1.5');
    await tap(page, effort, /^Record 1\.50 kg/);
    await expect(page.getByText(/^All sent, last sent/)).toBeVisible();
    await moveDay(page, '2025-09-13', '18:00');
    await draft(page, /Pear-ginger conserve/, 'H-25255-C2-PER-1', { perfect: '1.3' });
    await page.getByRole('button', { name: 'Work it out again' }).click();
    await page.getByRole('button', { name: /^Start / }).click();
    await expect(said(page).first()).toContainText(CODE);
  });

  await test.step('filled, its jars wait for a reading', async () => {
    await page.getByLabel('Stuck to pan and tools').fill('60');
    await page.getByLabel('Skimmed off').fill('20');
    await page.getByRole('textbox', { name: /Full .* jars/ }).fill('2');
    await page.getByLabel(/Partial jar/).fill('50');
    await page.getByRole('button', { name: 'Filled' }).click();
    await expect(page.getByText(/On hold until a calibrated meter has read it/)).toBeVisible();
  });

  const read = async (r: { low: string; high: string; pH: string }) => {
    await page.getByLabel(/^Buffer 4.01 reads/).fill(r.low);
    await page.getByLabel(/^Upper buffer reads/).fill(r.high);
    await page.getByLabel(/^The product reads/).fill(r.pH);
    await page.getByRole('button', { name: 'Log the pH' }).click();
  };

  await test.step('buffers that are off make the reading void', async () => {
    await read({ low: '4.02', high: '6.72', pH: '4.71' });
    await expect(page.getByRole('alert').filter({ hasText: 'Not taken' })).toContainText('calibrate it and read again');
    await expect(page.getByText(/On hold until a calibrated meter has read it/)).toBeVisible();
  });

  await test.step('4.22 with good buffers is recorded and ends the hold', async () => {
    await read({ low: '4.02', high: '6.98', pH: '4.22' });
    await expect(said(page).first()).toContainText('the hold for a pH reading ends');
    await expect(page.getByText(/On hold until/)).toHaveCount(0);
    await expect(page.getByRole('table', { name: 'pH log' })).toContainText('4.22');
  });

  await test.step('another jar at 4.71 puts it on hold, not for shelf', async () => {
    await page.getByText('Log a pH reading').click();
    await read({ low: '4.02', high: '6.98', pH: '4.71' });
    await expect(said(page).first()).toContainText('on hold, not for shelf');
    await expect(page.locator('main')).toContainText('not for shelf: pH 4.71 is above 4.6');
  });

  await test.step('its jars leave for the fridge, never for the canner', async () => {
    await expect(page.getByRole('button', { name: /^Process again/ })).toHaveCount(0);
    await page.getByRole('button', { name: /^Fridge, use by/ }).click();
    await expect(said(page).first()).toContainText(`${CODE}/01, ${CODE}/02 to the fridge, use by Fri 19 Sep`);
  });

  await test.step('what the batch taught is shown with its batch, and forgotten on request', async () => {
    await page.goto('/trust');
    await expect(heading(page)).toHaveText('How far to trust the numbers');
    const losses = page.locator('section').filter({ has: page.getByRole('heading', { name: /Stuck and skimmed/ }) });
    await expect(losses.last()).toContainText('from 1 batch');
    await expect(losses.last()).toContainText(CODE);
    await page.getByRole('button', { name: 'Forget what was learnt' }).click();
    await expect(said(page).first()).toContainText('Forgotten');
    await expect(losses.last()).toContainText('before any batch of yours');
  });
});

test('the page on trust never speaks of what it cannot know', async ({ page }) => {
  await freshDemoOn(page, '2025-09-12');
  await page.goto('/trust');
  for (const section of ['What the program will not say', 'Learnt from your own batches', 'Against what is printed'])
    await expect(page.getByRole('heading', { name: section })).toBeVisible();
  await expect(page.getByRole('table', { name: 'Accuracy' })).toContainText('water activity');
  await expect(page.locator('main')).not.toContainText(/\b(safe|probably|likely)\b/i);
});
