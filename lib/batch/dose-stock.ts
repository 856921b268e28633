/** Which stock a dose is drawn from, and how much of it in the stock's own unit. */
import type { DoseItem } from '#lib/reference/recipes/dose-items.ts';

/** Stock a dose is drawn from, by item; what is not listed here is not kept in stock and is brought in as used. */
export const STOCK_OF_DOSE: Partial<Record<DoseItem, string>> = {
  sugar: 'sugar',
  'lemon-juice-bottled': 'lemon-juice',
  'citric-acid': 'citric-acid',
  'apple-powder': 'apple-powder',
  'citrus-powder': 'citrus-rind',
  'pectin-powder': 'pectin-powder',
  'pectin-stock': 'pectin-stock',
};
/** Grams of a millilitre of bottled lemon juice (244 g a US cup, USDA SR26). */
const LEMON_G_PER_ML = 244 / 236.5882365;
/** A dose of a stock in the stock's own unit; packs are drawn by weight. */
export const inStockUnit = (item: DoseItem, grams: number): number =>
  item === 'lemon-juice-bottled' ? Math.round(grams / LEMON_G_PER_ML) : Math.round(grams);
