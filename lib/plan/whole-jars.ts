/**
 * A plan's jars made whole: by largest remainder within each recipe and day, what is left below a jar goes to the table
 * or the fridge. Jars, lids and canner loads are checked again; where rounding up would need a jar that is not there, it is rounded down.
 */
import type { Breach } from './check/breach.ts';
import { checkPlan } from './check-plan.ts';
import type { PlanInstance } from './instance.ts';
import type { Plan } from './plan.ts';

export interface WholeJars {
  plan: Plan;
  /** Litres for the table, by recipe and day. */
  toTable: Plan['tails'];
  /** What the rounded plan breaks; empty when it can be carried out. */
  breaches: readonly Breach[];
}

type JarLine = Plan['jars'][number];

export function wholeJars(p: PlanInstance, plan: Plan): WholeJars {
  const keys = [...new Set(plan.jars.map((j) => `${j.day}|${j.recipe}`))];
  const rounded = keys.reduce((done, key) => roundPan(p, done, key), plan);
  return { plan: rounded, toTable: rounded.tails, breaches: checkPlan(p, rounded).breaches };
}

function roundPan(p: PlanInstance, plan: Plan, key: string): Plan {
  const here = (x: { day: number; recipe: string }) => `${x.day}|${x.recipe}` === key;
  const lines = plan.jars.filter(here);
  const before = checkPlan(p, plan).breaches.length;
  const put = (jars: readonly JarLine[]): Plan => {
    const litres = (list: readonly JarLine[]) => list.reduce((n, j) => n + j.count * litresOf(p, j.jar), 0);
    const first = lines[0] as JarLine;
    const tail = litres(lines) - litres(jars) + plan.tails.filter(here).reduce((n, x) => n + x.litres, 0);
    return {
      ...plan,
      jars: [...plan.jars.filter((j) => !here(j)), ...jars.filter((j) => j.count > 0)],
      tails: [
        ...plan.tails.filter((x) => !here(x)),
        ...(tail > 1e-9 ? [{ recipe: first.recipe, day: first.day, litres: tail }] : []),
      ],
    };
  };
  const up = put(largestRemainder(p, lines));
  return checkPlan(p, up).breaches.length <= before
    ? up
    : put(lines.map((j) => ({ ...j, count: Math.floor(j.count + 1e-6) })));
}

const litresOf = (p: PlanInstance, jar: string): number => p.jars.find((j) => j.id === jar)?.litres ?? 0;

/** Whole parts first; then one more jar where most was cut off, as long as the litres fill it; then what still fills a smaller jar. */
function largestRemainder(p: PlanInstance, lines: readonly JarLine[]): JarLine[] {
  const recipe = p.recipes.find((r) => r.id === lines[0]?.recipe);
  const first = lines[0] as JarLine;
  const sizes = (recipe?.jars ?? []).map((jar) => lines.find((l) => l.jar === jar) ?? { ...first, jar, count: 0 });
  const whole = sizes.map((l) => ({ ...l, count: Math.floor(l.count + 1e-6) }));
  let left = sizes.reduce((n, l, i) => n + (l.count - (whole[i]?.count ?? 0)) * litresOf(p, l.jar), 0);
  const order = sizes
    .map((l, i) => ({ i, rest: l.count - (whole[i]?.count ?? 0), litres: litresOf(p, l.jar) }))
    .sort((a, b) => b.rest - a.rest || b.litres - a.litres);
  for (const o of [...order.filter((x) => x.rest > 1e-6), ...order.sort((a, b) => b.litres - a.litres)]) {
    const line = whole[o.i];
    if (!line || o.litres <= 0 || left < o.litres - 1e-6) continue;
    line.count += 1;
    left -= o.litres;
  }
  return whole;
}
