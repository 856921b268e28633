import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { GRADES, newLot, worstGrade } from '#lib/ledger/lot.ts';
import { DAY } from './ledger-samples.ts';

describe('a new lot', () => {
  it('knows nothing that was not said, and is for the household', () => {
    const lot = newLot({
      id: 'a',
      code: 'A',
      kind: 'jars',
      label: 'Jam',
      unit: 'jar',
      parentActId: 'x',
      madeOn: DAY,
      since: `${DAY}T10:00:00Z`,
    });
    assert.deepEqual(
      [lot.process, lot.seal, lot.hold, lot.address, lot.grade, lot.household],
      [null, null, null, null, null, true],
    );
  });
});

describe('a mixture', () => {
  it('is never graded better than its worst parent', () =>
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...GRADES), { minLength: 1, maxLength: 6 }), (grades) => {
        const mixed = GRADES.indexOf(worstGrade(grades));
        for (const g of grades) assert.ok(mixed >= GRADES.indexOf(g));
        assert.ok(grades.includes(worstGrade(grades)));
      }),
    ));
});
