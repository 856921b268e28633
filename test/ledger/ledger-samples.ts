/** Acts, lots and movements as the ledger tests write them, and the sums they check balances against. */
import { type Act, type ActKind, type Entry, isRefusal, type Refusal } from '#lib/ledger/entry.ts';
import { type Lot, newLot } from '#lib/ledger/lot.ts';
import { isLot, type Movement } from '#lib/ledger/movement.ts';
import { plainDate } from '#lib/units/plain-date.ts';

export const DAY = plainDate('2025-09-13');

export const actOf = (id: string, kind: ActKind = 'receive'): Act => ({
  id,
  kind,
  day: DAY,
  at: `${DAY}T10:00:00.000Z`,
  person: null,
  device: null,
  note: null,
  payload: {},
  corrects: null,
});

export const lotOf = (id: string, known: Partial<Lot> = {}): Lot =>
  newLot({
    id,
    code: id.toUpperCase(),
    kind: 'supply',
    label: `Lot ${id}`,
    unit: 'g',
    parentActId: `act-${id}`,
    madeOn: DAY,
    since: `${DAY}T10:00:00.000Z`,
    ...known,
  });

export const entryOf = (id: string, movements: Movement[], lots: Lot[] = []): Entry => ({
  act: actOf(id),
  lots,
  movements,
  changes: [],
});

/** A lot with so much in it, bought. */
export const bought = (id: string, qty: number, known: Partial<Lot> = {}): Entry => {
  const lot = lotOf(id, known);
  const grams = lot.unit === 'g' ? qty : null;
  return entryOf(`act-${id}`, [{ from: { sink: 'bought' }, to: { lot: id }, qty, grams, piece: null }], [lot]);
};

/** What went in and out of a lot by its movements, in units of the lot. */
export function flows(movements: readonly Movement[], lotId: string): { inflow: number; outflow: number } {
  const sum = (of: Movement[]) => of.reduce((n, m) => n + m.qty, 0);
  return {
    inflow: sum(movements.filter((m) => isLot(m.to) && m.to.lot === lotId)),
    outflow: sum(movements.filter((m) => isLot(m.from) && m.from.lot === lotId)),
  };
}

/** The entry that was meant to be made; a refusal here is a failure of the test. */
export function made(x: Entry | Refusal): Entry {
  if (isRefusal(x)) throw new Error(x.refused);
  return x;
}
