/** Two devices of one house, each a browser of its own, and a signal that comes and goes. */
import { type Browser, expect, type Page } from 'playwright/test';
import { enterDemo, said } from './ui.ts';

/** A phone of its own with the demonstration open; its clock begins at that instant, where one is given. */
export async function phone(browser: Browser, instant?: string): Promise<Page> {
  const page = await (await browser.newContext()).newPage();
  if (instant) await page.clock.install({ time: new Date(instant) });
  await enterDemo(page);
  return page;
}

/** The stall's cards, ready on the device before the signal goes. */
export async function stallWithoutSignal(page: Page): Promise<void> {
  await page.goto('/stall');
  await page.waitForFunction(async () => {
    await navigator.serviceWorker.ready;
    return (await caches.match('/stall')) !== undefined && navigator.serviceWorker.controller !== null;
  });
  await page.context().setOffline(true);
  await page.reload();
}

/** The signal returns and what waits is sent. */
export async function signalBack(page: Page): Promise<void> {
  await page.context().setOffline(false);
  await page.evaluate(() => window.dispatchEvent(new Event('online')));
  await expect(page.getByText(/waiting to send/)).toBeHidden();
}

/** Taps of a jar that leaves: its line, then what became of it. */
export async function leaves(page: Page, line: string, what: string): Promise<void> {
  const button = page.getByRole('button', { name: line, exact: true });
  if (!(await button.isVisible())) await page.getByText('For the house and gifts').click();
  await button.click();
  await page.getByRole('button', { name: what, exact: true }).click();
  await expect(said(page).filter({ hasText: `of ${line}` })).toBeVisible();
}
