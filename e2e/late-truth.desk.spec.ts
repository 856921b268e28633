import { expect, test } from 'playwright/test';
import { enterDemo, freshDemoOn, heading, said } from './ui.ts';

/** What was wrong, or was logged late, is put right in the open: nothing is deleted, and what hangs on it is said (J22, D8). */
test.describe('late truth', () => {
  test.beforeAll(async ({ browser }) => {
    test.setTimeout(120_000);
    const page = await browser.newPage();
    await freshDemoOn(page, '2025-09-12');
    await page.close();
  });
  test.beforeEach(async ({ page }) => enterDemo(page));

  test('jars given by mistake come back in three taps from a jar’s own page', async ({ page }) => {
    await page.goto('/pantry/strawberry-jam');
    const before = (await heading(page).textContent()) ?? '';
    await page.getByLabel('How many?').fill('2');
    await page.getByLabel(/To whom/).fill('a neighbour');
    await page.getByRole('button', { name: 'Given', exact: true }).click();
    const jar = /\d{5}-STR-\w+\/\d+/.exec((await said(page).first().textContent()) ?? '')?.[0] ?? '';
    await page.goto(`/jar/${jar}`);
    await page.getByRole('link', { name: 'Put an entry right' }).click();
    await page.getByRole('link', { name: /^Put right: Given: 2 jars strawberry jam/ }).click();
    await expect(page.getByText(/becomes \d+ jars\./)).toBeVisible();
    await page.getByRole('button', { name: 'It did not happen' }).click();
    await expect(said(page).first()).toContainText('Taken back.');
    await expect(page.getByText('taken back: it did not happen')).toBeVisible();
    await page.goto('/pantry/strawberry-jam');
    await expect(heading(page)).toHaveText(before);
  });

  test('an old harvest weighed again says which batch exceeds its fruit, before and after', async ({ page }) => {
    await page.goto('/trace/H-25200-D1-SCH-1/P');
    await page.getByRole('link', { name: /^Put right: Picked: 1\.96 kg sour cherry/ }).click();
    await expect(page.getByText('It cannot be taken back.')).toBeVisible();
    await page.getByLabel('perfect').fill('0.482');
    await page.getByRole('button', { name: 'Show what changes' }).click();
    const line = 'Batch 25207-SCH-A now exceeds its fruit by 0.40 kg; nothing was deleted.';
    await expect(page.getByText(line)).toBeVisible();
    await page.getByRole('button', { name: 'Weighed again' }).click();
    await expect(said(page).first()).toContainText(line);
    await page.goto('/trace/H-25200-D1-SCH-1/P');
    await expect(page.locator('main')).toContainText('0.88 kg became 0.48 kg, 0.40 kg more was used than that');
    await page.goto('/batches/25207-SCH-A');
    await expect(page.locator('main')).toContainText('this batch exceeds its fruit by 0.40 kg');
    await page.getByRole('link', { name: 'Put an entry right' }).click();
    await page.getByRole('link', { name: /^Put right: Filled/ }).click();
    await expect(page.locator('main')).toContainText(
      '7 jars were filled and carry their numbers: they are not unmade.',
    );
  });
});
