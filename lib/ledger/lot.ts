/** A lot is anything held and counted: fruit of one picking and grade, a supply, a set of jars, a batch while it cooks. */
import type { PlainDate } from '#lib/units/plain-date.ts';

export type LotKind =
  | 'fruit'
  | 'set-aside'
  | 'supply'
  | 'empties'
  | 'lids'
  | 'frozen'
  | 'dried'
  | 'jars'
  | 'cold-jars'
  | 'batch';

/** What one of it is. Mass in grams (decigrams where a gram is too coarse), liquids in millilitres, the rest by piece. */
export type LotUnit = 'g' | 'dg' | 'ml' | 'jar' | 'pack' | 'lid' | 'piece';

export type Grade = 'perfect' | 'blemished' | 'soft' | 'cull';
/** Best first: a mixture or a set-aside takes the worst of its parents. */
export const GRADES: readonly Grade[] = ['perfect', 'blemished', 'soft', 'cull'];
export const worstGrade = (grades: readonly Grade[]): Grade =>
  GRADES[Math.max(...grades.map((g) => GRADES.indexOf(g)), 0)] as Grade;

export interface Lot {
  id: string;
  code: string;
  kind: LotKind;
  label: string;
  unit: LotUnit;
  item: string | null;
  cropId: string | null;
  foodId: string | null;
  recipeId: string | null;
  grade: Grade | null;
  groundFall: boolean;
  row: string | null;
  roomId: string | null;
  address: string | null;
  batchId: string | null;
  parentActId: string;
  madeOn: PlainDate;
  /** ISO instant its clock started: picked, or out of the canner. */
  since: string;
  bestBefore: PlainDate | null;
  lockedUntil: PlainDate | null;
  process: ProcessVerdict | null;
  seal: SealVerdict | null;
  hold: string | null;
  household: boolean;
  flags: string[];
  details: Record<string, unknown>;
}

export type ProcessVerdict = 'as tested' | 'not as tested' | 'unknown';
export type SealVerdict = 'waiting' | 'sealed' | 'unsealed' | 'unverified';

/** A lot with what is left of it, in its own unit. */
export type HeldLot = Lot & { onHand: number };

/** A set-aside on its way (fresh, on the trays, in its jar) is not drawn on yet; nothing on hold ever is. */
export const isReady = ({ kind, hold, details }: Pick<HeldLot, 'kind' | 'hold' | 'details'>): boolean =>
  hold === null && (kind !== 'set-aside' || !['fresh', 'drying', 'conditioning'].includes(String(details.state)));

/** Grams in each pack of a lot held in packs, where it was weighed; null for any other lot. */
export const packG = (lot: Pick<Lot, 'unit' | 'details'>): number | null =>
  lot.unit === 'pack' && typeof lot.details.netG === 'number' && lot.details.netG > 0 ? lot.details.netG : null;

/** What is left of a lot by weight, grams; null where its weight is not on record. */
export function byWeightG(lot: HeldLot): number | null {
  if (lot.unit === 'g') return lot.onHand;
  const each = packG(lot);
  return each === null ? null : lot.onHand * each;
}

const BLANK = {
  item: null,
  cropId: null,
  foodId: null,
  recipeId: null,
  grade: null,
  groundFall: false,
  row: null,
  roomId: null,
  address: null,
  batchId: null,
  bestBefore: null,
  lockedUntil: null,
  process: null,
  seal: null,
  hold: null,
  household: true,
} as const;

type Required = 'id' | 'code' | 'kind' | 'label' | 'unit' | 'parentActId' | 'madeOn' | 'since';

/** A lot from what is known of it; everything else is "not known" or "none". */
export const newLot = (known: Pick<Lot, Required> & Partial<Lot>): Lot => ({
  ...BLANK,
  flags: [],
  details: {},
  ...known,
});
