/** What the figures of one plan rest on: its worth by parts, its hours, its fruit, its lids, and how far it may be from the best. */
import { type Figure, figure, input } from '#lib/batch/figure.ts';
import type { PlanCheck } from '#lib/plan/check-plan.ts';
import type { PlanInstance } from '#lib/plan/instance.ts';
import type { PlanFacts } from './plan-facts.ts';
import { type LabelledFigure, shown } from './shown-figure.ts';

const twoPlaces = (x: number): number => Math.round(x * 100) / 100;
const estimate = { source: 'ESTIMATE', status: 'estimate' } as const;

export function planFigures(
  p: PlanInstance,
  facts: Omit<PlanFacts, 'plan' | 'check'>,
  { check, bound }: { check: PlanCheck; bound: number | null },
): LabelledFigure[] {
  const lids = p.materials.find((m) => m.id === 'lid-regular')?.stock ?? 0;
  const figures: [string, Figure][] = [
    [
      'Kept',
      figure({
        value: twoPlaces(facts.keptKg),
        unit: 'kg',
        formula: 'fruit in the store and expected - what turns with no use for it',
        inputs: [
          input('in the store and expected', twoPlaces(facts.totalKg), 'kg'),
          input('put up', twoPlaces(facts.cookedKg), 'kg, prepared'),
          input('given, sold, eaten', twoPlaces(facts.outKg), 'kg'),
          input('keeps past the plan', twoPlaces(facts.freshKg), 'kg'),
          input('still lost', twoPlaces(facts.lostKg), 'kg'),
        ],
      }),
    ],
    [
      'Kitchen time',
      figure({
        value: Math.round(facts.minutes),
        unit: 'min',
        formula:
          'for each batch: setting up, its own minutes, minutes a kilogram, its canner loads; as each recipe has them',
        inputs: [input('batches', facts.batches)],
        ...estimate,
      }),
    ],
    [
      'Lids left',
      figure({
        value: facts.lidsLeft,
        unit: '',
        formula: 'lids on hand + bought - one a jar',
        inputs: [
          input('on hand', lids),
          input('bought', facts.lidsBought),
          input(
            'jars',
            facts.jars.reduce((n, j) => n + j.count, 0),
          ),
        ],
      }),
    ],
    [
      'Worth',
      figure({
        value: twoPlaces(check.worth.total),
        unit: '',
        formula:
          'what is put up, by a worth that falls as a line fills its want, + what keeps and what is given or sold - work, what is bought and what is lost; starting worths a household may overrule',
        inputs: Object.entries(check.worth.groups).map(([group, money]) => input(group, twoPlaces(money))),
        ...estimate,
      }),
    ],
    ...(bound === null
      ? []
      : [
          [
            'Below the bound',
            figure({
              value: twoPlaces(Math.max(0, (100 * (bound - facts.worth)) / Math.max(1, Math.abs(facts.worth)))),
              unit: '%',
              formula:
                '(proven bound - worth before jars were made whole) ÷ that worth; no plan is worth more than the bound',
              inputs: [input('bound', twoPlaces(bound)), input('worth', twoPlaces(facts.worth))],
            }),
          ] satisfies [string, Figure],
        ]),
  ];
  return figures.map(([label, f]) => ({ label, figure: shown(f) }));
}
