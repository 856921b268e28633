/** Mechanics of the screens: where a thing is on the page, and nothing of the trade. */
import { expect, type Page } from 'playwright/test';

export const heading = (page: Page) => page.locator('h1');
export const said = (page: Page) => page.getByRole('status').filter({ hasText: /\S/ });

/** Opens the demonstration in this browser. */
export async function enterDemo(page: Page): Promise<void> {
  await page.goto('/welcome');
  await page.getByRole('button', { name: 'Open Wrenlatch' }).click();
  await page.waitForURL((url) => url.pathname === '/');
}

/** Moves the demonstration's day; back begins it again. */
export async function moveDay(page: Page, day: string, time = '07:30'): Promise<void> {
  await page.goto('/');
  await page.locator('summary').filter({ hasText: 'move the day' }).click();
  await page.getByLabel('Another day').fill(day);
  await page.locator('#day-mover-time').fill(time);
  await page.getByRole('button', { name: 'Go to it' }).click();
  await expect(page.locator(`time[datetime="${day}"]`).first()).toBeVisible({ timeout: 30_000 });
  await expect(heading(page)).toBeVisible();
}

/** The demonstration as nobody has touched it, on the morning or evening of a day. */
export async function freshDemoOn(page: Page, day: string, time = '07:30'): Promise<void> {
  await enterDemo(page);
  await moveDay(page, '2025-01-03');
  await moveDay(page, '2025-01-02');
  await moveDay(page, day, time);
}

/** Figure of a sheet by its name: "1.200 kg". */
export async function figure(page: Page, label: string): Promise<string> {
  const found = page
    .locator('details')
    .filter({ has: page.locator('summary', { hasText: new RegExp(`^\\s*${label}`) }) });
  return ((await found.first().locator('summary b').first().textContent()) ?? '').trim();
}
