import { expect, type Page, test } from 'playwright/test';
import { freshDemoOn, heading } from './ui.ts';

/** Fruit comes in from a friend and the chooser is opened on it. */
async function fromAFriend(page: Page, fruit: string, kg: string): Promise<string> {
  await page.goto('/harvest');
  await page.getByRole('link', { name: 'Fruit from elsewhere' }).click();
  await expect(heading(page)).toHaveText('Fruit from elsewhere');
  await page.getByLabel('Fruit', { exact: true }).selectOption({ label: fruit });
  await page.getByLabel('From whom').fill('a friend');
  await page.getByLabel('Weight').fill(kg);
  await page.getByLabel(/Lot on the box/).fill('117');
  await page.getByRole('button', { name: 'Bring it in' }).click();
  await expect(heading(page)).toHaveText(/^R-.* came in$/);
  const code = ((await heading(page).textContent()) ?? '').replace(' came in', '');
  await page.getByRole('link', { name: 'What can it become?' }).click();
  await expect(heading(page)).toHaveText('What shall be made?');
  await expect(page.getByRole('checkbox', { checked: true })).toHaveCount(1);
  return code;
}
const offers = (page: Page) => page.locator('a[href*="/batches/new?recipe="]');
/** How a way to the shelf is offered. */
const SHELF = /shelf, \d+ min/;
/** Words that are never said on a page about keeping. */
const neverSaid = async (page: Page): Promise<void> => {
  expect(await page.locator('body').textContent()).not.toMatch(/\b(safe|safely|probably|likely)\b/i);
};

test.describe('recipes and what they may not do', () => {
  test.beforeEach(async ({ page }) => {
    test.setTimeout(120_000);
    await freshDemoOn(page, '2025-09-12');
  });

  /** Story D6, low acid. Passes: needs.md, section 7; rules: NCHFP Asian pear page, R17 of the stop list. */
  test('low-acid fruit from elsewhere has the tested method or the freezer, and nothing between', async ({ page }) => {
    await test.step('Asian pears in syrup: the tested acidified method in pints, or the freezer', async () => {
      await fromAFriend(page, 'Pear, Asian', '6');
      const ways = await offers(page).allInnerTexts();
      expect(ways.length).toBeGreaterThan(1);
      for (const way of ways.filter((w) => SHELF.test(w))) expect(way).toContain('published');
      expect(ways.filter((w) => SHELF.test(w)).length).toBe(1);
      expect(ways.some((w) => w.includes('freezer'))).toBe(true);
      await neverSaid(page);
      await offers(page).filter({ hasText: SHELF }).click();
      await page.getByLabel('Jars', { exact: true }).selectOption({ label: 'pint' });
      await page.getByRole('button', { name: 'Work it out again' }).click();
      await expect(page.locator('main')).toContainText('lemon juice');
      await neverSaid(page);
    });

    await test.step('elderberries: no shelf in any recipe, the freezer instead', async () => {
      await fromAFriend(page, 'Elderberry, Sambucus nigra', '2');
      const ways = await offers(page).allInnerTexts();
      expect(ways.length).toBeGreaterThan(0);
      for (const way of ways) expect(way).not.toMatch(SHELF);
      expect(ways.some((w) => w.includes('freezer'))).toBe(true);
      await neverSaid(page);
    });

    await test.step('white peaches of a friend: no shelf at all, the freezer, and the trace names the friend', async () => {
      const code = await fromAFriend(page, 'Peach / nectarine, white or low-acid', '3.2');
      const ways = await offers(page).allInnerTexts();
      expect(ways.length).toBeGreaterThan(0);
      for (const way of ways) {
        expect(way).not.toMatch(SHELF);
        expect(way).toContain('freezer');
      }
      await neverSaid(page);
      await page.goto(`/trace/${code}`);
      await expect(page.locator('main')).toContainText('came in 2025-09-12 from a friend, box lot 117');
      await neverSaid(page);
    });
  });

  /** Story D7: jam to the pint, sauce to the quart (USDA Complete Guide, AIB 539); a size between takes the larger one's time. */
  test('a quart of jam and a half-gallon of sauce have no tested time, and the next size down is offered', async ({
    page,
  }) => {
    const minutes = (jar: string) =>
      page.getByRole('listitem').filter({ has: page.locator('b', { hasText: new RegExp(`^${jar}$`) }) });
    await page.goto('/recipes/damson-jam');
    await expect(minutes('quart').first()).toContainText('refused');
    await expect(minutes('quart').first()).toContainText(/Take the pint: 10 min here/);
    const pint = (await minutes('pint').first().textContent()) ?? '';
    expect(pint).toContain('10 min');
    await expect(minutes('12 oz').first()).toHaveText(pint.replace('pint', '12 oz'));
    await neverSaid(page);
    await page.goto('/recipes/apple-sauce');
    await expect(minutes('half-gallon').first()).toContainText('refused');
    await expect(minutes('half-gallon').first()).toContainText(/Take the quart: 25 min here/);
    await neverSaid(page);

    await fromAFriend(page, 'Damson', '2');
    await offers(page).filter({ hasText: 'Damson jam' }).first().click();
    await page.getByLabel('Jars', { exact: true }).selectOption({ label: 'quart' });
    await page.getByRole('button', { name: 'Work it out again' }).click();
    await expect(page.locator('main')).toContainText(
      'No tested time for quarts of jam. Use pints (10 min here) or freeze.',
    );
    await neverSaid(page);
  });

  test('what was typed stays when it cannot be, with the number in the message', async ({ page }) => {
    await page.goto('/harvest/elsewhere');
    await page.getByLabel('Fruit', { exact: true }).selectOption({ label: 'Damson' });
    await page.getByLabel('From whom').fill('a friend');
    await page.getByLabel('Weight').fill('3200');
    await page.getByLabel(/Lot on the box/).fill('117');
    await page.getByRole('button', { name: 'Bring it in' }).click();
    await expect(page.getByText('the weight is 3200; it must lie between 0.01 and 2000')).toBeVisible();
    await expect(page.getByLabel('Weight')).toHaveValue('3200');
    await expect(page.getByLabel('From whom')).toHaveValue('a friend');
    await expect(page.getByLabel('Fruit', { exact: true })).toHaveValue('damson');
  });
});
