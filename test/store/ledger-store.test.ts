import { describe, expect, it } from 'vitest';
import type { Entry, Refusal } from '#lib/ledger/entry.ts';
import { counterMovement } from '#lib/ledger/movement.ts';
import { loadActs } from '#lib/store/act-store.ts';
import type { Db } from '#lib/store/database/open-database.ts';
import {
  loadLots,
  lotOfCode,
  movementsOf,
  piecesOf,
  rebuildBalances,
  type Written,
  writeAct,
} from '#lib/store/ledger-store.ts';
import { forEachDatabase } from '#test/support/database.ts';
import { act, entry, jars, smallPlace } from '#test/support/small-place.ts';

const T0 = new Date('2026-06-01T08:00:00Z');
const put = (db: Db, e: Entry, place = 'p', at = T0): Promise<Written<{ said: string }>> =>
  writeAct(db, place, e.act.id, at, async () => ({ entry: e, tell: { said: `did ${e.act.id}` } }));
const out = (lot: string, piece: number) => ({
  from: { lot },
  to: { sink: 'eaten' as const },
  qty: 1,
  grams: 311,
  piece,
});
const outMany = (lot: string, n: number) => ({
  from: { lot },
  to: { sink: 'sold' as const },
  qty: n,
  grams: n * 311,
  piece: null,
});
const onHand = async (db: Db, code: string, place = 'p') => (await lotOfCode(db, place, code))?.onHand;
const counts = async (db: Db) => [
  await db.act.count(),
  await db.lot.count(),
  await db.movement.count(),
  await db.batch.count(),
  await db.reading.count(),
];

forEachDatabase((_name, open) => {
  const opened = async () => {
    const db = await open();
    await smallPlace(db);
    return db;
  };

  describe('an act', () => {
    it('is written with its lots and movements, and read back as it was', async () => {
      const db = await opened();
      const made = jars('a', 6, { flags: ['look'], hold: 'no label', bestBefore: '2026-09-13' as never });
      expect(await put(db, made)).toEqual({ done: { said: 'did make-a' }, replayed: false });
      const lot = await lotOfCode(db, 'p', 'A');
      expect(lot).toEqual({ ...made.lots[0], onHand: 6 });
      const [stored] = await loadActs(db, 'p', {});
      expect(stored).toEqual({ ...made.act, movements: made.movements });
    });

    it('sent twice is one act and is answered the same', async () => {
      const db = await opened();
      await put(db, jars('a', 6));
      const take = entry('take-1', [out('a', 1)]);
      expect(await put(db, take)).toEqual({ done: { said: 'did take-1' }, replayed: false });
      const before = await counts(db);
      expect(await put(db, take)).toEqual({ done: { said: 'did take-1' }, replayed: true });
      expect(await put(db, entry('take-1', [out('a', 2)]))).toEqual({ done: { said: 'did take-1' }, replayed: true });
      expect(await counts(db)).toEqual(before);
      expect(await onHand(db, 'A')).toBe(5);
    });

    it('sent again with something else typed is refused, and nothing is written', async () => {
      const db = await opened();
      await put(db, jars('a', 6));
      const take = entry('take-1', [out('a', 1)]);
      const sent = (payload: Record<string, unknown>) =>
        writeAct(db, 'p', { id: 'take-1', payload }, T0, async () => ({
          entry: { ...take, act: { ...take.act, payload } },
          tell: { said: 'did take-1' },
        }));
      expect(await sent({ count: 1, to: 'eaten', of: { lot: 'a', piece: 1 } })).toMatchObject({ replayed: false });
      expect(await sent({ to: 'eaten', of: { piece: 1, lot: 'a' }, count: 1, note: undefined })).toMatchObject({
        replayed: true,
      });
      const before = await counts(db);
      expect(await sent({ count: 2, to: 'eaten', of: { lot: 'a', piece: 1 } })).toEqual({
        refused: 'this form was sent already, with something else in it: open it again and enter the change',
      });
      expect(await counts(db)).toEqual(before);
      expect(await onHand(db, 'A')).toBe(5);
    });

    it('sent many times at once is one act, and each is answered the same', async () => {
      const db = await opened();
      await put(db, jars('a', 6));
      const answers = await Promise.all(Array.from({ length: 8 }, () => put(db, entry('take-1', [out('a', 1)]))));
      expect(answers.filter((a) => 'done' in a && !a.replayed)).toHaveLength(1);
      expect(answers.every((a) => 'done' in a && a.done.said === 'did take-1')).toBe(true);
      expect(await onHand(db, 'A')).toBe(5);
      expect(await db.act.count({ where: { id: 'take-1' } })).toBe(1);
    });

    it('that is refused leaves nothing behind, whatever it had written before', async () => {
      const db = await opened();
      await put(db, jars('a', 4, { label: 'Quince paste', code: '25298-QUP-A' }));
      const before = await counts(db);
      const both: Entry = {
        ...entry('give', [outMany('a', 6)], jars('b', 1).lots),
        changes: [{ lotId: 'a', hold: 'gone' }],
        readings: [
          {
            id: 'r',
            batchId: null,
            kitchenId: null,
            kind: 'water',
            day: act('x').day,
            at: act('x').at,
            value: 9860,
            unit: '°C',
            instrument: null,
            note: null,
          },
        ],
      };
      expect(await put(db, both)).toEqual({ refused: '4 jar left of Quince paste (25298-QUP-A); 6 asked for' });
      expect(await counts(db)).toEqual(before);
      expect((await lotOfCode(db, 'p', '25298-QUP-A'))?.hold).toBeNull();
      expect(await put(db, entry('give', [outMany('a', 3)]))).toMatchObject({ replayed: false });
      expect(await onHand(db, '25298-QUP-A')).toBe(1);
    });

    it('that is refused by what it read leaves nothing behind', async () => {
      const db = await opened();
      const answer = await writeAct<{ said: string }>(
        db,
        'p',
        'no-way',
        T0,
        async (): Promise<Refusal> => ({ refused: 'no fruit was weighed' }),
      );
      expect(answer).toEqual({ refused: 'no fruit was weighed' });
      expect(await db.act.count()).toBe(0);
    });

    it('that throws half way leaves nothing behind and the next one is written', async () => {
      const db = await opened();
      const broken = writeAct(db, 'p', 'broken', T0, async (tx) => {
        await tx.lot.count();
        throw new Error('the pan boiled over');
      });
      await expect(broken).rejects.toThrow('the pan boiled over');
      await put(db, jars('a', 2));
      expect(await onHand(db, 'A')).toBe(2);
    });

    it('that names a lot nobody has is refused', async () => {
      const db = await opened();
      expect(await put(db, entry('x', [out('nowhere', 1)]))).toEqual({ refused: 'there is no lot nowhere here' });
    });
  });

  describe('two people at once', () => {
    it('who ask for 4 and 3 of the last 4 jars: one has them, the other is told what is left', async () => {
      const db = await opened();
      await put(db, jars('a', 4));
      const asked = [4, 3];
      const answers = await Promise.all(asked.map((n) => put(db, entry(`take-${n}`, [outMany('a', n)]))));
      const kept = asked.filter((_, i) => 'done' in (answers[i] as object));
      expect(kept).toHaveLength(1);
      const left = 4 - (kept[0] as number);
      const other = answers.find((a) => 'refused' in a) as Refusal;
      expect(other.refused).toBe(`${left} jar left of Line a (A); ${7 - (kept[0] as number)} asked for`);
      expect(await onHand(db, 'A')).toBe(left);
    });

    it('who each take the lowest jars there do not take the same ones', async () => {
      const db = await opened();
      await put(db, jars('a', 12));
      const takeTwo = (id: string) =>
        writeAct(db, 'p', id, T0, async (tx) => {
          const here = (await piecesOf(tx, 'p', ['a'])).get('a') ?? [];
          const mine = here.slice(0, 2);
          return {
            entry: entry(
              id,
              mine.map((n) => out('a', n)),
            ),
            tell: { mine },
          };
        });
      const answers = await Promise.all(Array.from({ length: 6 }, (_, i) => takeTwo(`take-${i}`)));
      const taken = answers.flatMap((a) => ('done' in a ? a.done.mine : []));
      expect([...taken].sort((x, y) => x - y)).toEqual(Array.from({ length: 12 }, (_, i) => i + 1));
      expect(await onHand(db, 'A')).toBe(0);
    });
  });

  describe('numbered jars', () => {
    it('go in the order they were written, though the clock stood still or ran back', async () => {
      const db = await opened();
      await put(db, jars('a', 3), 'p', T0);
      await put(db, entry('take-1', [out('a', 1)]), 'p', T0);
      const back = entry('a-back', [counterMovement(out('a', 1))]);
      await put(db, back, 'p', new Date(T0.getTime() - 60_000));
      await put(db, entry('take-2', [out('a', 2)]), 'p', new Date(T0.getTime() - 120_000));
      expect((await piecesOf(db, 'p', ['a'])).get('a')).toEqual([1, 3]);
      expect((await movementsOf(db, 'p', ['a'])).map((m) => m.actId)).toEqual(['make-a', 'take-1', 'a-back', 'take-2']);
    });
  });

  describe('a kept balance', () => {
    it('equals the sum of its movements after any number of acts, kept or refused', async () => {
      const db = await opened();
      let seed = 20250913;
      const next = (n: number) => {
        seed = (seed * 1103515245 + 12345) % 2147483648;
        return Math.floor((seed / 2147483648) * n);
      };
      for (const id of ['a', 'b', 'c']) await put(db, jars(id, 5));
      const lots = ['a', 'b', 'c'];
      let refused = 0;
      for (let i = 0; i < 60; i++) {
        const from = lots[next(3)] as string;
        const to = lots[next(3)] as string;
        const n = 1 + next(4);
        const move =
          next(2) === 0 || from === to
            ? outMany(from, n)
            : { from: { lot: from }, to: { lot: to }, qty: n, grams: n * 311, piece: null };
        const found = { from: { sink: 'found' as const }, to: { lot: to }, qty: next(3), grams: null, piece: null };
        if ('refused' in (await put(db, entry(`s${i}`, found.qty > 0 ? [move, found] : [move])))) refused++;
      }
      expect(refused).toBeGreaterThan(0);
      expect(refused).toBeLessThan(60);
      expect(await rebuildBalances(db, 'p')).toEqual([]);
      for (const lot of await loadLots(db, 'p', { emptied: true })) expect(lot.onHand).toBeGreaterThanOrEqual(0);
    });

    it('that has drifted is named and put right', async () => {
      const db = await opened();
      await put(db, jars('a', 6));
      await put(db, jars('b', 2));
      await db.lot.update({ where: { id: 'a' }, data: { onHand: 7 } });
      expect(await rebuildBalances(db, 'p')).toEqual(['A']);
      expect(await onHand(db, 'A')).toBe(6);
      expect(await rebuildBalances(db, 'p')).toEqual([]);
    });
  });

  describe('two places in one database', () => {
    it('have each their own lots, also under one code', async () => {
      const db = await opened();
      await smallPlace(db, 'q');
      await put(db, jars('a', 6), 'p');
      await put(db, { ...jars('a2', 2, { code: 'A' }), act: act('make-a2') }, 'q');
      expect([await onHand(db, 'A', 'p'), await onHand(db, 'A', 'q')]).toEqual([6, 2]);
      expect((await loadLots(db, 'q')).map((l) => l.id)).toEqual(['a2']);
      expect((await loadActs(db, 'q', {})).map((a) => a.id)).toEqual(['make-a2']);
    });

    it('cannot draw on each other’s lots', async () => {
      const db = await opened();
      await smallPlace(db, 'q');
      await put(db, jars('a', 6), 'p');
      expect(await put(db, entry('steal', [out('a', 1)]), 'q')).toEqual({ refused: 'there is no lot a here' });
      expect(await onHand(db, 'A', 'p')).toBe(6);
    });

    it('do not answer for each other’s acts', async () => {
      const db = await opened();
      await smallPlace(db, 'q');
      await put(db, jars('a', 6), 'p');
      expect(await put(db, jars('a', 6), 'q')).toEqual({ refused: 'this was recorded in another place already' });
      expect(await db.act.count()).toBe(1);
    });
  });

  describe('lots', () => {
    it('are listed oldest first, the empty ones only when asked for', async () => {
      const db = await opened();
      await put(db, jars('new', 1, { madeOn: '2025-09-14' as never }));
      await put(db, jars('old', 1, { madeOn: '2025-09-01' as never }));
      await put(db, jars('gone', 1, { madeOn: '2025-09-10' as never, kind: 'frozen' }));
      await put(db, entry('t', [out('gone', 1)]));
      const ids = async (f: Parameters<typeof loadLots>[2]) => (await loadLots(db, 'p', f)).map((l) => l.id);
      expect(await ids({})).toEqual(['old', 'new']);
      expect(await ids({ emptied: true })).toEqual(['old', 'gone', 'new']);
      expect(await ids({ emptied: true, kinds: ['frozen'] })).toEqual(['gone']);
      expect(await ids({ emptied: true, madeFrom: '2025-09-10' as never })).toEqual(['gone', 'new']);
      expect(await ids({ ids: ['new', 'gone'] })).toEqual(['new']);
    });
  });
});
