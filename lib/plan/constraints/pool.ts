/**
 * `pool`: once weighed out and trimmed, fruit of one crop and grade is interchangeable.
 *   sum_k u(k,t) draw(k,t) = sum_r fruit(r,c,g,t) + sum_o outlet(o,g,t)      for each crop c, grade g, day t
 * with u(k,t) = (1 - loss)^(days waited): trimming happens here.
 */
import type { FruitGrade } from '../instance.ts';
import type { Term } from '../model-builder.ts';
import type { PlanFrame } from '../plan-frame.ts';
import { gradeOn, isThere, usableShare } from '../usable-fruit.ts';

const GRADES: readonly FruitGrade[] = ['perfect', 'blemished', 'soft'];

export function pool(f: PlanFrame): void {
  for (const c of f.data.crops)
    for (const day of f.days)
      for (const grade of GRADES)
        f.row({ rule: 'pool', ids: [c.id, grade], day, lower: 0, upper: 0 }, [
          ...drawn(f, c.id, grade, day),
          ...used(f, c.id, grade, day),
        ]);
}

const drawn = (f: PlanFrame, crop: string, grade: FruitGrade, day: number): Term[] =>
  f.setup.classes
    .filter((k) => k.crop === crop && isThere(k, day) && gradeOn(k, day) === grade)
    .flatMap((k) => f.term({ kind: 'draw', ids: [k.id], day }, usableShare(k, day)));

const used = (f: PlanFrame, crop: string, grade: FruitGrade, day: number): Term[] => [
  ...f.data.recipes.flatMap((r) => f.term({ kind: 'fruit', ids: [r.id, crop, grade], day }, -1)),
  ...f.data.outlets
    .filter((o) => o.crop === crop)
    .flatMap((o) => f.term({ kind: 'outlet', ids: [o.id, grade], day }, -1)),
];
