/** Lays today's cores and peels on the trays that are free for all their drying days. */
import type { GreedyState } from './greedy-state.ts';

export function dryLeftovers(s: GreedyState, day: number): void {
  for (const b of s.p.leftovers) {
    const kg0 = s.fresh.get(`${b.id}|${day}`) ?? 0;
    const days = Array.from({ length: Math.max(1, b.dryDays) }, (_, i) => day + i).filter((t) => t < s.p.horizon);
    const room = b.m2PerKg > 0 ? Math.min(...days.map((t) => s.trays[t] ?? 0)) / b.m2PerKg : Infinity;
    const kg = Math.min(kg0, room);
    if (kg <= 1e-9) continue;
    for (const t of days) s.trays[t] = (s.trays[t] ?? 0) - kg * b.m2PerKg;
    s.plan.dried.push({ leftover: b.id, day, kg });
    if (day + b.dryDays < s.p.horizon) s.shift(b.becomes, day + b.dryDays, kg * b.dryYield);
  }
}
