import assert from 'node:assert/strict';
import fc from 'fast-check';
import { describe, it } from 'vitest';
import { type Book, emptyBook, post } from '#lib/ledger/book.ts';
import { type Entry, isRefusal } from '#lib/ledger/entry.ts';
import { isLot, moveGrams } from '#lib/ledger/movement.ts';
import { pieceStates } from '#lib/ledger/pieces.ts';
import { type ActMovement, beyond, beyondG, reweigh, takenBack, wentOn } from '#lib/ledger/put-right.ts';
import { actOf, bought, entryOf, flows, lotOf, made } from './ledger-samples.ts';

const historyOf = (book: Book, lotId: string): ActMovement[] =>
  book.entries.flatMap((e) =>
    e.movements
      .filter((m) => (isLot(m.from) && m.from.lot === lotId) || (isLot(m.to) && m.to.lot === lotId))
      .map((m) => ({ ...m, actId: e.act.id })),
  );
const found = (id: string, qty: number): Entry =>
  entryOf(id, [{ from: { sink: 'found' }, to: { lot: 'jam' }, qty, grams: qty * 311, piece: null }]);
const eaten = (id: string, piece: number): Entry =>
  entryOf(id, [{ from: { lot: 'jam' }, to: { sink: 'eaten' }, qty: 1, grams: 311, piece }]);
const opened = (): Book => {
  const book = emptyBook();
  post(book, bought('jam', 3, { unit: 'jar', kind: 'jars' }));
  return book;
};
const back = (book: Book, of: Entry, id = 'undo') =>
  takenBack(of, actOf(id), [{ lot: { id: 'jam', code: '25256-JAM-A' }, movements: historyOf(book, 'jam') }]);

describe('an act on numbered jars that is taken back', () => {
  it('takes the very jars it brought, not the oldest', () => {
    const book = opened();
    const two = found('count', 2);
    post(book, two);
    assert.deepEqual(post(book, made(back(book, two))), { posted: true });
    const states = pieceStates('jam', historyOf(book, 'jam'));
    assert.deepEqual(
      [1, 2, 3, 4, 5].map((n) => states.get(n)?.at),
      ['here', 'here', 'here', 'sink', 'sink'],
    );
  });

  it('is refused with the number of the jar that has gone on since', () => {
    const book = opened();
    const two = found('count', 2);
    post(book, two);
    post(book, eaten('eat', 5));
    assert.deepEqual(back(book, two), { refused: '25256-JAM-A/05 is no longer here' });
  });

  it('leaves every jar as it was before the act, whatever was counted, eaten and taken back (generated)', () =>
    fc.assert(
      fc.property(
        fc.array(fc.oneof(fc.integer({ min: 1, max: 4 }), fc.constant('eat' as const)), { maxLength: 12 }),
        fc.oneof(fc.integer({ min: 1, max: 4 }), fc.constant('eat' as const)),
        (before, last) => {
          const book = opened();
          const act = (x: number | 'eat', id: string): Entry | null => {
            if (x !== 'eat') return found(id, x);
            const here = [...pieceStates('jam', historyOf(book, 'jam'))].find(([, s]) => s.at === 'here');
            return here ? eaten(id, here[0]) : null;
          };
          for (const [i, x] of before.entries()) {
            const entry = act(x, `a${i}`);
            if (entry) post(book, entry);
          }
          const jars = () =>
            [...pieceStates('jam', historyOf(book, 'jam'))].filter(([, s]) => s.at === 'here').map(([n]) => n);
          const was = jars();
          const entry = act(last, 'last');
          fc.pre(entry !== null);
          post(book, entry as Entry);
          const undo = made(back(book, entry as Entry));
          assert.deepEqual(post(book, undo), { posted: true });
          assert.deepEqual(
            jars().sort((a, b) => a - b),
            was.sort((a, b) => a - b),
          );
          assert.equal(book.lots.get('jam')?.onHand, was.length);
        },
      ),
    ));
});

describe('a harvest with other figures', () => {
  const picked = () => {
    const book = emptyBook();
    const harvest = entryOf('pick', [moveGrams({ sink: 'harvest' }, { lot: 'soft' }, 1040)], [lotOf('soft')]);
    post(book, harvest);
    post(book, entryOf('a', [moveGrams({ lot: 'soft' }, { lot: 'pan-a' }, 520)], [lotOf('pan-a')]));
    post(book, entryOf('b', [moveGrams({ lot: 'soft' }, { lot: 'pan-b' }, 520)], [lotOf('pan-b')]));
    return { book, harvest };
  };
  const again = (book: Book, of: Entry, isG: number, foundG = 0, id = 'fix') => {
    const lot = book.lots.get('soft');
    assert.ok(lot);
    const wasG = of.movements.reduce((g, m) => g + (isLot(m.to) && m.to.lot === 'soft' ? (m.grams ?? 0) : 0), 0);
    const r = reweigh(of, { again: actOf(`${id}.again`, 'harvest'), back: actOf(id) }, [{ lot, wasG, isG, foundG }]);
    assert.ok(!isRefusal(r));
    assert.deepEqual(post(book, r.again), { posted: true });
    assert.deepEqual(post(book, r.back), { posted: true });
    return r;
  };

  it('that covers what was used changes only what is left', () => {
    const { book, harvest } = picked();
    again(book, harvest, 1240);
    assert.equal(book.lots.get('soft')?.onHand, 200);
  });

  it('that falls short by 0.4 kg leaves no lot below zero and says which batch exceeds its fruit', () => {
    const { book, harvest } = picked();
    const went = wentOn('soft', 'g', historyOf(book, 'soft'));
    assert.deepEqual(beyond(went, 640), [{ to: { lot: 'pan-b' }, qty: 400 }]);
    again(book, harvest, 640);
    assert.equal(book.lots.get('soft')?.onHand, 0);
    assert.equal(book.lots.get('pan-b')?.onHand, 520);
    const { inflow, outflow } = flows(
      book.entries.flatMap((e) => e.movements),
      'soft',
    );
    assert.ok(outflow <= inflow);
  });

  it('put right twice back to the first figure gives the totals of before', () => {
    const { book, harvest } = picked();
    const first = again(book, harvest, 640);
    again(book, first.again, 1040, 400, 'fix-2');
    assert.equal(book.lots.get('soft')?.onHand, 0);
    const net = book.entries
      .flatMap((e) => e.movements)
      .reduce(
        (g, m) =>
          g +
          ('sink' in m.from && m.from.sink === 'found' ? m.qty : 0) -
          ('sink' in m.to && m.to.sink === 'found' ? m.qty : 0),
        0,
      );
    assert.equal(net, 0);
  });

  it('never goes below zero and finds only what is missing, for any figures (generated)', () =>
    fc.assert(
      fc.property(fc.nat(3000), fc.nat(3000), fc.nat(3000), (wasG, share, isG) => {
        const usedG = Math.min(wasG, share);
        const lot = { id: 'soft', onHand: wasG - usedG };
        const over = beyondG({ lot, wasG, isG, foundG: 0 });
        assert.equal(over, Math.max(0, usedG - isG));
        assert.ok(lot.onHand - wasG + isG + over >= 0);
      }),
    ));
});
