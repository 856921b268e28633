/**
 * What must hold of the ledger whatever people do and in whatever order it arrives: jars are filled, taken, taken back,
 * entered again, sent twice and asked for when there are none.
 */
import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { takePieces } from '#lib/ledger/acts/take-pieces.ts';
import { type Book, emptyBook, movementsOf, post } from '#lib/ledger/book.ts';
import { type Entry, isRefusal } from '#lib/ledger/entry.ts';
import { isLot } from '#lib/ledger/movement.ts';
import { pieceStates, piecesHere } from '#lib/ledger/pieces.ts';
import { takenBack } from '#lib/ledger/put-right.ts';
import { actOf, bought, flows } from './ledger-samples.ts';

const LOTS = ['jam', 'jelly', 'sauce'];
const ENDS = ['eaten', 'given', 'sold', 'spoiled'] as const;
type End = (typeof ENDS)[number];

type Step =
  | { do: 'make'; lot: number; n: number }
  | { do: 'take'; lot: number; pieces: number[]; to: End }
  | { do: 'undo'; of: number }
  | { do: 'again'; of: number };

const lotIndex = fc.nat(LOTS.length - 1);
const step: fc.Arbitrary<Step> = fc.oneof(
  {
    weight: 2,
    arbitrary: fc.record({ do: fc.constant('make' as const), lot: lotIndex, n: fc.integer({ min: 1, max: 12 }) }),
  },
  {
    weight: 5,
    arbitrary: fc.record({
      do: fc.constant('take' as const),
      lot: lotIndex,
      pieces: fc.uniqueArray(fc.integer({ min: 0, max: 20 }), { minLength: 1, maxLength: 4 }),
      to: fc.constantFrom(...ENDS),
    }),
  },
  { weight: 2, arbitrary: fc.record({ do: fc.constant('undo' as const), of: fc.nat(40) }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('again' as const), of: fc.nat(40) }) },
);

/** The book of a pantry that began with three jars of each line. */
function opened(): Book {
  const book = emptyBook();
  for (const lot of LOTS) post(book, bought(lot, 3, { unit: 'jar', kind: 'jars', details: { netG: 311 } }));
  return book;
}

/** Plays one step; takes only jars that stand there, as the pantry offers them. An act is undone once. */
function play(book: Book, s: Step, i: number, undone: Set<string>): void {
  if (s.do === 'make') {
    const lot = LOTS[s.lot] as string;
    post(book, {
      act: actOf(`s${i}`),
      lots: [],
      movements: [{ from: { sink: 'found' }, to: { lot }, qty: s.n, grams: null, piece: null }],
      changes: [],
    });
  } else if (s.do === 'take') {
    const id = LOTS[s.lot] as string;
    const here = piecesHere(pieceStates(id, movementsOf(book, id)));
    const pieces = [...new Set(s.pieces.map((p) => here[p % Math.max(1, here.length)]).filter((p) => p !== undefined))];
    const lot = book.lots.get(id);
    assert.ok(lot);
    if (pieces.length > 0)
      post(
        book,
        takePieces({
          act: actOf(`s${i}`, 'take'),
          to: s.to,
          pieces: pieces.map((piece) => ({ lot, piece })),
          returns: null,
        }),
      );
  } else {
    const of = book.entries[s.of % book.entries.length] as Entry;
    if (s.do === 'again') assert.deepEqual(post(book, of), { replayed: true });
    else if (of.movements.length > 0 && !undone.has(of.act.id)) {
      const undo = undoOf(book, of, `s${i}`);
      if (isRefusal(undo)) assert.ok(of.act.kind === 'correct' || /no longer here/.test(undo.refused), undo.refused);
      else if (!isRefusal(post(book, undo))) undone.add(of.act.id);
    }
  }
}

/** Taken back by the very jars it moved, as the screen does it. */
const undoOf = (book: Book, of: Entry, id: string) =>
  takenBack(
    of,
    actOf(id),
    LOTS.map((lot) => ({
      lot: { id: lot, code: lot },
      movements: book.entries.flatMap((e) =>
        e.movements
          .filter((m) => (isLot(m.from) && m.from.lot === lot) || (isLot(m.to) && m.to.lot === lot))
          .map((m) => ({ ...m, actId: e.act.id })),
      ),
    })),
  );

const played = (steps: Step[]): Book => {
  const book = opened();
  const undone = new Set<string>();
  for (const [i, s] of steps.entries()) play(book, s, i, undone);
  return book;
};

const steps = fc.array(step, { minLength: 1, maxLength: 40 });
const all = (book: Book) => book.entries.flatMap((e) => e.movements);
/** Jars that ended one way, less those taken back from there. */
const ended = (book: Book, lot: string, to: string) =>
  all(book).reduce((n, m) => {
    if ('lot' in m.from && m.from.lot === lot && 'sink' in m.to && m.to.sink === to) return n + m.qty;
    if ('lot' in m.to && m.to.lot === lot && 'sink' in m.from && m.from.sink === to) return n - m.qty;
    return n;
  }, 0);

describe('whatever is done', () => {
  it('no more leaves a lot than came into it', () =>
    fc.assert(
      fc.property(steps, (s) => {
        const book = played(s);
        for (const [id, lot] of book.lots) {
          const { inflow, outflow } = flows(all(book), id);
          assert.ok(outflow <= inflow, `${id}: ${outflow} of ${inflow}`);
          assert.equal(lot.onHand, inflow - outflow);
        }
      }),
    ));

  it('on hand is carried plus made less eaten, given, sold and spoiled', () =>
    fc.assert(
      fc.property(steps, (s) => {
        const book = played(s);
        for (const [id, lot] of book.lots) {
          const came = 0 - ended(book, id, 'bought') - ended(book, id, 'found');
          assert.equal(lot.onHand, came - ENDS.reduce((n, to) => n + ended(book, id, to), 0));
        }
      }),
    ));

  it('every jar is in exactly one state (story E2), and as many are there as the balance says', () =>
    fc.assert(
      fc.property(steps, (s) => {
        const book = played(s);
        for (const [id, lot] of book.lots) {
          const states = pieceStates(id, movementsOf(book, id));
          const here = piecesHere(states);
          assert.equal(here.length, lot.onHand, id);
          assert.equal(new Set(here).size, here.length);
          const numbers = [...states.keys()].sort((a, b) => a - b);
          assert.deepEqual(
            numbers,
            numbers.map((_, i) => i + 1),
          );
        }
      }),
    ));

  it('sending everything again changes nothing', () =>
    fc.assert(
      fc.property(steps, (s) => {
        const book = played(s);
        const before = structuredClone([...book.lots.values()]);
        const written = book.entries.length;
        for (const entry of [...book.entries].reverse()) assert.deepEqual(post(book, entry), { replayed: true });
        assert.deepEqual([...book.lots.values()], before);
        assert.equal(book.entries.length, written);
      }),
    ));

  it('undoing any act that can be undone and entering it again gives the same totals (story E6)', () => {
    let redone = 0;
    fc.assert(
      fc.property(steps, fc.nat(60), (s, n) => {
        const book = played(s);
        const of = book.entries[n % book.entries.length] as Entry;
        fc.pre(!book.entries.some((e) => e.act.corrects === of.act.id));
        const undo = undoOf(book, of, 'undo');
        const totals = () => [...book.lots.values()].map((l) => l.onHand);
        const before = totals();
        if (isRefusal(undo) || isRefusal(post(book, undo))) {
          assert.deepEqual(totals(), before);
          return;
        }
        assert.deepEqual(post(book, { ...of, act: actOf('redo'), lots: [] }), { posted: true });
        assert.deepEqual(totals(), before);
        for (const [id, lot] of book.lots)
          assert.equal(piecesHere(pieceStates(id, movementsOf(book, id))).length, lot.onHand);
        redone += 1;
      }),
      { numRuns: 300 },
    );
    assert.ok(redone > 50, `${redone} were undone and entered again`);
  });
});

describe('acts that arrive in another order', () => {
  const taken = fc.array(
    fc.record({ lot: lotIndex, n: fc.integer({ min: 1, max: 9 }), to: fc.constantFrom(...ENDS) }),
    { minLength: 2, maxLength: 15 },
  );
  const shuffled = taken.chain((t) =>
    fc.tuple(
      fc.constant(t),
      fc.shuffledSubarray(
        t.map((_, i) => i),
        { minLength: t.length },
      ),
    ),
  );
  const stocked = (n: number) => {
    const book = emptyBook();
    for (const lot of LOTS) post(book, bought(lot, n, { unit: 'jar' }));
    return book;
  };
  const takeOf = (t: { lot: number; n: number; to: End }, i: number): Entry => ({
    act: actOf(`t${i}`, 'take'),
    lots: [],
    movements: [{ from: { lot: LOTS[t.lot] as string }, to: { sink: t.to }, qty: t.n, grams: null, piece: null }],
    changes: [],
  });

  it('leave the same on hand when there is enough for all', () =>
    fc.assert(
      fc.property(shuffled, ([t, order]) => {
        const [one, other] = [stocked(200), stocked(200)];
        for (const [i, x] of t.entries()) post(one, takeOf(x, i));
        for (const i of order) post(other, takeOf(t[i] as (typeof t)[number], i));
        assert.deepEqual(
          new Map([...one.lots].map(([k, l]) => [k, l.onHand])),
          new Map([...other.lots].map(([k, l]) => [k, l.onHand])),
        );
      }),
    ));

  it('never take a line below zero when there is not enough, and keep the sum in any order', () =>
    fc.assert(
      fc.property(shuffled, ([t, order]) => {
        const book = stocked(10);
        for (const i of order) post(book, takeOf(t[i] as (typeof t)[number], i));
        for (const [id, lot] of book.lots) {
          assert.ok(lot.onHand >= 0);
          assert.equal(lot.onHand, 10 - ENDS.reduce((n, to) => n + ended(book, id, to), 0));
        }
      }),
    ));
});
