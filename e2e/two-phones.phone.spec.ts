import { type Browser, expect, type Page, test } from 'playwright/test';
import { openShed, type } from './app.ts';
import { enterDemo, freshDemoOn, heading, moveDay, said } from './ui.ts';

/** A phone of its own with the demonstration open; its clock begins at that instant, where one is given. */
async function phone(browser: Browser, instant?: string): Promise<Page> {
  const page = await (await browser.newContext()).newPage();
  if (instant) await page.clock.install({ time: new Date(instant) });
  await enterDemo(page);
  return page;
}

async function stallWithoutSignal(page: Page): Promise<void> {
  await page.goto('/stall');
  await page.waitForFunction(async () => {
    await navigator.serviceWorker.ready;
    return (await caches.match('/stall')) !== undefined && navigator.serviceWorker.controller !== null;
  });
  await page.context().setOffline(true);
  await page.reload();
}

async function signalBack(page: Page): Promise<void> {
  await page.context().setOffline(false);
  await page.evaluate(() => window.dispatchEvent(new Event('online')));
  await expect(page.getByText(/waiting to send/)).toBeHidden();
}

/** Taps of a jar that leaves: its line, then what became of it. */
async function leaves(page: Page, line: string, what: string): Promise<void> {
  const button = page.getByRole('button', { name: line, exact: true });
  if (!(await button.isVisible())) await page.getByText('For the house and gifts').click();
  await button.click();
  await page.getByRole('button', { name: what, exact: true }).click();
  await expect(said(page).filter({ hasText: `of ${line}` })).toBeVisible();
}

test.describe
  .serial('two phones without a signal', () => {
    test('what no longer fits the shelf comes back as a question, and no jar is counted below none (D5, D9)', async ({
      browser,
      page,
    }) => {
      test.setTimeout(120_000);
      await freshDemoOn(page, '2026-01-15');
      await page.goto('/pantry/quince-paste');
      await page.getByLabel('How many?').fill('3');
      await page.getByRole('button', { name: 'Given', exact: true }).click();
      await expect(said(page).first()).toContainText('4 left of Quince paste');
      const [one, two] = [await phone(browser), await phone(browser)];
      for (const p of [one, two]) await stallWithoutSignal(p);
      await leaves(one, 'Quince paste', 'Given 4');
      await leaves(one, 'Mirabelle jam', 'Eaten');
      await leaves(two, 'Quince paste', 'Given 3');
      await leaves(two, 'Mirabelle jam', 'Sold 3');
      await expect(two.getByText('2 waiting to send')).toBeVisible();
      await signalBack(one);
      await signalBack(two);
      await expect(two.getByRole('link', { name: '2 questions to answer' })).toBeVisible();
      await page.goto('/questions');
      await expect(heading(page)).toHaveText('2 questions to answer');
      const paste = page.getByRole('region', { name: /^Given 3 Quince paste .*none was left: which was it\?$/ });
      const jam = page.getByRole('region', { name: /^Sold 3 Mirabelle jam .*only 2 were left: which was it\?$/ });
      await expect(jam).toBeVisible();
      await paste.getByRole('button', { name: 'None of it' }).click();
      await expect(said(page).first()).toContainText('nothing left the shelf');
      await jam.getByRole('button', { name: 'Only 2' }).click();
      await expect(said(page).first()).toContainText('0 left of Mirabelle jam');
      await expect(heading(page)).toHaveText('Nothing to ask');
      await page.goto('/pantry');
      await expect(page.locator('main')).not.toContainText(/(Quince paste|Mirabelle jam)/);
      for (const p of [one, two]) await p.context().close();
    });

    test('one bucket on two devices is asked about, and the total stays 13.74 kg (D4)', async ({ browser, page }) => {
      test.setTimeout(120_000);
      await enterDemo(page);
      await moveDay(page, '2025-09-12', '18:20');
      const teen = await phone(browser, '2025-09-12T16:40:00Z');
      await openShed(teen);
      await teen.context().setOffline(true);
      await teen.reload();
      await teen.getByText('Full, and not weighed yet').click();
      await teen.getByLabel('From row').selectOption('D3|damson');
      await teen.getByLabel('Of what').selectOption({ label: 'Blue bucket' });
      await teen.getByRole('button', { name: 'Keep it for the scale' }).dblclick();
      await expect(teen.getByText('1 waiting to send')).toBeVisible();
      const bryn = await phone(browser, '2025-09-12T17:10:00Z');
      await bryn.goto('/harvest');
      await bryn
        .getByRole('button', { name: /Damson/ })
        .first()
        .click();
      const effort = { taps: 0, keys: 0 };
      for (const gross of ['5.62', '5.10', '4.88']) {
        await type(bryn, effort, gross);
        if (gross !== '4.88') await bryn.getByRole('button', { name: 'Next bucket' }).click();
      }
      await bryn.getByRole('button', { name: /^Record 13\.74 kg/ }).dblclick();
      await expect(bryn.getByText(/^All sent/)).toBeVisible();
      await signalBack(teen);
      await expect(teen.getByRole('link', { name: '1 question to answer' })).toBeVisible();
      await teen.evaluate(() => window.dispatchEvent(new Event('online')));
      await page.goto('/questions');
      await expect(heading(page)).toHaveText('1 question to answer');
      await expect(
        page.getByText('Same bucket? Damson, row D3: 1 blue bucket at 17:40; 13.74 kg · 30.3 lb weighed at 18:10.'),
      ).toBeVisible();
      await page.getByRole('button', { name: 'Yes, the same bucket' }).click();
      await expect(said(page).first()).toContainText('One bucket');
      await page.goto('/harvest');
      await expect(page.getByRole('listitem').filter({ hasText: 'D3' }).filter({ hasText: 'Damson' })).toHaveCount(1);
      await expect(page.getByRole('listitem').filter({ hasText: 'D3' })).toContainText('13.74 kg');
      for (const p of [teen, bryn]) await p.context().close();
    });
  });
