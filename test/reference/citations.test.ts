/** Every table of the room, walked: each figure cites a known source, and no text promises what a table cannot. */
import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { describe, it } from 'vitest';
import { SOURCES } from '#lib/reference/sources.ts';

const room = new URL('../../lib/reference/', import.meta.url);
const files = readdirSync(room).filter((name) => name.endsWith('.ts'));
const STATUSES = ['verified', 'memory', 'computed', 'estimate', 'common-practice', 'secondary'];

const modules = await Promise.all(
  files.map(
    async (name) =>
      [name, (await import(/* @vite-ignore */ new URL(name, room).href)) as Record<string, unknown>] as const,
  ),
);

function walk(value: unknown, visit: (v: object | string, path: string) => void, path: string): void {
  if (typeof value === 'string') visit(value, path);
  if (typeof value !== 'object' || value === null || value instanceof Map) return;
  visit(value, path);
  for (const [key, inner] of Object.entries(value)) walk(inner, visit, `${path}.${key}`);
}

const everything = (visit: (v: object | string, path: string) => void): void => {
  for (const [name, exported] of modules) walk(exported, visit, name);
};

describe('citations', () => {
  it('name a known source and a known status wherever a row cites', () => {
    let cited = 0;
    everything((v, path) => {
      if (typeof v === 'string' || !('source' in v)) return;
      cited++;
      const row = v as { source: string; status: string; also?: string[] };
      for (const key of [row.source, ...(row.also ?? [])]) assert.ok(Object.hasOwn(SOURCES, key), `${path}: ${key}`);
      assert.ok(STATUSES.includes(row.status), `${path}: ${row.status}`);
    });
    assert.ok(cited > 800, `only ${cited} citations walked`);
  });

  it('stand on every row of every exported list', () => {
    const bare: string[] = [];
    // Joined from cited lists, or (ACCURACY) computed over cited rows and computed again by test/published/accuracy.test.ts.
    const joined = new Set(['FRUIT_LIST', 'FRUITS', 'STEAM_STEPS', 'ACCURACY']);
    for (const [name, exported] of modules) {
      for (const [key, value] of Object.entries(exported)) {
        if (!Array.isArray(value) || joined.has(key)) continue;
        for (const [i, row] of value.entries()) {
          if (typeof row !== 'object' || !('source' in row)) bare.push(`${name} ${key}[${i}]`);
        }
      }
    }
    assert.deepEqual(bare, []);
  });

  it('call a row from memory by its name: no row with the source MEMORY or ESTIMATE claims to be read', () => {
    everything((v, path) => {
      if (typeof v === 'string' || !('source' in v)) return;
      const row = v as { source: string; status: string };
      if (row.source === 'MEMORY') assert.equal(row.status, 'memory', path);
      if (row.source === 'ESTIMATE') assert.equal(row.status, 'estimate', path);
    });
  });

  it('never use a word of assurance in any text', () => {
    everything((v, path) => {
      if (typeof v === 'string') assert.doesNotMatch(v, /safe|probabl|likely/i, path);
    });
  });
});
