import { describe, expect, it } from 'vitest';
import { batchOfCode } from '#lib/store/batch-store.ts';
import { loadLots, lotOfCode, rebuildBalances } from '#lib/store/ledger-store.ts';
import { fillBatch } from '#lib/usecases/batch-flow.ts';
import { DEMO_PLACE } from '#lib/usecases/open-demo.ts';
import { takeBack, weighAgain } from '#lib/usecases/put-right.ts';
import { readHarvest } from '#lib/usecases/read-harvest.ts';
import { readLine } from '#lib/usecases/read-pantry.ts';
import { readEntries, readPutRight } from '#lib/usecases/read-put-right.ts';
import { splitCode } from '#lib/usecases/read-trace.ts';
import { seasonSnapshot } from '#lib/usecases/season-snapshot.ts';
import { takeJars } from '#lib/usecases/take-jars.ts';
import { demoAt, demoContext, demoOn, doneOf, refusalOf } from '#test/support/demo-database.ts';
import { CODES, filling, lit, weighedIn } from './damson-day.ts';

const open = demoOn('2025-09-12');

const gift = {
  id: 'take-gift-1',
  slug: 'strawberry-jam',
  count: 3,
  to: 'given' as const,
  who: 'a neighbour',
  person: null,
  at: null,
};
const back = (act: string, id = 'back-it-went') => ({ id, act, reason: 'it did not happen' });

describe('jars that were given by mistake', () => {
  it('come back by number, off the trace, once; the entry and its counter-entry stay in the list', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    const before = (await readLine(ctx, 'strawberry-jam'))?.pieces.map((p) => p.code) ?? [];
    expect(before.length).toBeGreaterThan(3);
    doneOf(await takeJars(ctx, gift));
    const view = await readPutRight(ctx, gift.id, null);
    expect(view?.what).toMatch(/^Given: 3 jars strawberry jam \(.*\), a neighbour$/);
    const backIn = (view?.changes ?? []).map((c) => /(\d+) jars? becomes (\d+) jars?\.$/.exec(c) ?? [0, 0, 0]);
    expect(backIn.reduce((n, [, was, is]) => n + Number(is) - Number(was), 0)).toBe(3);
    const said = doneOf(await takeBack(ctx, back(gift.id))).said;
    for (const line of view?.changes ?? []) expect(said).toContain(line);
    expect((await readLine(ctx, 'strawberry-jam'))?.pieces.map((p) => p.code)).toEqual(before);
    expect(refusalOf(await takeBack(ctx, back(gift.id, 'back-again')))).toBe(
      'It was put right already (it did not happen).',
    );
    expect(refusalOf(await takeBack(ctx, back('back-it-went', 'back-of-back')))).toContain('Enter the act again');
    const [code, piece] = splitCode(before[0] ?? '');
    const lot = await lotOfCode(db, DEMO_PLACE, code);
    const rows = lot ? (await readEntries(ctx, lot, piece)).rows : [];
    expect(rows.find((r) => r.id === gift.id)?.putRight).toBe('it did not happen');
    expect(rows.some((r) => r.what.startsWith('Put right'))).toBe(true);
    // Sent again, nothing more happens.
    expect(await takeBack(ctx, back(gift.id))).toMatchObject({ replayed: true });
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('are eaten jars whose glass has gone on: refused with the numbers', async () => {
    const db = await open();
    const ctx = await demoContext(db);
    doneOf(await takeJars(ctx, { ...gift, id: 'eat-damson', slug: 'strawberry-jam', to: 'eaten' as const, who: null }));
    for (const l of await loadLots(db, DEMO_PLACE, { kinds: ['empties'], item: 'HP' }))
      await db.lot.update({ where: { id: l.id }, data: { onHand: 1 } });
    expect(refusalOf(await takeBack(ctx, back('eat-damson')))).toMatch(/3 jars came in by it, 1 jar is left/);
  });
});

describe('an old harvest with other figures', () => {
  const asked = (soft: number) => ({ perfect: 9000, blemished: 3700, soft, cull: 0 });
  const fix = (soft: number, id = 'fix-harvest', act = 'harvest-damsons') => ({
    id,
    act,
    reason: 'weighed again',
    grades: asked(soft),
  });

  it('says before and after that a batch exceeds its fruit by 0.40 kg, and deletes nothing', async () => {
    const db = await open();
    const ctx = await lit(db);
    const view = await readPutRight(ctx, 'harvest-damsons', asked(640));
    expect(view?.against).toContain('Put that right first');
    expect(view?.against).toContain('25256-DAM-A 520 g');
    const line = 'Batch 25256-DAM-B now exceeds its fruit by 0.40 kg; nothing was deleted.';
    expect(view?.asked?.lines).toContain(line);
    expect(view?.asked?.lines.some((l) => l.startsWith('Still covered: 25256-DAM-A 520 g'))).toBe(true);
    const said = doneOf(await weighAgain(ctx, fix(640))).said;
    expect(said).toContain(line);
    const lot = await lotOfCode(db, DEMO_PLACE, 'H-25255-D3-DAM-1/S');
    expect(lot?.onHand).toBe(0);
    expect(lot?.flags).toEqual(['put right on 2025-09-13: 1.04 kg became 0.64 kg, 0.40 kg more was used than that']);
    expect((await batchOfCode(db, DEMO_PLACE, CODES[1]))?.log.at(-1)?.what).toContain('exceeds its fruit by 0.40 kg');
    expect((await batchOfCode(db, DEMO_PLACE, CODES[0]))?.log.at(-1)?.what ?? '').not.toContain('exceeds');
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
    // The forecast reads the newer entry alone.
    const ours = (await seasonSnapshot(ctx)).harvests.filter(
      (a) => a.id.startsWith('harvest-dam') || a.id.startsWith('fix-'),
    );
    expect(ours.map((a) => a.id)).toEqual(['fix-harvest.again']);
    const g = ours[0]?.movements.reduce((n, m) => n + ('sink' in m.from && m.from.sink === 'harvest' ? m.qty : 0), 0);
    expect(g).toBe(13_340);
  });

  it('put right again to the first figures has the balances of before', async () => {
    const db = await open();
    const ctx = await lit(db);
    const held = async () =>
      (await loadLots(db, DEMO_PLACE, { kinds: ['fruit'], emptied: true })).map((l) => `${l.code} ${l.onHand}`);
    const before = await held();
    doneOf(await weighAgain(ctx, fix(640)));
    expect(refusalOf(await weighAgain(ctx, fix(700, 'fix-first-again')))).toContain('its newer entry is the one');
    doneOf(await weighAgain(ctx, fix(1040, 'fix-back', 'fix-harvest.again')));
    expect(await held()).toEqual(before);
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('takes a grade it did not have, and what covers its use changes only what is left', async () => {
    const db = await open();
    const ctx = await lit(db);
    const said = doneOf(await weighAgain(ctx, { ...fix(1340), grades: { ...asked(1340), cull: 500 } })).said;
    expect(said).not.toContain('exceeds');
    expect((await lotOfCode(db, DEMO_PLACE, 'H-25255-D3-DAM-1/S'))?.onHand).toBe(300);
    expect((await lotOfCode(db, DEMO_PLACE, 'H-25255-D3-DAM-1/C'))?.onHand).toBe(500);
  });

  it('of which nothing was used is taken back whole', async () => {
    const db = await open();
    await weighedIn(db);
    const ctx = await demoAt(db, '2025-09-12', '20:00');
    doneOf(await takeBack(ctx, back('harvest-damsons')));
    expect((await readHarvest(ctx)).pickings.some((p) => p.id === 'harvest-damsons')).toBe(false);
    expect((await lotOfCode(db, DEMO_PLACE, 'H-25255-D3-DAM-1/P'))?.onHand).toBe(0);
  });
});

describe('a batch', () => {
  it('that was started by mistake goes back to its lots and off the stove', async () => {
    const db = await open();
    const ctx = await lit(db);
    doneOf(await takeBack(ctx, back('start-damsons')));
    expect((await lotOfCode(db, DEMO_PLACE, 'H-25255-D3-DAM-1/S'))?.onHand).toBe(1040);
    expect((await batchOfCode(db, DEMO_PLACE, CODES[0]))?.state).toBe('taken back');
    expect(refusalOf(await fillBatch(ctx, filling(CODES[0])))).toBe('25256-DAM-A is taken back already');
    expect(await rebuildBalances(db, DEMO_PLACE)).toEqual([]);
  });

  it('that was filled is not unmade: the reason names its jars', async () => {
    const db = await open();
    const ctx = await lit(db);
    doneOf(await fillBatch(ctx, filling(CODES[0])));
    expect(refusalOf(await takeBack(ctx, back(`fill-${CODES[0]}`)))).toMatch(
      /^6 jars were filled .* counting the shelf/,
    );
    expect(refusalOf(await takeBack(ctx, back('start-damsons')))).toMatch(/25256-DAM-A\/pan: .* is left/);
  });
});
