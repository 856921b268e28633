import { expect, type Page, test } from 'playwright/test';
import { draft, type Effort, openShed, tap, type } from './app.ts';
import { figure, freshDemoOn, heading, moveDay, said } from './ui.ts';

const TRIM = 'S-25270-APC-1';
const JAM = '26017-SCH-A';

/**
 * Story A3: sauce day feeds a January jam. 24.5 kg are 54.0 lb, at 1.5 lb a pint 36 pints; 22 % of it is trim, 5.39 kg, at 82 to 8 % water
 * 1.05 kg dry, at 80 % 1.172. In January 1.30 kg at 14.3 °Bx, 1.04 kg of sugar, 40 g of lemon juice at 8 % and 33 g of powder at 40 % are
 * 1.242 kg of solids, over 0.65 makes 1.911 kg: six half-pints of 0.3115 kg and 42 g,
 * 39 g in jars of 237 mL, which the place has. 33 g × 5.5 (3 to 9) g carry 0.18 kg (0.10 to 0.30).
 */
test('the trim of sauce day is the powder of a January jam, and its set teaches the strength', async ({ page }) => {
  test.setTimeout(90_000);
  await freshDemoOn(page, '2025-09-25');
  await pickLiberty(page);

  await test.step('24.5 kg become 36 pints, and the trim is kept with its questions', async () => {
    await moveDay(page, '2025-09-27', '18:00');
    await draft(page, /Apple sauce/, 'H-25268-A2-APL-1', { blemished: '24.5' });
    await page.getByRole('button', { name: 'Work it out again' }).click();
    expect(await figure(page, 'Jars')).toContain('36');
    expect(await figure(page, 'Canner loads')).toContain('4');
    await page.getByRole('button', { name: 'Start the batch' }).click();
    await page.getByLabel(/Trim: stones/).fill('5390');
    await page.getByLabel('Keep the trim as a set-aside').check();
    await expect(page.getByLabel('The seeds are out of it')).not.toBeChecked();
    await expect(page.getByLabel('Ground-fall fruit or brown cores in it')).not.toBeChecked();
    await page.getByRole('button', { name: 'Filled' }).click();
    await expect(said(page).first()).toContainText(`5.39 kg of trim kept as ${TRIM}: about 1.05 kg dry`);
  });

  await test.step('it dries to 1172 g, inside the band of its fresh moisture', async () => {
    await page.goto(`/set-asides/${TRIM}`);
    await expect(page.locator('main')).toContainText('About 1.05 kg dry (937 g to 1.17 kg)');
    await page.getByLabel('The seeds are out').check();
    await page.getByRole('button', { name: 'Lay it to dry' }).click();
    await moveDay(page, '2025-09-29');
    await page.goto(`/set-asides/${TRIM}`);
    await page.getByLabel('All of it weighs').fill('1.172');
    await page.getByLabel('Take it off the trays').check();
    await page.getByRole('button', { name: 'Note it' }).click();
    await expect(said(page).first()).toContainText('inside the band of its fresh moisture');
    await moveDay(page, '2025-10-06');
    await page.goto(`/set-asides/${TRIM}`);
    await page.getByRole('button', { name: 'No drops: to the cupboard' }).click();
    await expect(heading(page)).toHaveText('Dried apple peel and core powder: 1172 g, dry');
    await expect(page.getByRole('heading', { name: 'Strength: untested' })).toBeVisible();
  });

  await test.step('the sheet warns before anything is cooked, and goes on when the cook accepts', async () => {
    await moveDay(page, '2026-01-17', '18:00');
    await page.goto('/batches/new');
    await page.locator('label').filter({ hasText: 'Frozen sour cherries' }).first().locator('input').check();
    await page.getByRole('button', { name: 'Show what it can become' }).click();
    await page.getByRole('link', { name: /Sour cherry jam with home powder/ }).click();
    await page.getByLabel(/Frozen sour cherries/).fill('1.3');
    await page.getByRole('button', { name: 'Work it out again' }).click();
    const main = page.locator('main');
    await expect(main).toContainText('that is 2.6 packs of 500 g; 0.20 kg stays in the opened one');
    for (const [label, shown] of [
      ['sugar', '1.040 kg'],
      ['water', '160 g'],
      ['bottled lemon juice', '40 g'],
      ['apple peel and core powder', '33 g'],
      ['Mix', '2.573 kg'],
      ['Pan weight', '1.911 kg'],
      ['Boil off', '662 g'],
      ['Clock', '15 min'],
      ['Jars', '6'],
      ['Partial jar', '39 g'],
    ] as const)
      expect(await figure(page, label), label).toContain(shown);
    await expect(main).toContainText(
      `33 g of untested powder ${TRIM} carries about 0.18 kg (0.10-0.30) of the sugar. There is 1.24 kg of it, and the fruit is low in pectin: expect a soft set.`,
    );
    for (const offer of ['more powder', 'frozen pectin stock', 'call it a sauce'])
      await expect(main).toContainText(offer);
    await expect(main).toContainText('For the household and gifts; not a tested recipe for sale.');
    await page.getByRole('button', { name: 'Start the batch' }).click();
    await expect(page.getByText('Not worked with').first()).toBeVisible();
    await page.getByLabel('Go on all the same?').selectOption({ label: 'yes, a soft set will do' });
    await page.getByRole('button', { name: 'Start the batch' }).click();
    await expect(page).toHaveURL(new RegExp(`/batches/${JAM}`));
    await expect(main).toContainText(`warned: 33 g of untested powder ${TRIM}`);
    await page.getByRole('button', { name: 'Filled' }).click();
    await expect(said(page).first()).toContainText('6 jars filled, 39 g to the fridge');
  });

  await test.step('it traces to the cherry trees and, through the powder, to the apple trees; 1139 g of powder are left', async () => {
    await page.goto(`/trace/${JAM}`);
    const main = page.locator('main');
    for (const found of ['D1-01', 'A2-01', TRIM]) await expect(main).toContainText(found);
    await page.goto(`/set-asides/${TRIM}`);
    await expect(heading(page)).toContainText('1139 g');
  });

  await test.step('the set reported on the 19th moves the strength', async () => {
    await moveDay(page, '2026-01-19', '19:00');
    await page.goto(`/batches/${JAM}`);
    await page.getByLabel('The jars').selectOption({ label: 'are soft' });
    await page.getByRole('button', { name: 'Note the set' }).click();
    await expect(said(page).first()).toContainText('set of the jars: soft');
    await page.goto(`/set-asides/${TRIM}`);
    await expect(page.getByRole('heading', { name: 'Strength: learnt' })).toBeVisible();
    await expect(page.locator('main').getByRole('link', { name: JAM })).toBeVisible();
  });
});

/** 24.5 kg of blemished apples from row A2, in a crate of 1.40 kg. */
async function pickLiberty(page: Page): Promise<void> {
  const effort: Effort = { taps: 0, keys: 0 };
  await openShed(page);
  await tap(page, effort, /Apple \(dessert\)/);
  await page.getByRole('button', { name: /^Crate/ }).click();
  await type(page, effort, '25.9');
  await tap(page, effort, /^blemished/);
  await type(page, effort, '24.5');
  await tap(page, effort, /^Record/);
  await expect(page.getByText(/^All sent, last sent/)).toBeVisible();
}
