import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { FRUITS } from '#lib/reference/fruits.ts';
import { processAdmits } from '#lib/reference/process-admits.ts';
import { PROCESS_ROWS, type ProcessProduct } from '#lib/reference/process-times.ts';

const rowOf = (product: ProcessProduct, pack: 'hot' | 'raw' = 'hot') => {
  const row = PROCESS_ROWS.find((r) => r.product === product && r.pack === pack);
  assert.ok(row);
  return row;
};

describe('fruits of a process row', () => {
  it('are fruits of the table', () => {
    const ids = new Set<string>(FRUITS.map((f) => f.id));
    for (const row of PROCESS_ROWS) {
      for (const id of [...(row.fruitIds ?? []), ...(row.notFor ?? [])])
        assert.ok(ids.has(id), `${row.product}: ${id}`);
    }
  });

  it('never name white peaches or dark elderberries', () => {
    for (const row of PROCESS_ROWS) {
      for (const id of ['peach-white', 'elderberry-european', 'elderberry-american']) {
        assert.ok(!row.fruitIds?.includes(id), row.product);
      }
    }
  });

  it('keep white peaches out of the yellow-flesh row, and raspberries out of hot-packed berries', () => {
    assert.equal(processAdmits(rowOf('peaches-yellow-flesh'), 'peach-white').ok, false);
    assert.equal(processAdmits(rowOf('peaches-yellow-flesh'), 'peach-yellow').ok, true);
    assert.equal(processAdmits(rowOf('berries-whole', 'hot'), 'raspberry-red').ok, false);
    assert.equal(processAdmits(rowOf('berries-whole', 'raw'), 'raspberry-red').ok, true);
  });

  it('keep fig, Asian pear, tomato and melon out of puree (NCHFP fruit puree page)', () => {
    for (const id of ['fig', 'pear-asian', 'tomato', 'melon', 'watermelon']) {
      assert.equal(processAdmits(rowOf('fruit-puree'), id).ok, false, id);
    }
    assert.equal(processAdmits(rowOf('fruit-puree'), 'apple-cooking').ok, true);
  });

  it('refuse an unknown fruit loudly', () => {
    assert.throws(() => processAdmits(rowOf('figs'), 'figs'), RangeError);
  });
});
