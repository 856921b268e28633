import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { describe, it } from 'vitest';
import { checkResults, quantityLines } from './check-table.ts';
import { renderCheckTable } from './render-check-table.ts';

describe('the accuracy section of the README', () => {
  it('carries the table as the program computes it today', () => {
    const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
    const shown = readme.split('<!-- accuracy -->')[1]?.split('<!-- /accuracy -->')[0]?.trim();
    assert.deepEqual(cells(shown ?? ''), cells(renderCheckTable(quantityLines(checkResults()))));
  });
});

/** Cells of a table row by row, whatever the column widths. */
const cells = (table: string): string[][] =>
  table
    .trim()
    .split('\n')
    .map((row) => row.split('|').map((cell) => cell.trim().replace(/^-+$/, '-')));
