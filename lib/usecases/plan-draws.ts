/** Which lots go into which pan: the plan draws lots by day and fills pans by crop and grade; this brings the two together. */
import type { PlanInstance } from '#lib/plan/instance.ts';
import type { Plan } from '#lib/plan/plan.ts';
import { gradeOn, usableShare } from '#lib/plan/usable-fruit.ts';

export interface PanLot {
  lot: string;
  /** As weighed, kg. */
  kg: number;
}

/** Lots by `day|recipe`, in the order they were entered; kilograms as weighed, so that they add up to what is drawn. */
export function lotsOfPans(p: PlanInstance, plan: Plan): Map<string, PanLot[]> {
  const lots = new Map(p.lots.map((l) => [l.id, l]));
  const left = plan.draws.flatMap((d) => {
    const lot = lots.get(d.lot);
    return lot
      ? [
          {
            lot: d.lot,
            day: d.day,
            crop: lot.crop,
            grade: gradeOn(lot, d.day),
            share: usableShare(lot, d.day),
            usable: d.kg * usableShare(lot, d.day),
          },
        ]
      : [];
  });
  const pans = new Map<string, PanLot[]>();
  for (const f of plan.fruit) {
    let want = f.kg;
    const key = `${f.day}|${f.recipe}`;
    const pan = pans.get(key) ?? [];
    for (const d of left.filter((x) => x.day === f.day && x.crop === f.crop && x.grade === f.grade)) {
      const take = Math.min(want, d.usable);
      if (take <= 1e-6) continue;
      d.usable -= take;
      want -= take;
      const kg = take / d.share;
      const known = pan.find((x) => x.lot === d.lot);
      if (known) known.kg += kg;
      else pan.push({ lot: d.lot, kg });
    }
    pans.set(key, pan);
  }
  return pans;
}
