/** Fruit: every kilogram of every lot is somewhere, at its own time, in its own grade. */
import type { PlanInstance } from '../instance.ts';
import type { Plan } from '../plan.ts';
import { gradeOn, isThere, usableShare } from '../usable-fruit.ts';
import { above, type Breach, forbidden, totals, unequal } from './breach.ts';

export function fruitBreaches(p: PlanInstance, plan: Plan): Breach[] {
  return [...amountBreaches(plan), ...lotBreaches(p, plan), ...poolBreaches(p, plan), ...outletBreaches(p, plan)];
}

function amountBreaches(plan: Plan): Breach[] {
  const amounts = Object.entries(plan).flatMap(([name, list]) =>
    (list as readonly object[]).flatMap((x) =>
      Object.entries(x)
        .filter(([k, v]) => typeof v === 'number' && k !== 'day')
        .map(([, v]) => ({ name, v: v as number })),
    ),
  );
  return amounts
    .filter((a) => !(a.v >= -1e-9 && Number.isFinite(a.v)))
    .flatMap((a) => forbidden({ rule: 'amount', ids: [a.name], day: null }, a.v));
}

function lotBreaches(p: PlanInstance, plan: Plan): Breach[] {
  const drawn = totals(
    plan.draws,
    (d) => d.lot,
    (d) => d.kg,
  );
  const rest = totals(
    [...plan.wasted, ...plan.carried],
    (d) => d.lot,
    (d) => d.kg,
  );
  const lots = new Map(p.lots.map((l) => [l.id, l]));
  return [
    ...p.lots.flatMap((l) =>
      unequal({ rule: 'lot', ids: [l.id], day: null }, (drawn.get(l.id) ?? 0) + (rest.get(l.id) ?? 0), l.kg),
    ),
    ...plan.draws
      .filter((d) => {
        const l = lots.get(d.lot);
        return !l || !isThere(l, d.day) || d.day >= p.horizon;
      })
      .flatMap((d) => forbidden({ rule: 'lot day', ids: [d.lot], day: d.day }, d.kg)),
    ...plan.carried
      .filter((c) => (lots.get(c.lot)?.useBy ?? -1) < p.horizon)
      .flatMap((c) => forbidden({ rule: 'lot day', ids: [c.lot], day: null }, c.kg)),
  ];
}

function poolBreaches(p: PlanInstance, plan: Plan): Breach[] {
  const lots = new Map(p.lots.map((l) => [l.id, l]));
  const crops = new Map(p.outlets.map((o) => [o.id, o.crop]));
  const there = totals(
    plan.draws,
    (d) => {
      const l = lots.get(d.lot);
      return l ? `${l.crop}|${gradeOn(l, d.day)}|${d.day}` : '';
    },
    (d) => {
      const l = lots.get(d.lot);
      return l ? d.kg * usableShare(l, d.day) : 0;
    },
  );
  const used = totals(
    [
      ...plan.fruit.map((f) => ({ key: `${f.crop}|${f.grade}|${f.day}`, kg: f.kg })),
      ...plan.outlets.map((o) => ({ key: `${crops.get(o.outlet)}|${o.grade}|${o.day}`, kg: o.kg })),
    ],
    (x) => x.key,
    (x) => x.kg,
  );
  return [...new Set([...there.keys(), ...used.keys()])].flatMap((key) => {
    const [crop, grade, day] = key.split('|') as [string, string, string];
    return unequal({ rule: 'pool', ids: [crop, grade], day: Number(day) }, used.get(key) ?? 0, there.get(key) ?? 0);
  });
}

function outletBreaches(p: PlanInstance, plan: Plan): Breach[] {
  const outlets = new Map(p.outlets.map((o) => [o.id, o]));
  const sums = totals(
    plan.outlets,
    (o) => `${o.day}|${o.outlet}`,
    (o) => o.kg,
  );
  return [
    ...[...sums].flatMap(([key, kg]) => {
      const [day, id] = [Number(key.slice(0, key.indexOf('|'))), key.slice(key.indexOf('|') + 1)];
      return above({ rule: 'outlet', ids: [id], day }, kg, outlets.get(id)?.maxKg ?? Infinity);
    }),
    ...plan.outlets
      .filter((x) => {
        const o = outlets.get(x.outlet);
        return !o?.grades.includes(x.grade) || !o.days.includes(x.day);
      })
      .flatMap((x) => forbidden({ rule: 'outlet', ids: [x.outlet, x.grade], day: x.day }, x.kg)),
  ];
}
