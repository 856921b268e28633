import { expect, type Page, test } from 'playwright/test';
import { type Effort, openShed, tap, type } from './app.ts';
import { freshDemoOn, heading, moveDay, said } from './ui.ts';

/** A crate of 1.40 kg on the scale. */
async function weighIn(page: Page, row: RegExp, gross: string, ground: boolean): Promise<void> {
  const effort: Effort = { taps: 0, keys: 0 };
  await openShed(page);
  await tap(page, effort, row);
  await page.getByRole('button', { name: /^Crate/ }).click();
  await type(page, effort, gross);
  if (ground) await page.getByLabel(/Picked up from the ground/).check();
  await tap(page, effort, /^Record/);
  // The pad is empty again once the act is kept.
  await expect(page.getByRole('button', { name: 'Record', exact: true })).toBeVisible();
  await expect(page.getByText(/^All sent, last sent/)).toBeVisible();
}

/**
 * Story A4, pressing: 108 kg of cider apples give 67 kg of juice, 63.5 L at 14 °Bx (1.055 kg/L), 67 quarts, 59 to 72 for 55 to 67 % of
 * the weight (growers' reports), about 39 kg of pomace; a crate that was picked up is refused.
 */
test('a pressing expects its quarts, refuses the crate from the ground, and keeps the pomace', async ({ page }) => {
  test.setTimeout(120_000);
  await freshDemoOn(page, '2025-10-18');
  await weighIn(page, /Apple \(cider\)/, '109.4', false);
  await weighIn(page, /Apple \(cider\)/, '13.4', true);

  await page.goto('/set-asides/press');
  await expect(page.getByText(/picked up from the ground: not for juice, peel or pomace/).first()).toContainText(
    'Hens or compost',
  );
  const fruit = page.getByLabel('Fruit', { exact: true });
  await expect(fruit.locator('option', { hasText: '108.00 kg' })).toHaveCount(1);
  await expect(fruit.locator('option', { hasText: '12.00 kg' })).toHaveCount(0);
  await fruit.selectOption({ label: (await fruit.locator('option', { hasText: '108.00 kg' }).textContent()) ?? '' });
  await page.getByLabel('Weighed into the cheeses').fill('108');
  await page.getByRole('button', { name: 'What will it give?' }).click();
  await expect(heading(page)).toHaveText('67 quarts to expect');
  const main = page.locator('main');
  await expect(main).toContainText('Juice 67 kg, about 63.5 L at 14 °Bx: 67 quarts (59 to 72');
  await expect(main).toContainText('Pomace about 39 kg');
  await expect(main).toContainText('Heat the juice to 71 °C');
  await expect(main).toContainText('10 minutes here, 10 loads');
  await expect(main).toContainText('Not for sale until the juice rule of your place is answered on the rule card');
  await page.getByLabel('Juice', { exact: true }).fill('67');
  await page.getByLabel('Pomace', { exact: true }).fill('39');
  await page.getByRole('button', { name: 'Pressed' }).click();
  await expect(said(page).first()).toContainText('67.00 kg of juice');
  await expect(page.getByRole('row', { name: /Apple pomace/ })).toContainText('39.00 kg');
});

/** Story B5: 7.00 kg of peeled rings, 86.67 to 20 % water (USDA SR26), are dry at 1.17 kg; taken out at 1.52 kg. */
test('rings taken out early go on drying, drops send them back, and their date begins when conditioning ends', async ({
  page,
}) => {
  test.setTimeout(180_000);
  await freshDemoOn(page, '2025-10-05');
  await weighIn(page, /Apple \(dessert\)/, '11.4', false);
  await page.goto('/set-asides/dry');
  const apples = page.locator('form').filter({ hasText: 'Rings or slices' }).getByLabel('Fruit', { exact: true });
  await apples.selectOption({ label: (await apples.locator('option', { hasText: '10.00 kg' }).textContent()) ?? '' });
  await page.getByLabel('Fruit, as weighed').fill('9.1');
  await page.getByLabel('Rings or slices').fill('7');
  await page.getByRole('button', { name: 'Cut' }).click();
  await expect(said(page).first()).toContainText('7.00 kg of rings');
  await page
    .getByRole('row', { name: /Peeled apple rings/ })
    .getByRole('link')
    .click();
  await page.getByRole('button', { name: 'Lay it to dry' }).click();
  await expect(said(page).first()).toContainText('7.00 kg is on');
  const path = new URL(page.url()).pathname;
  const weigh = async (kg: string) => {
    await page.goto(path);
    await page.getByLabel('All of it weighs').fill(kg);
    await page.getByLabel('Take it off the trays').check();
    await page.getByRole('button', { name: 'Note it' }).click();
  };

  await moveDay(page, '2025-10-05', '18:00');
  await weigh('1.52');
  await expect(said(page).first()).toContainText('0.35 kg of water still to go: target 1.17 kg');
  await expect(said(page).first()).toContainText('conditioning does not start');
  await expect(page.getByRole('img', { name: /dry at 1\.17 kg/ })).toBeVisible();

  await moveDay(page, '2025-10-06');
  await weigh('1.17');
  await expect(said(page).first()).toContainText('1.17 kg is in its jar');
  await moveDay(page, '2025-10-09');
  await page.goto(path);
  await expect(page.getByRole('heading', { name: 'Conditioning, day 3 of 7' })).toBeVisible();
  await page.getByLabel('Drops on the glass').check();
  await page.getByRole('button', { name: 'Shaken today' }).click();
  await expect(said(page).first()).toContainText('back on the trays');
  await weigh('1.15');
  await moveDay(page, '2025-10-16');
  await page.goto(path);
  await page.getByRole('button', { name: 'No drops: to the cupboard' }).click();
  await expect(heading(page)).toHaveText(/Dried apple rings: 1\.15 kg, dry/);
  await page.goto('/set-asides');
  await expect(page.getByRole('row', { name: /Dried apple rings/ })).toContainText('2026');
});
