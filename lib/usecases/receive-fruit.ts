/** Fruit from elsewhere comes in as a receipt lot: no tree stands behind it, one step back is whom it came from. */
import type { FruitReceived } from '#lib/forms/fruit-received.ts';
import { receiveSupply } from '#lib/ledger/acts/receive-supply.ts';
import { foodCode, freeReceiptNumber } from '#lib/ledger/lot-code.ts';
import { FRUITS } from '#lib/reference/fruits.ts';
import { loadLots, type Written, writeAct } from '#lib/store/ledger-store.ts';
import { roomOfKind } from '#lib/store/place.ts';
import { bothMasses } from '#lib/units/format.ts';
import { actOf } from './act-of.ts';
import type { Context } from './context.ts';
import { checkedDay, instantOn } from './record-harvest.ts';

/** More than this from one hand at once is kept and marked: a car boot of crates. Estimate. */
const MUCH_G = 200_000;

export interface FruitReceivedDone {
  lotId: string;
  code: string;
  said: string;
}

/** Records it; refused when the day lies ahead or the fruit is not in the table. A doubtful weight is saved and flagged. */
export async function receiveFruit(ctx: Context, r: FruitReceived): Promise<Written<FruitReceivedDone>> {
  const fruit = FRUITS.find((f) => f.id === r.foodId);
  if (!fruit) return { refused: `"${r.foodId}" is not a fruit of the table` };
  const day = checkedDay(r.day, ctx.today);
  if (typeof day !== 'string') return day;
  const flags = r.grams > MUCH_G ? [`${r.typed} from one hand at once: was another unit meant?`] : [];
  const act = actOf(ctx, r.id, 'receive', { ...r }, { day, at: instantOn(day, ctx), note: r.supplier });
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, async (tx) => {
    const what = foodCode(r.foodId);
    const ofDay = await loadLots(tx, ctx.place.id, { kinds: ['fruit'], madeFrom: day, emptied: true });
    const codes = ofDay.map((l) => l.code);
    const entry = receiveSupply({
      act,
      kind: 'fruit',
      item: r.foodId,
      foodId: r.foodId,
      what,
      number: freeReceiptNumber(codes, day, what),
      label: fruit.name,
      unit: 'g',
      qty: r.grams,
      grade: r.grade,
      groundFall: r.groundFall,
      roomId: roomOfKind(ctx.place, 'ambient')?.id ?? null,
      flags,
      details: { supplier: r.supplier, boxLot: r.boxLot, typed: r.typed },
    });
    const lot = entry.lots[0];
    const code = lot?.code ?? '';
    const doubt = flags.length > 0 ? ` Marked: ${flags.join('; ')}` : '';
    return {
      entry,
      tell: {
        lotId: lot?.id ?? '',
        code,
        said: `${bothMasses(r.grams)} of ${fruit.name.toLowerCase()} from ${r.supplier} came in as ${code}.${doubt}`,
      },
    };
  });
}

/** The fruits of the table, by name, for the form. */
export const fruitsToReceive = (): { value: string; label: string }[] =>
  FRUITS.map((f) => ({ value: f.id, label: f.name })).sort((a, b) => (a.label < b.label ? -1 : 1));
