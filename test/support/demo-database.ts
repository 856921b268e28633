import { copyFileSync, existsSync, mkdtempSync, renameSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, expect } from 'vitest';
import type { Db } from '#lib/store/database/open-database.ts';
import { setPlaceDay } from '#lib/store/place-store.ts';
import { type PlainDate, plainDate } from '#lib/units/plain-date.ts';
import { type Context, openContext } from '#lib/usecases/context.ts';
import { DEMO_PLACE, openDemo } from '#lib/usecases/open-demo.ts';
import { makeFile, openFile } from './sqlite-file.ts';

/** The real instant at which the tests act; the demo's own clock begins there. */
export const DEMO_INSTANT = new Date('2026-06-01T08:00:00Z');

/** A copy of the demo as it stands on that day, on SQLite; its season is played once in a run of the tests. */
export function demoOn(day: string): () => Promise<Db> {
  let folder = '';
  let count = 0;
  const open: Db[] = [];
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'stillroom-demo-'));
    copyFileSync(await playedOnce(day, folder), join(folder, 'demo.db'));
  }, 120_000);
  afterEach(async () => {
    for (const db of open.splice(0)) await db.$disconnect();
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return async () => {
    const copy = join(folder, `copy-${++count}.db`);
    copyFileSync(join(folder, 'demo.db'), copy);
    const db = openFile(copy);
    open.push(db);
    return db;
  };
}

/** The file of that day, played by the first who asks; whole when it gets its name, so that two may play it and neither sees half. */
async function playedOnce(day: string, folder: string): Promise<string> {
  const kept = join(process.env.STILLROOM_TEST_DEMOS ?? folder, `${day}.db`);
  if (existsSync(kept)) return kept;
  const made = join(folder, 'played.db');
  await makeFile(made);
  const db = openFile(made);
  await openDemo(db, plainDate(day), DEMO_INSTANT);
  // What was written last may still stand in the log beside the file; the copies are of the file alone.
  await db.$queryRawUnsafe('PRAGMA wal_checkpoint(TRUNCATE)');
  await db.$disconnect();
  renameSync(made, kept);
  return kept;
}

/** The demo's context at an instant. */
export async function demoContext(db: Db, instant: Date = DEMO_INSTANT): Promise<Context> {
  const context = await openContext(db, DEMO_PLACE, instant);
  if (!context) throw new Error('the demo is not open');
  return context;
}

/** Sets the demo's clock alone, without playing the season's records on: what a test waits for, nothing else happens. */
export async function demoAt(db: Db, day: string, time: string): Promise<Context> {
  await db.$transaction((tx) =>
    setPlaceDay(tx, DEMO_PLACE, day as PlainDate, { time, setAt: DEMO_INSTANT.toISOString() }),
  );
  return demoContext(db);
}

/** What an act told the person; fails the test when it was refused. */
export function doneOf<T>(written: { done: T; replayed: boolean } | { refused: string }): T {
  expect(written).not.toHaveProperty('refused');
  return (written as { done: T }).done;
}

/** Why an act was refused; fails the test when it was not. */
export function refusalOf(answer: object): string {
  expect(answer).toHaveProperty('refused');
  return (answer as { refused: string }).refused;
}
