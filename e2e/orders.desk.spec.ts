import { readFileSync } from 'node:fs';
import { expect, type Page, test } from 'playwright/test';
import { freshDemoOn, heading } from './ui.ts';

const figureRow = (page: Page, label: RegExp) =>
  page.locator('details').filter({ has: page.locator('summary', { hasText: label }) });

/** Apple sauce and canned juice in January: what is left at harvest, how many to make, what to open first. */
test('too much: sauce and juice run down, the next making is smaller, the oldest go first', async ({ page }) => {
  test.setTimeout(120_000);
  await freshDemoOn(page, '2026-01-15');
  await page.goto('/season');
  await page.getByRole('link', { name: 'What to make and open' }).click();
  await expect(heading(page)).toHaveText(/\d+ lines? will run short, \d+ on course, \d+ too much/);
  await page.getByLabel('Left on another day').fill('2026-09-05');
  await page.getByRole('button', { name: 'Show' }).click();
  const sauce = page.getByRole('region', { name: 'Apple sauce' });
  const left = figureRow(page, /39 on hand, 25 a year\. On 5 September 2026/);
  await expect(left.locator('summary')).toContainText('23 left');
  await left.locator('summary').click();
  await expect(left).toContainText('39 - 25 × 33.3 ÷ 52 = 23: about 16 used by then');
  await expect(left).toContainText(/8 seasons in 10 leave \d+ to \d+/);
  await expect(sauce).toContainText('about half of last year’s 54');
  await expect(page.getByRole('region', { name: /^Too much/ })).toContainText('Apple sauce');

  await page.goto('/season/lists');
  const juice = page.getByRole('region', { name: 'Apple juice, canned' });
  await expect(juice).toContainText('66 on hand, 32 a year. On 18 October 2026');
  await expect(juice).toContainText('42 left');
  await expect(juice).toContainText('none this time (last year 84)');
  await expect(juice).toContainText(/Up to \d+ jars could be given away/);
  const first = page.getByRole('region', { name: 'Open first' }).getByRole('row');
  await expect(first.filter({ hasText: 'Apple juice, canned' }).first()).toContainText('Oct 2026');
  await expect(first.filter({ hasText: 'Apple slices in syrup' }).first()).toContainText('past');
  await expect(page.getByRole('region', { name: 'Make from the freezer' })).toContainText('Raspberry jam');
});

/** Jars and lids before the season: every number of the order, its reasons, the file and the printed list. */
test('ordering: 530 fills, 500 before 1 November, come to 15 dozen jars and 34 boxes of lids', async ({ page }) => {
  test.setTimeout(120_000);
  await freshDemoOn(page, '2026-01-15');
  await page.goto('/season/orders');
  await expect(heading(page)).toHaveText(/Order \d+ jars and \d+ lids/);
  const half = page.getByRole('group', { name: /half-pint/ });
  await page.getByLabel('To be there by').fill('2026-11-01');
  for (const kind of [/quarter-pint/, /^pint/, /^quart:/])
    for (const field of ['Fills in the year', 'Of them before the date'])
      await page.getByRole('group', { name: kind }).getByLabel(field).fill('0');
  await half.getByLabel('Fills in the year').fill('530');
  await half.getByLabel('Of them before the date').fill('500');
  await half.getByLabel('Expected back by then').fill('176');
  await page.getByRole('button', { name: 'Reckon the order' }).click();

  const jars = figureRow(page, /Jars, half-pint/);
  await expect(jars.locator('summary')).toContainText('174 → 15 dozen');
  await jars.locator('summary').click();
  await expect(jars).toContainText('500 - 214 - 176 = 110 short; + 11 breakage + 53 reserve = 174');
  await expect(jars).toContainText('2 % of 530 fills');
  await expect(jars).toContainText('10 % of 530 fills');
  const lids = figureRow(page, /Lids, regular/);
  await expect(lids.locator('summary')).toContainText('398 → 34 boxes of 12');
  await lids.locator('summary').click();
  await expect(lids).toContainText('530 × 1.03 = 546; - 148 = 398');
  await expect(lids).toContainText(/Not counted\s*22\s*over five years old/);
  await expect(heading(page)).toHaveText('Order 174 jars and 398 lids');
  for (const row of await page.getByRole('region', { name: 'The order' }).locator('details').all())
    await expect(row).toContainText('Source:');

  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('link', { name: 'The order as a CSV file' }).click(),
  ]);
  const csv = readFileSync((await file.path()) as string, 'utf8');
  expect(csv).toContain('"Jars, half-pint",174,jar,15,dozen,2026-11-01');
  expect(csv).toContain('"Lids, regular",398,lid,34,box of 12');

  await page.emulateMedia({ media: 'print' });
  await expect(page.getByText('174 → 15 dozen')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Reckon the order' })).toBeHidden();
  await page.emulateMedia({ media: 'screen' });

  await half.getByLabel('Fills in the year').fill('many');
  await page.getByRole('button', { name: 'Reckon the order' }).click();
  await expect(page.getByText('“many” is not a whole number from 0 to 20000')).toBeVisible();
});
