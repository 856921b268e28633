/**
 * From full blossom to picking, days, and the temperatures that are counted.
 * Apples and pears: means of five and two cultivars at Klein-Altendorf 1958-2019 (doi:10.60507/FK2/MZIELI; apples 113 to 151,
 * pears 143 to 154, the day of blossom itself varying by 8 to 11 days). The other fruits are from memory. Other fruits than these
 * have no row: when they blossom is not said.
 */
import type { FruitId } from './fruit-list.ts';

const BLOSSOM_TO_PICKING: Partial<Record<FruitId, number>> = {
  'apple-dessert': 139,
  'apple-cooking': 139,
  'apple-cider-sweet': 139,
  crabapple: 139,
  pear: 148,
  'pear-asian': 148,
  quince: 150,
  apricot: 110,
  'peach-yellow': 125,
  'peach-white': 125,
  nectarine: 125,
  'plum-european': 125,
  'plum-japanese': 115,
  damson: 140,
  greengage: 125,
  mirabelle: 125,
  'cherry-sweet': 65,
  'cherry-sour': 70,
};

/** Days from full blossom to the middle of picking, or null where no figure is kept. */
export const blossomToPicking = (foodId: string): number | null => BLOSSOM_TO_PICKING[foodId as FruitId] ?? null;

/** Days either side of full blossom that are looked at: about the spread of the day itself. */
export const BLOSSOM_WITHIN_DAYS = 10;
/** A tenth of open blossoms is lost at or below this (28 °F; Washington State University chart, from memory). */
export const BLOSSOM_FROST_C = -2.2;
/** Fruit in the sun scalds on days as hot as this (from memory). */
export const HEAT_DAY_C = 35;
/** Base of the degree-days shown, °C: growth of temperate fruit trees (common practice). */
export const WARMTH_BASE_C = 5;
