/** Verbs of the trade, in the words of the screens; counts what a hand does. */
import { expect, type Page } from 'playwright/test';
import { said } from './ui.ts';

/** Taps and keys are counted apart, as in the budgets of the jobs. */
export interface Effort {
  taps: number;
  keys: number;
}

export async function tap(page: Page, effort: Effort, name: string | RegExp, nth = 0): Promise<void> {
  await page.getByRole('button', { name }).nth(nth).click();
  effort.taps += 1;
}

export async function type(page: Page, effort: Effort, text: string): Promise<void> {
  for (const key of text) {
    await page.getByRole('button', { name: key === '.' ? 'decimal point' : key, exact: true }).click();
    effort.keys += 1;
  }
}

/** The shed screen, ready for use without a signal: its worker holds the page. */
export async function openShed(page: Page): Promise<void> {
  await page.goto('/harvest');
  await page.waitForFunction(async () => {
    await navigator.serviceWorker.ready;
    const copy = await caches.match('/harvest');
    return copy !== undefined && navigator.serviceWorker.controller !== null;
  });
}

/** Works out a batch from lots that were weighed in. */
export async function draft(
  page: Page,
  recipe: RegExp,
  harvest: string,
  grades: Record<string, string>,
): Promise<void> {
  await page.goto('/batches/new');
  for (const grade of Object.keys(grades))
    await page
      .locator('label')
      .filter({ hasText: harvest })
      .filter({ hasText: `, ${grade}` })
      .locator('input')
      .check();
  await page.getByRole('button', { name: 'Show what it can become' }).click();
  await page.getByRole('link', { name: recipe }).click();
  await expect(page.getByRole('button', { name: 'Work it out again' })).toBeVisible();
  for (const [grade, kg] of Object.entries(grades))
    await page.getByLabel(new RegExp(`, ${grade} \\(${harvest}`)).fill(kg);
}

/** Twenty metres of raspberries in row R2, on the page of the place; kilograms of each as they are typed. */
export async function plantRaspberries(page: Page, kgEach: string): Promise<void> {
  await page.getByText('Add a crop').click();
  await page.getByLabel('Fruit', { exact: true }).selectOption('raspberry-red');
  await page.getByLabel('What you call it').fill('Raspberry');
  await page.getByLabel('Row', { exact: true }).fill('R2');
  await page.getByLabel('How many', { exact: true }).fill('20');
  await page.getByLabel('of', { exact: true }).selectOption('metre of row');
  await page.getByLabel(/Kilograms of each/).fill(kgEach);
  await page.getByLabel(/First picking day/).fill('2025-06-20');
  await page.getByLabel(/Last picking day/).fill('2025-08-10');
  await page.getByRole('button', { name: 'Add the crop' }).click();
  await expect(said(page).first()).toContainText('Raspberry stands in row R2');
}

/** Something bought, on the page of the place. */
export async function bringIn(page: Page, of: { item: string; qty: string; label: string }): Promise<void> {
  await page.getByLabel('Something came in').selectOption(of.item);
  await page.getByLabel('How much', { exact: true }).fill(of.qty);
  await page.getByRole('button', { name: 'Bring it in' }).click();
  await expect(said(page).first()).toContainText(`${of.label} came in as R-`);
}
