import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { batchCode, FOOD_CODES, foodCode, harvestCode, receiptCode, setAsideCode } from '#lib/ledger/lot-code.ts';
import { FRUITS } from '#lib/reference/fruits.ts';
import { plainDate } from '#lib/units/plain-date.ts';

const day = plainDate('2025-09-13');

describe('lot codes', () => {
  it('are those of the stories', () => {
    assert.equal(batchCode(day, 'DAM', 0), '25256-DAM-A');
    assert.equal(harvestCode(plainDate('2025-09-12'), 'D3', foodCode('damson'), 1), 'H-25255-D3-DAM-1');
    assert.equal(receiptCode(plainDate('2026-01-23'), 'ORA', 1), 'R-26023-ORA-1');
    assert.equal(setAsideCode(plainDate('2025-09-27'), 'APC', 1), 'S-25270-APC-1');
  });

  it('differ for every batch of a day and use no letter that is mistaken for a digit', () => {
    const codes = Array.from({ length: 600 }, (_, i) => batchCode(day, 'DAM', i));
    assert.equal(new Set(codes).size, 600);
    assert.ok(
      codes.every((c) => /^25256-DAM-[A-HJ-NP-Z]{1,2}$/.test(c)),
      codes.find((c) => /[IO]$/.test(c)),
    );
    assert.deepEqual(
      [23, 24, 25].map((i) => batchCode(day, 'DAM', i)),
      ['25256-DAM-Z', '25256-DAM-AA', '25256-DAM-AB'],
    );
  });

  it('have three capitals for every fruit of the table', () => {
    for (const { id } of FRUITS) assert.match(FOOD_CODES[id] ?? '', /^[A-Z]{3}$/, id);
    assert.equal(foodCode('something-else'), 'SOM');
  });
});
