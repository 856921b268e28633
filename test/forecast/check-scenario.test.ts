import assert from 'node:assert/strict';
import { describe, test } from 'vitest';
import { checkScenario } from '#lib/forecast/check-scenario.ts';
import type { ProductSpec, Scenario } from '#lib/forecast/scenario.ts';
import { holding, product, scenario } from './toy-scenario.ts';

const jam = (over: Partial<ProductSpec> = {}) => product({ id: 'jam', ...over });
const refuses = (sc: Scenario, why: RegExp) =>
  assert.throws(() => checkScenario(sc), { name: 'RangeError', message: why });
const of = (over: Partial<Scenario> & { jam?: Partial<ProductSpec> }) => {
  const { jam: spec, ...rest } = over;
  return scenario({ products: [jam(spec)], ...rest });
};

describe('a scenario beyond the counters is refused by name and limit', () => {
  test('weeks and kitchen hours', () => {
    refuses(of({ weeks: 105 }), /105 weeks: between 1 and 104/);
    refuses(of({ hours: [1, 2] }), /2 of 52 weeks/);
  });

  test('use, opened jars, jars on their way back, jars on hand', () => {
    refuses(of({ jam: { usePerWeek: 41 } }), /jam: 41 a week/);
    refuses(of({ jam: { openWeeks: 16 } }), /under 16 weeks, not 16/);
    refuses(of({ jam: { returnLagWeeks: 0 } }), /1 to 15 weeks, not 0/);
    refuses(of({ lots: [{ product: 0, jars: 40_000, bestByWeek: 3 }] }), /40000 jars/);
    refuses(of({ events: [{ id: 'fair', week: 1, product: 0, mean: 80, returnProb: 0 }] }), /fair: .*above 60/);
  });

  test('two records that would share their random numbers', () => {
    refuses(scenario({ products: [jam(), jam()] }), /Two products share an id/);
    const fair = { id: 'fair', week: 1, product: 0, mean: 3, returnProb: 0 };
    refuses(of({ events: [fair, fair] }), /Two events share an id/);
  });

  test('records that refer to nothing', () => {
    refuses(of({ jam: { crop: 0 } }), /jam: there is no crop 0/);
    refuses(of({ jam: { container: 3 } }), /jam: there is no container 3/);
    refuses(of({ jam: { perColumn: 0 } }), /does not fit/);
    refuses(of({ lots: [{ product: 2, jars: 1, bestByWeek: 3 }] }), /product 2/);
  });

  test('a whole holding passes', () => checkScenario(holding('best').sc));
});
