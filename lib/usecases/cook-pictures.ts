/** What the two pictures of a cook show: where the batch lies between solids and acidity, and the pan's weight over the boil. */
import type { BatchSheet } from '#lib/batch/batch-sheet.ts';
import { gelPh } from '#lib/batch/set-of-batch.ts';

export interface CookPictures {
  /** Of the gel: solids, and the low end of the published pH, with which the set is reckoned. */
  point: { solids: number; ph: number } | null;
  /** Pan weight over the boil. */
  curve: { minute: number; kg: number }[];
  stopKg: number | null;
}

export function cookPictures(s: BatchSheet): CookPictures {
  const pan = s.pans[0];
  return {
    point:
      pan && s.set
        ? {
            solids: pan.balance.brix.value,
            ph: gelPh(s.prepared.map((p) => ({ foodId: p.lot.foodId, grams: p.preparedG.value }))),
          }
        : null,
    curve: curveOf(s),
    stopKg: pan?.boilMin ? pan.balance.finalG.value / 1000 : null,
  };
}

/** Water leaves at the pan's own rate, from the full mix to the pan weight; heating up comes before it. */
function curveOf(s: BatchSheet): CookPictures['curve'] {
  const pan = s.pans[0];
  if (!pan?.boilMin) return [];
  const minutes = pan.boilMin.value;
  const [from, to] = [pan.balance.chargeG.value, pan.balance.finalG.value];
  return [
    { minute: 0, kg: from / 1000 },
    { minute: minutes, kg: to / 1000 },
  ];
}
