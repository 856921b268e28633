/** Fruit that is eaten, sold, given or pressed fresh, and what becomes of fruit on its last day. */
import type { PlanOutlet } from '../instance.ts';
import type { GreedyState } from './greedy-state.ts';

/** Best-paying outlets of the kinds first, soonest-perishing fruit first. */
export function sellFresh(s: GreedyState, day: number, kinds: readonly PlanOutlet['kind'][]): void {
  const open = s.p.outlets.filter((o) => kinds.includes(o.kind) && o.days.includes(day) && o.value > 0);
  for (const o of [...open].sort((a, b) => b.value - a.value)) fillOutlet(s, o, day, () => true);
}

/** What will not see another day goes to whatever outlet takes it rather than to waste. */
export function finishFruit(s: GreedyState, day: number): void {
  const open = s.p.outlets.filter((o) => o.days.includes(day));
  for (const o of [...open].sort((a, b) => b.value - a.value)) fillOutlet(s, o, day, (useBy) => useBy <= day);
}

function fillOutlet(s: GreedyState, o: PlanOutlet, day: number, takes: (useBy: number) => boolean): void {
  const given = s.plan.outlets.filter((x) => x.outlet === o.id && x.day === day).reduce((n, x) => n + x.kg, 0);
  let room = (o.maxKg ?? Infinity) - given;
  for (const f of s.onHand(o.crop, day)) {
    const kg = Math.min(room, f.kg);
    if (kg <= 1e-9 || !o.grades.includes(f.grade) || !takes(f.lot.useBy)) continue;
    room -= kg;
    s.draw(f.lot, day, kg);
    s.plan.outlets.push({ outlet: o.id, grade: f.grade, day, kg });
  }
}
