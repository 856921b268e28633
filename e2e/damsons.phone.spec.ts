import { expect, test } from 'playwright/test';
import { draft, type Effort, openShed, tap, type } from './app.ts';
import { figure, freshDemoOn, heading, moveDay, said } from './ui.ts';

/**
 * Story A1: damsons, the whole way. Friday 12 September 2025, evening, no signal in the shed; Saturday the stove; Sunday the
 * seals; 20 November a jar is opened. Arithmetic: 3.00 kg less 8 % stones is 2.76 kg, in two pans 1.38 each; 1.38 x 14 % +
 * 1.20 kg sugar is 1.393 kg of solids, over 0.65 makes 2.143 kg; a half-pint of 65 °Bx holds 0.3115 kg.
 */
test('damsons go from bucket to jar, and the jar leads back to its trees', async ({ page, context }) => {
  test.setTimeout(180_000);
  await freshDemoOn(page, '2025-09-12', '18:00');

  await test.step('three buckets are weighed in without a signal', async () => {
    await openShed(page);
    await context.setOffline(true);
    await page.reload();
    const effort: Effort = { taps: 0, keys: 0 };
    await tap(page, effort, /Damson/);
    await type(page, effort, '5.62');
    await tap(page, effort, 'Next bucket');
    await type(page, effort, '5.10');
    await tap(page, effort, 'Next bucket');
    await type(page, effort, '4.88');
    expect(effort.keys).toBeLessThanOrEqual(12);
    await expect(page.locator('main')).toContainText('13.74 kg');
    await expect(page.locator('main')).toContainText('30.3 lb');
    for (const net of ['5.00', '4.48', '4.26']) await expect(page.locator('main')).toContainText(`${net} kg`);
    const grading: Effort = { taps: 0, keys: 0 };
    await tap(page, grading, /^perfect/);
    await type(page, grading, '9');
    await tap(page, grading, /^blemished/);
    await type(page, grading, '3.7');
    await expect(page.locator('main')).toContainText('1.04 kg');
    await tap(page, effort, /^Record 13\.74 kg/);
    expect(effort.taps).toBeLessThanOrEqual(6);
    await expect(page.getByText('1 waiting to send')).toBeVisible();
  });

  await test.step('the signal returns and the act is sent once', async () => {
    await context.setOffline(false);
    await page.evaluate(() => window.dispatchEvent(new Event('online')));
    await expect(page.getByText(/^All sent, last sent/)).toBeVisible();
    await page.goto('/trace?code=H-25255-D3-DAM-1');
    await expect(page.locator('tbody tr')).toHaveCount(3);
    await page.goto('/trace/H-25255-D3-DAM-1/S');
    await expect(page.locator('main')).toContainText('1.04 kg');
    await page.goto('/harvest');
    await expect(page.getByText(/^All sent/)).toBeVisible();
    await page.goto('/trace?code=H-25255-D3-DAM');
    await expect(page.locator('tbody tr')).toHaveCount(3);
  });

  await moveDay(page, '2025-09-13', '18:00');
  const before = await suppliesOf(page);

  await test.step('the sheet proposes two pans with their figures', async () => {
    await draft(page, /Damson jam/, 'H-25255-D3-DAM-1', { soft: '1.04', blemished: '1.96' });
    await page.getByLabel(/Trim weighed/).fill('0.24');
    await page.getByLabel(/Refractometer/).fill('14');
    await page.getByLabel(/Water boils today at/).fill('98.6');
    await page.getByRole('button', { name: 'Work it out again' }).click();
    await expect(heading(page)).toHaveText('Damson jam: 2 batches, 12 jars in all');
    await expect(page.getByText('11.7 cups in one pan')).toBeVisible();
    expect(await figure(page, 'Crushed, each')).toBe('5.9 cups');
    expect(await figure(page, 'sugar')).toBe('1.200 kg');
    expect(await figure(page, 'water')).toBe('150 g');
    expect(await figure(page, 'Mix')).toBe('2.730 kg');
    expect(await figure(page, 'Pan weight')).toBe('2.143 kg');
    expect(await figure(page, 'Boil off')).toBe('587 g');
    expect(await figure(page, 'Clock, at full boil')).toMatch(/^13 min/);
    expect(await figure(page, 'Temperature')).toBe('103.0 °C · 217.5 °F');
    expect(await figure(page, 'Water boils at')).toBe('98.6 °C · 209.5 °F');
    expect(await figure(page, 'Jars, half-pint')).toBe('6 from each pan, 12 in all');
    const partial = Number.parseInt(await figure(page, 'Partial jar, to the fridge'), 10);
    expect(Math.abs(partial - 274)).toBeLessThanOrEqual(10);
    expect(await figure(page, 'Process at a full boil')).toBe('10 min');
    expect(await figure(page, 'Headspace')).toBe('¼ in');
    expect(await figure(page, 'Canner loads')).toMatch(/^1 load/);
  });

  await test.step('both pans are cooked, filled and processed in one load', async () => {
    await page.getByRole('button', { name: 'Start 2 batches' }).click();
    await expect(said(page)).toContainText('25256-DAM-A and 25256-DAM-B');
    for (const code of ['25256-DAM-A', '25256-DAM-B']) {
      await page.goto(`/batches/${code}`);
      await page.getByRole('button', { name: 'Filled' }).click();
      await expect(said(page).first()).toContainText('6 jars filled');
      await expect(said(page).first()).toContainText('to the fridge');
    }
    await expect(page.getByText('In the same load: 25256-DAM-A')).toBeVisible();
    await page.getByRole('button', { name: /Boiling again/ }).click();
    await expect(page.getByRole('timer')).toHaveText(/^(10:00|9:5\d)$/);
    await page.reload();
    await expect(page.getByRole('timer')).toHaveText(/^(10:00|9:\d\d)$/);
    await page.getByLabel(/Minutes kept/).fill('10');
    await page.getByRole('button', { name: 'Out of the canner' }).click();
    await expect(said(page).first()).toContainText('25256-DAM-B as tested');
    await expect(said(page).first()).toContainText('25256-DAM-A as tested');
  });

  await moveDay(page, '2025-09-14');

  await test.step('on Sunday morning all are sealed and stand at B2-S1', async () => {
    for (const code of ['25256-DAM-A', '25256-DAM-B']) {
      await page.goto(`/batches/${code}`);
      await page.getByLabel(/Shelf for/).selectOption('B2-S1');
      await page.getByRole('button', { name: 'All 6 sealed' }).click();
      await expect(said(page).first()).toContainText('6 jars sealed, to B2-S1');
    }
    const after = await suppliesOf(page);
    expect(before.lids - after.lids).toBeGreaterThanOrEqual(12);
    await page.goto('/trace/25256-DAM-A');
    await expect(page.locator('main')).toContainText('1.20 kg');
    await page.goto('/trace/H-25255-D3-DAM-1/B');
    await expect(page.locator('main')).toContainText('1.74 kg');
  });

  await moveDay(page, '2025-11-20');

  await test.step('in November the oldest damson is taken, and leads to its trees', async () => {
    await page.goto('/pantry');
    await page.getByRole('button', { name: 'Take one Damson jam' }).click();
    await expect(said(page).first()).toContainText('25256-DAM-A/01');
    await page.goto('/trace/25256-DAM-A/01');
    for (const tree of ['D3-05', 'D3-06', 'D3-07']) await expect(page.getByText(tree, { exact: true })).toBeVisible();
    await expect(page.locator('main')).toContainText('R-25180-SUG-1');
    await expect(page.locator('main')).toContainText('Lids, regular');
    await expect(page.locator('main')).toContainText('eaten');
  });
});

async function suppliesOf(page: import('playwright/test').Page): Promise<{ lids: number }> {
  await page.goto('/');
  const text = (await page.locator('main').textContent()) ?? '';
  return { lids: Number(/(\d+) lids?/.exec(text)?.[1]) };
}
