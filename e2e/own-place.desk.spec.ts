import { expect, test } from 'playwright/test';
import { bringIn, plantRaspberries } from './app.ts';
import { heading, said } from './ui.ts';

/** An empty place becomes one's own: a crop, a picking on the real day, supplies, and the first batch. */
test('a newcomer’s own place goes from nothing to a batch on the stove', async ({ page }) => {
  test.setTimeout(120_000);
  await page.goto('/welcome');
  await page.getByLabel(/What is it called/).fill('Tern Hollow');
  await page.getByLabel(/How high/).fill('120');
  await page.getByRole('button', { name: 'Start empty' }).click();
  await expect(heading(page)).toHaveText('No fruit is waiting');

  await page.goto('/place');
  await page.getByRole('link', { name: 'Wide pan' }).click();
  await expect(heading(page)).toHaveText('Wide pan');
  await page.getByLabel('Holds to the brim').fill('8');
  await page.getByLabel(/Filled for jam at most/).fill('95');
  await page.getByRole('button', { name: 'Keep the change' }).click();
  await expect(page.getByText('filled for jam at most is 95; it must lie between 10 and 90')).toBeVisible();
  await expect(page.getByLabel('Holds to the brim')).toHaveValue('8');
  await page.getByLabel(/Filled for jam at most/).fill('45');
  await page.getByLabel(/Boils off/).fill('40');
  await page.getByRole('button', { name: 'Keep the change' }).click();
  await expect(said(page).first()).toContainText('Wide pan is noted');
  await expect(page.getByText('boils off 40 g/min')).toBeVisible();
  await page.getByRole('link', { name: 'a freezer' }).click();
  await page.getByLabel(/What you call it/).fill('Chest in the barn');
  await page.getByLabel('Room inside').fill('200');
  await page.getByRole('button', { name: 'Add it' }).click();
  await expect(page.getByRole('link', { name: 'Chest in the barn' })).toBeVisible();

  await plantRaspberries(page, '1,5');

  for (const [item, qty, label] of [
    ['sugar', '5', 'Sugar'],
    ['lid-regular', '24', 'Lids, regular'],
    ['HP', '24', 'Empty jars, half-pint'],
  ] as const) {
    await bringIn(page, { item, qty, label });
  }
  await page.getByLabel('Something came in').selectOption('sugar');
  await page.getByLabel('How much', { exact: true }).fill('0x1F');
  await page.getByRole('button', { name: 'Bring it in' }).click();
  await expect(page.getByText('"0x1F" is not a number')).toBeVisible();
  await expect(page.getByLabel('How much', { exact: true })).toHaveValue('0x1F');

  await page.goto('/harvest');
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
  // Out of season its row stands behind a fold, which is open when nothing else is ripe.
  await page.getByRole('button', { name: /Raspberry/ }).click();
  for (const key of ['2', 'decimal point', '1', '0'])
    await page.getByRole('button', { name: key, exact: true }).click();
  await page.getByRole('button', { name: /^Record 1\.50 kg/ }).click();
  await expect(page.getByRole('status').filter({ hasText: 'Recorded 1.50 kg' })).toBeVisible();

  await page.goto('/');
  await expect(page.getByRole('link', { name: /Raspberry, row R2/ })).toBeVisible();
  await page.getByRole('link', { name: /Raspberry, row R2/ }).click();
  await page.getByRole('link', { name: /Raspberry jam/ }).click();
  await expect(heading(page)).toContainText('Raspberry jam');
  await page.getByRole('button', { name: /^Start 2 batches/ }).click();
  await expect(heading(page)).toContainText('Raspberry jam: cook it to');
});
