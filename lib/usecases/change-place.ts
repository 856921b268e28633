/** What a household changes about its place: crops and rows, things bought, today's boiling water. */

import { receiveSupply } from '#lib/ledger/acts/receive-supply.ts';
import type { LotKind, LotUnit } from '#lib/ledger/lot.ts';
import { foodCode, freeReceiptNumber } from '#lib/ledger/lot-code.ts';
import { loadLots, type Written, writeAct } from '#lib/store/ledger-store.ts';
import { roomOfKind } from '#lib/store/place.ts';
import { addCrop } from '#lib/store/place-store.ts';
import { actOf } from './act-of.ts';
import type { Context } from './context.ts';

/** What can be bought in: the unit it is kept in, the unit a person is asked for, the letters of its receipt. */
export const SUPPLY_ITEMS: readonly {
  item: string;
  label: string;
  kind: Extract<LotKind, 'supply' | 'lids' | 'empties'>;
  unit: LotUnit;
  asked: string;
  what: string;
}[] = [
  { item: 'sugar', label: 'Sugar', kind: 'supply', unit: 'g', asked: 'kg', what: 'SUG' },
  { item: 'lemon-juice', label: 'Bottled lemon juice', kind: 'supply', unit: 'ml', asked: 'mL', what: 'LEM' },
  { item: 'citric-acid', label: 'Citric acid', kind: 'supply', unit: 'g', asked: 'g', what: 'CIT' },
  { item: 'pectin-powder', label: 'Bought pectin powder', kind: 'supply', unit: 'g', asked: 'g', what: 'PEC' },
  { item: 'lid-regular', label: 'Lids, regular', kind: 'lids', unit: 'lid', asked: 'lids', what: 'LID' },
  { item: 'lid-wide', label: 'Lids, wide', kind: 'lids', unit: 'lid', asked: 'lids', what: 'LDW' },
  { item: 'Q4', label: 'Empty jars, quarter-pint', kind: 'empties', unit: 'jar', asked: 'jars', what: 'JQT' },
  { item: 'HP', label: 'Empty jars, half-pint', kind: 'empties', unit: 'jar', asked: 'jars', what: 'JHP' },
  { item: 'PT', label: 'Empty jars, pint', kind: 'empties', unit: 'jar', asked: 'jars', what: 'JPT' },
  { item: 'QT', label: 'Empty jars, quart', kind: 'empties', unit: 'jar', asked: 'jars', what: 'JQU' },
];

export interface Bought {
  id: string;
  item: string;
  /** In the unit asked for: kilograms of sugar, millilitres of juice, lids, jars. */
  qty: number;
  supplier: string | null;
}

/** The most that is taken in at once without being thought a slip, in the unit kept. */
const MOST_AT_ONCE = 200_000;

export async function receive(ctx: Context, b: Bought): Promise<Written<{ code: string; said: string }>> {
  const known = SUPPLY_ITEMS.find((s) => s.item === b.item);
  if (!known) return { refused: `"${b.item}" is not on the list of supplies` };
  const qty = Math.round(b.qty * (known.asked === 'kg' ? 1000 : 1));
  if (known.asked !== 'kg' && qty !== b.qty) return { refused: `${b.qty} ${known.asked}: whole ones only` };
  if (qty < 1) return { refused: `${b.qty} ${known.asked} is less than is counted` };
  if (qty > MOST_AT_ONCE)
    return { refused: `${b.qty} ${known.asked} of ${known.label.toLowerCase()} at once: was another unit meant?` };
  const act = actOf(ctx, b.id, 'receive', { ...b }, { note: b.supplier });
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, async (tx) => {
    const ofDay = await loadLots(tx, ctx.place.id, { item: b.item, madeFrom: ctx.today, emptied: true });
    const codes = ofDay.map((l) => l.code);
    const entry = receiveSupply({
      act,
      ...known,
      number: freeReceiptNumber(codes, ctx.today, known.what),
      qty,
      roomId: roomOfKind(ctx.place, 'dry')?.id ?? null,
      details: { supplier: b.supplier },
    });
    const code = entry.lots[0]?.code ?? '';
    return { entry, tell: { code, said: `${known.label} came in as ${code}.` } };
  });
}

export interface NewCrop {
  foodId: string;
  label: string;
  row: string;
  count: number;
  unit: string;
  kgPerUnit: number;
  windowFrom: string;
  windowTo: string;
}

/** Adds a crop and its row. A second row of the same crop is added to it. */
export const plantCrop = (ctx: Context, c: NewCrop): Promise<void> =>
  ctx.db.$transaction((tx) =>
    addCrop(tx, ctx.place.id, {
      code: `${c.foodId}-${foodCode(c.foodId).toLowerCase()}-${c.row.toLowerCase().replace(/[^a-z0-9]+/g, '')}`,
      foodId: c.foodId,
      label: c.label,
      unit: c.unit,
      count: c.count,
      gPerUnit: Math.round(c.kgPerUnit * 1000),
      windowFrom: c.windowFrom,
      windowTo: c.windowTo,
      row: c.row,
    }),
  );

/** Today's own boiling water: the figure every setting point of the day is reckoned from. */
export async function readWater(
  ctx: Context,
  input: { id: string; kitchenId: string; centiC: number },
): Promise<Written<{ said: string }>> {
  const kitchen = ctx.place.kitchens.find((k) => k.id === input.kitchenId);
  if (!kitchen) return { refused: 'that kitchen is not here' };
  const act = actOf(ctx, input.id, 'receive', { ...input }, { note: 'boiling water' });
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, async () => ({
    entry: {
      act,
      lots: [],
      movements: [],
      changes: [],
      readings: [
        {
          id: `${input.id}.water`,
          batchId: null,
          kitchenId: kitchen.id,
          kind: 'water',
          day: ctx.today,
          at: act.at,
          value: input.centiC,
          unit: '°C',
          instrument: null,
          note: null,
        },
      ],
    },
    tell: { said: `Water boils at ${(input.centiC / 100).toFixed(1)} °C in the ${kitchen.label.toLowerCase()} today.` },
  }));
}
