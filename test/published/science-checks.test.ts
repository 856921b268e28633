import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { checkResults, quantityLines, residueOf } from './check-table.ts';
import { COMPUTED, drySucroseAt60, unmeteredPh } from './computed-rows.ts';
import { renderCheckTable } from './render-check-table.ts';
import { SCIENCE_CHECKS } from './science-checks.ts';
import { KNOWN_MISSES, TOLERANCES } from './tolerances.ts';

const results = checkResults();
const lines = quantityLines(results);

describe('the published figures', () => {
  it('are 91, each under its own number, with a source and a status', () => {
    assert.equal(SCIENCE_CHECKS.rows.length, 91);
    assert.equal(new Set(SCIENCE_CHECKS.rows.map((row) => row.id)).size, 91);
    for (const row of SCIENCE_CHECKS.rows) {
      assert.ok(row.source.length > 3, row.id);
      assert.ok(row.status === 'verified' || row.status === 'memory', row.id);
      assert.ok(row.expected.low <= row.expected.high, row.id);
    }
  });

  it('are all computed: no row is skipped and every result is a number', () => {
    assert.deepEqual(
      results.map((r) => r.row.id),
      SCIENCE_CHECKS.rows.map((row) => row.id),
    );
    for (const r of results) assert.ok(Number.isFinite(r.computed), r.row.id);
    assert.deepEqual(Object.keys(COMPUTED).sort(), [...new Set(results.map((r) => r.row.quantity))].sort());
    assert.deepEqual(Object.keys(TOLERANCES).sort(), Object.keys(COMPUTED).sort());
  });

  it.each(lines)('are met for $quantity', ({ quantity }) => {
    const tolerance = TOLERANCES[quantity];
    assert.ok(tolerance);
    const met = results.filter((r) => r.row.quantity === quantity && !KNOWN_MISSES[r.row.id]);
    for (const r of met) {
      const says = `${r.row.id} ${r.row.what}: ${r.computed} against ${r.row.expected.low}-${r.row.expected.high}`;
      assert.ok(Math.abs(r.residue) <= tolerance.max, says);
    }
    const mean = met.reduce((sum, r) => sum + Math.abs(r.residue), 0) / met.length;
    assert.ok(met.length > 0 && mean <= tolerance.mean, `${quantity}: mean ${mean}`);
  });

  it('that the program misses are kept, each with the residue it is known to have', () => {
    for (const [id, miss] of Object.entries(KNOWN_MISSES)) {
      const r = results.find((one) => one.row.id === id);
      assert.ok(r, id);
      assert.ok(Math.abs(r.residue - miss.residue) <= 0.006, `${id}: ${r.residue} against ${miss.residue}`);
      assert.ok(Math.abs(r.residue) > (TOLERANCES[r.row.quantity]?.max ?? 0), `${id} is no miss any more`);
      assert.ok(miss.why.length > 10, id);
    }
  });

  it('count an error only outside a printed range', () => {
    assert.equal(residueOf(4.7, { low: 0, high: 4.6 }).toFixed(2), '0.10');
    assert.equal(residueOf(5.5, { low: 5, high: 6 }), 0);
    assert.equal(residueOf(4.5, { low: 5, high: 6 }), -0.5);
  });

  it('include the dry sucrose line of the handbook as it is quoted', () => {
    assert.equal(drySucroseAt60().toFixed(3), '1.394');
  });

  it('print one table', () => {
    const table = renderCheckTable(lines);
    process.stdout.write(`\n${table}\n`);
    assert.equal(table.trim().split('\n').length, lines.length + 2);
    assert.equal(
      lines.reduce((sum, line) => sum + line.rows, 0),
      91,
    );
  });
});

describe('pH without a meter', () => {
  const errors = SCIENCE_CHECKS.pH24.rows.map((fruit) => ({ id: fruit.fruitId, e: unmeteredPh(fruit) - fruit.pH }));

  it('errs on 24 fruits by -0.13 in the mean: to the side on which it must never be trusted', () => {
    assert.equal(errors.length, 24);
    const bias = errors.reduce((sum, { e }) => sum + e, 0) / errors.length;
    assert.equal(bias.toFixed(2), '-0.13');
  });

  it('is worst on sweet cherry, 0.59 too acid', () => {
    const worst = errors.reduce((a, b) => (Math.abs(b.e) > Math.abs(a.e) ? b : a));
    assert.equal(worst.id, 'cherry-sweet');
    assert.equal(worst.e.toFixed(2), '-0.59');
  });
});
