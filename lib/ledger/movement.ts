/**
 * One transfer. Double entry: what leaves one account enters another, so nothing is lost and every balance is a sum.
 * An account is a lot or a named sink (where things come from or end up).
 */
import type { LotUnit } from './lot.ts';

/** Where things come from. */
export const SOURCES_OF_GOODS = ['harvest', 'bought', 'opening', 'tap', 'found'] as const;
/** Where things end. `in-use` holds jars that are full; `used` holds lids, which are used once. */
export const ENDS_OF_GOODS = [
  'eaten',
  'given',
  'sold',
  'spoiled',
  'compost',
  'hens',
  'trim',
  'vapour',
  'skimmings',
  'pan-loss',
  'remade',
  'used',
  'in-use',
  'broken',
  'missing',
] as const;
export type Sink = (typeof SOURCES_OF_GOODS)[number] | (typeof ENDS_OF_GOODS)[number];

export type Account = { lot: string } | { sink: Sink };

export interface Movement {
  from: Account;
  to: Account;
  /** In the unit of the lot that is counted; whole, above zero. */
  qty: number;
  /** Mass of food that moved, whole grams; null where mass has no meaning (lids, empty jars). */
  grams: number | null;
  /** Number of the jar or pack within its lot, where one piece moved. */
  piece: number | null;
}

export const isLot = (a: Account): a is { lot: string } => 'lot' in a;

/** Amount of a movement in the unit of an account: a lot held by mass counts grams, any other counts its own unit. */
export const amountIn = (unit: LotUnit, m: Pick<Movement, 'qty' | 'grams'>): number =>
  unit === 'g' ? (m.grams ?? m.qty) : m.qty;

/** A movement of mass, held in grams on both sides. */
export const moveGrams = (from: Account, to: Account, g: number): Movement => ({
  from,
  to,
  qty: g,
  grams: g,
  piece: null,
});
/** A movement of pieces without mass (lids, empties). */
export const movePieces = (from: Account, to: Account, n: number): Movement => ({
  from,
  to,
  qty: n,
  grams: null,
  piece: null,
});

/** The movement that undoes another: same amounts, the other way. */
export const counterMovement = (m: Movement): Movement => ({ ...m, from: m.to, to: m.from });
