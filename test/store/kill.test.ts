import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loadActs } from '#lib/store/act-store.ts';
import type { Db } from '#lib/store/database/open-database.ts';
import { loadLots, rebuildBalances } from '#lib/store/ledger-store.ts';
import { smallPlace } from '#test/support/small-place.ts';
import { makeFile, openFile } from '#test/support/sqlite-file.ts';

/** How often the program is killed, and the longest it may live after its first answer, in milliseconds. */
const KILLS = 21;
const LONGEST_LIFE = 250;

const support = (name: string) => fileURLToPath(new URL(`../support/${name}`, import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'stillroom-kill-'));
const path = join(folder, 'killed.db');

async function withDatabase<T>(work: (db: Db) => Promise<T>): Promise<T> {
  const db = openFile(path);
  try {
    return await work(db);
  } finally {
    await db.$disconnect();
  }
}

/** Starts the program, kills it without warning a random time after its first answer, and gives the ids it had printed. */
async function recordAndKill(run: string): Promise<string[]> {
  const child = spawn(
    process.execPath,
    ['--import', support('run-typescript.mjs'), support('record-until-killed.ts'), path, run],
    {
      env: { ...process.env, STILLROOM_TRANSPILED: folder, NODE_OPTIONS: '' },
      stdio: ['ignore', 'pipe', 'pipe'],
    },
  );
  let printed = '';
  let wrong = '';
  child.stderr.on('data', (text) => {
    wrong += String(text);
  });
  child.stdout.on('data', (text) => {
    if (printed === '') setTimeout(() => child.kill('SIGKILL'), Math.random() * LONGEST_LIFE);
    printed += String(text);
  });
  const [, signal] = await once(child, 'close');
  if (signal !== 'SIGKILL') throw new Error(`the program ended by itself: ${wrong}`);
  return printed.split('\n').slice(0, -1);
}

const gradesOf = (payload: Record<string, unknown>) => Object.values(payload.grades as Record<string, number>);

describe('a program killed while it records', () => {
  beforeAll(async () => {
    await makeFile(path);
    await withDatabase((db) => smallPlace(db));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it(`has lost nothing it had acknowledged and written nothing by halves, ${KILLS} times over`, {
    timeout: 120_000,
  }, async () => {
    const acknowledged = new Set<string>();
    for (let kill = 1; kill <= KILLS; kill++) {
      const ids = await recordAndKill(`run-${kill}`);
      expect(ids.length).toBeGreaterThan(0);
      for (const id of ids) acknowledged.add(id);
      await withDatabase(async (db) => {
        expect(await db.$queryRawUnsafe('PRAGMA integrity_check')).toEqual([{ integrity_check: 'ok' }]);
        const acts = await loadActs(db, 'p', {});
        const stored = new Set(acts.map((a) => a.id));
        expect([...acknowledged].filter((id) => !stored.has(id))).toEqual([]);
        // At most the one act that was written and not yet answered, in each run so far.
        expect(stored.size - acknowledged.size).toBeLessThanOrEqual(kill);
        const lots = new Map((await loadLots(db, 'p', { emptied: true })).map((l) => [l.id, l]));
        for (const act of acts) {
          expect(act.movements.map((m) => m.grams)).toEqual(gradesOf(act.payload));
          for (const m of act.movements) expect('lot' in m.to ? lots.get(m.to.lot)?.onHand : null).toBe(m.grams);
        }
        expect(lots.size).toBe(acts.length * 3);
        expect(await db.movement.count()).toBe(acts.length * 3);
        expect(await rebuildBalances(db, 'p')).toEqual([]);
      });
    }
    expect(acknowledged.size).toBeGreaterThan(KILLS * 2);
  });
});
