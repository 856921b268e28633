import { expect, test } from 'playwright/test';
import { enterDemo, figure, freshDemoOn, heading, said } from './ui.ts';

test.beforeAll(async ({ browser }) => {
  test.setTimeout(120_000);
  const page = await browser.newPage();
  await freshDemoOn(page, '2025-09-12');
  await page.close();
});

test('the same jam in the two kitchens stops at another temperature and takes other minutes', async ({ page }) => {
  await enterDemo(page);
  await page.goto('/recipes/damson-jam?kitchen=home');
  expect(await figure(page, 'Temperature')).toContain('103.1 °C');
  expect(await figure(page, 'Process at a full boil')).toContain('10 min');
  await page.goto('/recipes/damson-jam');
  await page.getByLabel('Kitchen', { exact: true }).selectOption('quay');
  await page.getByRole('button', { name: 'Work it out' }).click();
  // Water boils at 100.0 °C at 6 m (standard atmosphere) and a full-sugar jam 4.4 °C above: the 8 °F rule.
  expect(await figure(page, 'Temperature')).toContain('104.4 °C');
  expect(await figure(page, 'Process at a full boil')).toContain('5 min');
  expect(await figure(page, 'Boil the empty jars')).toContain('min');
});

test('a recipe is scaled by jars and by pan, and an exchange shows what it changes', async ({ page }) => {
  await enterDemo(page);
  await page.goto('/recipes/damson-jam');
  await page.getByLabel('So many').selectOption('jars');
  await page.getByLabel('Amount', { exact: true }).fill('6');
  await page.getByRole('button', { name: 'Work it out' }).click();
  expect(await figure(page, 'Jars')).toContain('6 jars');
  await page.getByLabel('So many').selectOption('pan');
  await page.getByRole('button', { name: 'Work it out' }).click();
  // 6 cups of 235 g, a tenth of the damsons being stones: 1.41 kg prepared, 1.57 kg as weighed.
  await expect(page.getByText('1.57 kg damson, as weighed')).toBeVisible();

  await page.getByText('Exchange the pectin or the acid').click();
  await page.getByLabel('Pectin', { exact: true }).selectOption('apple-powder');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await expect(page.getByText('how much of the other pectin goes in is missing')).toBeVisible();
  await page.getByLabel('Grams of it a kilogram').first().fill('25');
  await page.getByRole('button', { name: 'Work it out' }).click();
  const row = page.getByRole('row', { name: /set by the tables/ });
  await expect(row).toContainText('of the pectin needed');
  await expect(page.getByRole('row', { name: /apple peel and core powder/ })).toContainText('none');
  await expect(page.getByRole('img', { name: /°Bx at pH/ })).toBeVisible();
});

test('a tested acid dose is not exchanged', async ({ page }) => {
  await enterDemo(page);
  await page.goto('/recipes/apple-pie-filling');
  await page.getByText('Exchange the pectin or the acid').click();
  await page.getByLabel('Acid', { exact: true }).selectOption('citric-acid');
  await page.getByLabel('Grams of it a kilogram').nth(1).fill('1');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await expect(page.getByText('is a tested dose: it is not exchanged for another and not lowered')).toBeVisible();
});

test('a sheet takes cups, says “weigh it” to a spoon of powder, and keeps what it cannot work with', async ({
  page,
}) => {
  await enterDemo(page);
  await page.goto('/batches/new');
  await page
    .getByRole('checkbox', { name: /Damson, blemished/ })
    .last()
    .check();
  await page.getByRole('button', { name: 'Show what it can become' }).click();
  await page.getByRole('link', { name: /^Damson jam/ }).click();
  await page.getByText('Set the amounts myself').click();
  await page.getByLabel('Sugar in each batch').fill('2 handfuls');
  await page.getByRole('button', { name: 'Work it out again' }).click();
  await expect(page.getByText('"handfuls" is not kg, g, cups, tbsp or tsp')).toBeVisible();
  await expect(page.getByLabel('Sugar in each batch')).toHaveValue('2 handfuls');
  await page.getByLabel('Sugar in each batch').fill('2 1/2 cups');
  await page.getByRole('button', { name: 'Work it out again' }).click();
  expect(await figure(page, 'sugar')).toBe('500 g');
  await expect(page.getByRole('img', { name: /°Bx at pH/ })).toBeVisible();
  await page.getByLabel('Pectin', { exact: true }).selectOption('apple-powder');
  await page.getByRole('button', { name: 'Work it out again' }).click();
  await expect(page.getByText('how much of the other pectin goes in is missing')).toBeVisible();
  await page.getByLabel('Pectin in each batch').fill('30');
  await page.getByRole('button', { name: 'Work it out again' }).click();
  expect(await figure(page, 'apple peel and core powder')).toBe('30 g');

  await page.goto('/recipes/own?from=damson-jam');
  await page.getByLabel('What you call it').fill('Damson jam with home powder');
  await page.getByLabel('Pectin', { exact: true }).selectOption('apple-powder');
  await page.getByLabel('Pectin, grams').fill('20');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await page.getByRole('button', { name: 'Put it in my book' }).click();
  await page.goto('/batches/new');
  await page
    .getByRole('checkbox', { name: /Damson, blemished/ })
    .last()
    .check();
  await page.getByRole('button', { name: 'Show what it can become' }).click();
  await page.getByRole('link', { name: /Damson jam with home powder/ }).click();
  await page.getByText('Set the amounts myself').click();
  await page.getByLabel('Pectin in each batch').fill('2 tbsp');
  await page.getByRole('button', { name: 'Work it out again' }).click();
  await expect(page.getByText('2 tbsp of apple peel and core powder is near 14 g (10 to 18): weigh it')).toBeVisible();
});

test('a recipe of one’s own of two fruits is cooked, changed, and the batch keeps its own version', async ({
  page,
}) => {
  test.setTimeout(120_000);
  await enterDemo(page);
  await page.goto('/recipes/damson-jam');
  await page.getByRole('link', { name: 'Write my own from this one' }).click();
  await page.getByLabel('What you call it').fill('Plum and damson jam');
  await page.getByLabel('Fruit 1').selectOption('plum-european');
  await page.getByLabel('Share').first().fill('60');
  await page.getByLabel('Fruit 2').selectOption('damson');
  await page.getByLabel('Share').nth(1).fill('30');
  await page.getByLabel('Sugar', { exact: true }).fill('800');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await expect(page.getByText('the shares make 90 %, not 100 %')).toBeVisible();
  await expect(page.getByLabel('What you call it')).toHaveValue('Plum and damson jam');
  await page.getByLabel('Share').nth(1).fill('40');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await expect(page.getByText('For the household and gifts: it is your own, no tested recipe.')).toBeVisible();
  await page.getByRole('button', { name: 'Put it in my book' }).click();
  await expect(heading(page)).toContainText('Plum and damson jam');
  await expect(said(page).first()).toContainText('Plum and damson jam is in your book');

  await page.goto('/batches/new');
  await page
    .getByRole('checkbox', { name: /Prune plum, perfect|Prune plum, blemished/ })
    .first()
    .check();
  await page
    .getByRole('checkbox', { name: /Damson, blemished/ })
    .first()
    .check();
  await page.getByRole('button', { name: 'Show what it can become' }).click();
  await page.getByRole('link', { name: /Plum and damson jam/ }).click();
  await expect(heading(page)).toContainText('Plum and damson jam');
  await page.getByRole('button', { name: /^Start/ }).click();
  await expect(page).toHaveURL(/\/batches\/2/);
  const batch = page.url();
  await expect(heading(page)).toContainText('Plum and damson jam');

  await page.goto('/recipes');
  await page.getByRole('link', { name: /Plum and damson jam/ }).click();
  await page.getByRole('link', { name: 'Change it' }).click();
  await page.getByLabel('What you call it').fill('Plum and damson jam, sharper');
  await page.getByLabel('Sugar', { exact: true }).fill('650');
  await page.getByRole('button', { name: 'Work it out' }).click();
  await page.getByRole('button', { name: 'Keep the new version' }).click();
  await expect(said(page).first()).toContainText('What was cooked before keeps version 1');
  await page.goto(batch);
  await expect(heading(page)).not.toContainText('sharper');
  await page.goto('/recipes/own-plum-and-damson-jam-1');
  await expect(page.getByText('Your own, version 1, no longer offered.')).toBeVisible();
});
