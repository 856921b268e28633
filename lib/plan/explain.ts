/** Why the plan is as it is, in trade words: which limits bind, what is short, what one more would be worth. */
import type { Breach } from './check/breach.ts';
import type { PlanCheck } from './check-plan.ts';
import type { PlanInstance } from './instance.ts';
import type { LimitPrice } from './limit-prices.ts';

export interface BindingLimit {
  /** e.g. "lids", "people's hours", "room on the shelf". */
  words: string;
  rule: string;
  ids: readonly string[];
  day: number;
  used: number;
  room: number;
}

export interface PlanReasons {
  binding: readonly BindingLimit[];
  /** Limits overrun: a plan with any of these cannot be carried out as it stands. */
  shortages: readonly (Breach & { words: string })[];
  /** Dearest first. */
  prices: readonly (LimitPrice & { words: string })[];
}

const WORDS: Readonly<Record<string, string>> = {
  kitchen: 'people’s hours',
  burner: 'rings',
  canner: 'canner loads',
  dryer: 'tray room',
  freeze: 'what the freezer freezes in a day',
  'least batch': 'the least batch',
  variety: 'kinds',
  pin: 'a pinned batch',
  lot: 'fruit',
  outlet: 'what the outlet takes',
};

/** A limit in trade words; named things by their own name. */
export function limitWords(p: PlanInstance, rule: string, ids: readonly string[]): string {
  const id = ids[0] ?? '';
  const named = (list: readonly { id: string; name?: string }[]) => list.find((x) => x.id === id)?.name ?? id;
  if (rule === 'stock' || rule === 'shop') return named(p.materials);
  if (rule === 'vessel') return named(p.vessels);
  if (rule === 'store') return id === 'shelf' ? 'room on the shelf' : `room in the ${id}`;
  if (rule === 'lot')
    return named(p.crops.filter((c) => c.id === p.lots.find((l) => l.id === id)?.crop).map((c) => ({ ...c, id })));
  if (rule === 'outlet') return named(p.outlets);
  return WORDS[rule] ?? rule;
}

export function explainPlan(p: PlanInstance, check: PlanCheck, prices: readonly LimitPrice[] = []): PlanReasons {
  return {
    binding: bindingLimits(p, check),
    shortages: check.breaches.map((b) => ({ ...b, words: limitWords(p, b.rule, b.ids) })),
    prices: prices.map((x) => ({ ...x, words: limitWords(p, x.rule, x.ids) })).sort((a, b) => b.price - a.price),
  };
}

/** Limits used up to the last (within 1e-4) on some day. A supply binds when it is at nothing and none can be bought that day. */
function bindingLimits(p: PlanInstance, { tally: t }: PlanCheck): BindingLimit[] {
  return p.days.flatMap((d, day) => {
    const full = (rule: string, ids: readonly string[], used: number | undefined, room: number): BindingLimit[] =>
      (used ?? 0) > 1e-6 && (used ?? 0) >= room - 1e-4 * Math.max(1, room)
        ? [{ words: limitWords(p, rule, ids), rule, ids, day, used: used ?? 0, room }]
        : [];
    return [
      ...full('kitchen', [], t.handHours[day], d.active),
      ...full('burner', [], t.burnerHours[day], d.burner),
      ...full('canner', [], t.cannerLoads[day], d.cannerLoads),
      ...full('dryer', [], t.trayM2[day], d.dryer),
      ...full('freeze', [], t.frozenKg[day], d.freezeKg ?? Infinity),
      ...p.vessels.flatMap((v) =>
        full('vessel', [v.id], t.vesselHours.get(v.id)?.[day], v.count * (d.vesselH?.[v.id] ?? 24)),
      ),
      ...p.storage.flatMap((s) => full('store', [s.place], t.filledLitres.get(s.place)?.[day], s.free[day] ?? 0)),
      ...p.materials
        .filter((m) => m.price === undefined || !(m.shopDays?.includes(day) ?? true))
        .flatMap((m) => {
          const used = t.used.get(m.id)?.[day] ?? 0;
          return full('stock', [m.id], used, used + (t.stock.get(m.id)?.[day] ?? 0));
        }),
    ];
  });
}
