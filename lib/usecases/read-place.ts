/** The place itself: kitchens, stores, crops, supplies on hand, and today's boiling water. */

import type { HeldLot } from '#lib/ledger/lot.ts';
import { FRUITS } from '#lib/reference/fruits.ts';
import { readingsOf } from '#lib/store/batch-store.ts';
import { loadLots } from '#lib/store/ledger-store.ts';
import type { Place } from '#lib/store/place.ts';
import type { Context } from './context.ts';

export interface PlaceView {
  place: Place;
  foods: { id: string; name: string }[];
  supplies: { item: string; label: string; qty: number; unit: string }[];
  /** Today's boiling-water reading by kitchen, hundredths of a °C. */
  water: { kitchenId: string; centiC: number }[];
}

export async function readPlace(ctx: Context): Promise<PlaceView> {
  const [lots, readings] = await Promise.all([
    loadLots(ctx.db, ctx.place.id, { kinds: ['supply', 'lids', 'empties', 'set-aside'] }),
    readingsOf(ctx.db, ctx.place.id, { kind: 'water', day: ctx.today }),
  ]);
  const supplies = new Map<string, PlaceView['supplies'][number]>();
  for (const l of lots) {
    const key = `${l.kind} ${l.item}`;
    const known = supplies.get(key);
    if (known) known.qty += l.onHand;
    else supplies.set(key, { item: l.item ?? l.code, label: labelOf(ctx.place, l), qty: l.onHand, unit: l.unit });
  }
  return {
    place: ctx.place,
    foods: FRUITS.map(({ id, name }) => ({ id, name })),
    supplies: [...supplies.values()],
    water: readings.flatMap((r) => (r.kitchenId ? [{ kitchenId: r.kitchenId, centiC: r.value }] : [])),
  };
}

const labelOf = (place: Place, { kind, item, label }: HeldLot): string => {
  const jar = kind === 'empties' ? place.jarKinds.find((k) => k.code === item) : undefined;
  return jar ? `Empty jars, ${jar.label}` : label;
};
