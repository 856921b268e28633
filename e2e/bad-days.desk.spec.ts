import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from 'playwright/test';
import { type Effort, tap } from './app.ts';
import { wordsOf } from './printed.ts';
import { enterDemo, freshDemoOn, heading, moveDay, said } from './ui.ts';

/** The bad days: a jar that looks wrong in December, a freezer that stood still since the night. */
test.describe('the bad days', () => {
  test.beforeAll(async ({ browser }) => {
    test.setTimeout(120_000);
    const page = await browser.newPage();
    await freshDemoOn(page, '2025-12-12');
    await page.close();
  });
  test.beforeEach(async ({ page }) => enterDemo(page));

  test('a mouldy jar goes whole, its five sisters are listed, a second one holds the batch (story B3)', async ({
    page,
  }) => {
    await page.goto('/jar/25193-RAS-A/04');
    await page.getByRole('link', { name: 'It looks wrong' }).click();
    const first: Effort = { taps: 1, keys: 0 };
    for (const sign of ['Lid flat', 'Streaks from the rim', 'Moving bubbles', 'Odour on opening'])
      await expect(page.getByRole('button', { name: sign })).toBeVisible();
    await tap(page, first, 'Mould');
    expect(first.taps).toBeLessThanOrEqual(2);
    await expect(heading(page)).toHaveText('Throw 25193-RAS-A/04 away, the whole jar');
    await expect(page.getByRole('note')).toContainText('Do not scrape the mould off, and do not taste');
    await expect(page.getByText('5 others: 4 sold, 1 eaten.')).toBeVisible();
    await expect(page.locator('tbody tr')).toHaveCount(5);
    await expect(page.locator('tbody tr').first()).toContainText('25193-RAS-A/01');
    await expect(page.locator('tbody tr').first()).toContainText('sold, the stall, Sat 16 Aug 2025');
    await expect(page.getByRole('heading', { name: 'The batch is on hold' })).toHaveCount(0);

    await page.goto('/suspect?code=25209-ras-a');
    await expect(heading(page)).toHaveText('Which jar of 25209-RAS-A looks wrong?');
    for (const told of ['thrown away.', 'That is 2 jars of the batch: all of it is on hold']) {
      await page
        .locator('tbody tr')
        .filter({ hasText: 'on B2-S2' })
        .first()
        .getByRole('link', { name: /looks wrong/ })
        .click();
      await tap(page, first, 'Lid flat');
      await expect(said(page).first()).toContainText(told);
    }
    await page.goto('/jar/25209-RAS-A');
    await expect(page.getByText('Not for sale: on hold: 2 or more jars of this batch spoiled')).toBeVisible();
    await page.goto('/suspect/25209-RAS-A');
    await page.getByRole('link', { name: 'Call list' }).click();
    await expect(heading(page)).toHaveText(/^Call list, 25209-RAS-A: \d+ jars? with other people$/);
    const { pages, words } = await wordsOf(await page.pdf({ format: 'A4' }));
    expect(pages).toBe(1);
    const sheet = words.map((w) => w.text).join(' ');
    expect(sheet).toContain('given');
    expect(sheet).toContain('on B2-S2');
    expect(sheet).toContain('Do not open it, do not taste it');
  });

  test('a freezer that stopped in the night: what keeps how long, what can be cooked, what is moved (story B4)', async ({
    page,
    context,
  }) => {
    // The demonstration ends on a Thursday with the stock of the story's Saturday.
    await moveDay(page, '2026-01-15', '19:40');
    await page.goto('/place/store/chest');
    await page.getByRole('link', { name: 'It has stopped' }).click();
    await page.goto('/outage');
    await page.getByText('Chest freezer', { exact: true }).click();
    const effort: Effort = { taps: 1, keys: 0 };
    await page.getByLabel('It failed about').fill('02:10');
    await tap(page, effort, 'It has stopped');
    expect(effort.taps).toBeLessThanOrEqual(2);
    await expect(heading(page)).toHaveText(
      'Chest freezer, half full or less: about 24 h, so roughly until 02:10 Fri 16 Jan. Keep it shut.',
    );
    await expect(
      page.getByText(/^By the list 64\.28 kg · 141\.7 lb, of room for 168\.19 kg · 370\.8 lb: 38 % full/),
    ).toBeVisible();
    await expect(page.getByText('found 19:40 Thu 15 Jan, 17 h 30 min later')).toBeVisible();
    await expect(page.getByText(/Lids \d+ of 148, sugar [\d.]+ kg of 18\.00 kg; 5 of 5 burners free/)).toBeVisible();
    await expect(page.getByText('smells and tastes sound may be frozen again')).toBeVisible();
    const items = page.locator('li').filter({ has: page.getByRole('button', { name: 'Thrown' }) });
    await expect(items.first()).toContainText('Frozen raspberries 500 g');
    await expect(items.first()).toContainText('Tonight: cook it, 19:');
    const jam = items.filter({ hasText: 'Raspberry freezer jam' });
    await expect(jam).toContainText('to the fridge, to be used by Thu 5 Feb');

    // Once it is there the page runs on by itself.
    await context.setOffline(true);
    const timer = page.getByRole('timer');
    await expect(timer).toHaveText(/^6:\d\d:\d\d$/);
    const first = await timer.textContent();
    await expect(timer).not.toHaveText(first ?? '');
    await context.setOffline(false);

    await jam.getByRole('button', { name: 'To the fridge' }).click();
    await expect(said(page).first()).toContainText('to the kitchen fridge, to be used by Thu 5 Feb');
    await page.getByLabel('How much was moved').fill('40');
    await page.getByLabel('To whom').fill('the mill');
    await page.getByRole('button', { name: 'Moved' }).click();
    await expect(said(page).first()).toContainText('40.00 kg · 88.2 lb moved: it stands with the mill');
    await expect(page.getByText('What is in it, the most worth first: 22.00 kg')).toBeVisible();
    await page.getByRole('link', { name: 'List for the neighbour' }).click();
    await expect(heading(page)).toHaveText('Have you room in your freezer?');
    const { pages, words } = await wordsOf(await page.pdf({ format: 'A4' }));
    expect(pages).toBe(1);
    expect(words.map((w) => w.text).join(' ')).toContain('Taken in already');
    await page.goBack();
    await expect(heading(page)).toContainText('Keep it shut');
    const scan = await new AxeBuilder({ page }).withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa']).analyze();
    expect(scan.violations.map((v) => `${v.id}: ${v.nodes.map((x) => x.target.join(' ')).join(' | ')}`)).toEqual([]);
    await page.goto('/pantry');
    await expect(page.getByRole('link', { name: /Chest freezer stands still: 22\.00 kg/ })).toBeVisible();
    await expect(page.getByText('with the mill').first()).toBeVisible();
    await page.goto('/');
    await page.getByRole('link', { name: /Chest freezer stands still, 22\.00 kg/ }).click();
    await items.first().getByRole('button', { name: 'Thaw to cook' }).click();
    await expect(said(page).first()).toContainText('of raspberry thawed, 26 packs: cook it within the day');
    await page.goto('/');
    await expect(page.getByText(/Raspberry, thawed/).first()).toBeVisible();
  });
});
