import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { describe, it } from 'vitest';
import { checkResults, quantityLines } from './check-table.ts';
import { renderCheckTable } from './render-check-table.ts';

describe('the accuracy section of the README', () => {
  it('carries the table as the program computes it today', () => {
    const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
    const shown = readme.split('<!-- accuracy -->')[1]?.split('<!-- /accuracy -->')[0]?.trim();
    assert.equal(shown, renderCheckTable(quantityLines(checkResults())).trim());
  });
});
