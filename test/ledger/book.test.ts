import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { emptyBook, movementsOf, overdrawn, post } from '#lib/ledger/book.ts';
import { correction, isRefusal } from '#lib/ledger/entry.ts';
import { moveGrams } from '#lib/ledger/movement.ts';
import { actOf, bought, entryOf, lotOf, made } from './ledger-samples.ts';

const balances = (book: ReturnType<typeof emptyBook>) =>
  Object.fromEntries([...book.lots].map(([id, lot]) => [id, lot.onHand]));

describe('an entry posted to the book', () => {
  it('moves what it says from one lot to the other', () => {
    const book = emptyBook();
    assert.deepEqual(post(book, bought('sugar', 5000)), { posted: true });
    post(book, entryOf('a', [moveGrams({ lot: 'sugar' }, { lot: 'pan' }, 1200)], [lotOf('pan')]));
    assert.deepEqual(balances(book), { sugar: 3800, pan: 1200 });
  });

  it('counts grams on a lot held by mass and pieces on a lot held by pieces, in one movement', () => {
    const book = emptyBook();
    post(book, bought('pan', 2143));
    const filled = { from: { lot: 'pan' }, to: { lot: 'jars' }, qty: 6, grams: 1869, piece: null };
    post(book, entryOf('fill', [filled], [lotOf('jars', { unit: 'jar', kind: 'jars' })]));
    assert.deepEqual(balances(book), { pan: 274, jars: 6 });
  });

  it('sent again changes nothing', () => {
    const book = emptyBook();
    post(book, bought('sugar', 5000));
    const take = entryOf('take', [moveGrams({ lot: 'sugar' }, { sink: 'eaten' }, 1000)]);
    post(book, take);
    const before = structuredClone(balances(book));
    assert.deepEqual(post(book, take), { replayed: true });
    assert.deepEqual(balances(book), before);
    assert.equal(book.entries.length, 2);
  });

  it('that would overdraw a lot is refused whole, with both figures, and leaves the book as it was', () => {
    const book = emptyBook();
    post(book, bought('paste', 4, { unit: 'jar', label: 'Quince paste', code: '25298-QUP-A' }));
    post(book, bought('other', 9, { unit: 'jar' }));
    const before = structuredClone(balances(book));
    const gone = (lot: string, qty: number) => ({
      from: { lot },
      to: { sink: 'given' as const },
      qty,
      grams: null,
      piece: null,
    });
    const answer = post(book, entryOf('give', [gone('other', 1), gone('paste', 6)]));
    assert.deepEqual(answer, { refused: '4 jar left of Quince paste (25298-QUP-A); 6 asked for' });
    assert.deepEqual(balances(book), before);
    assert.ok(!book.acts.has('give'));
  });

  it('adds up all its movements on a lot before it is refused', () => {
    const book = emptyBook();
    post(book, bought('sugar', 1000));
    const half = moveGrams({ lot: 'sugar' }, { sink: 'eaten' }, 600);
    assert.ok(isRefusal(post(book, entryOf('twice', [half, half]))));
    const there = moveGrams({ sink: 'found' }, { lot: 'sugar' }, 300);
    assert.deepEqual(post(book, entryOf('found-too', [half, half, there])), { posted: true });
    assert.equal(book.lots.get('sugar')?.onHand, 100);
  });

  it('that names a lot nobody knows is a fault of the program, not an answer', () => {
    assert.throws(
      () => post(emptyBook(), entryOf('a', [moveGrams({ lot: 'nowhere' }, { sink: 'eaten' }, 1)])),
      /does not exist: nowhere/,
    );
  });

  it('changes the facts it names and no other', () => {
    const book = emptyBook();
    post(book, bought('jars', 6, { unit: 'jar', seal: 'waiting' }));
    post(book, { ...entryOf('seal', []), changes: [{ lotId: 'jars', seal: 'sealed', address: 'B2-S1' }] });
    const lot = book.lots.get('jars');
    assert.deepEqual([lot?.seal, lot?.address, lot?.onHand], ['sealed', 'B2-S1', 6]);
  });
});

describe('a correction', () => {
  const setUp = () => {
    const book = emptyBook();
    post(book, bought('sugar', 5000));
    const use = entryOf('use', [moveGrams({ lot: 'sugar' }, { lot: 'pan' }, 1200)], [lotOf('pan')]);
    post(book, use);
    return { book, use };
  };

  it('restores every balance and deletes nothing', () => {
    const { book, use } = setUp();
    const undo = made(correction(use, actOf('undo')));
    assert.deepEqual([undo.act.kind, undo.act.corrects], ['correct', 'use']);
    post(book, undo);
    assert.deepEqual(balances(book), { sugar: 5000, pan: 0 });
    assert.equal(book.entries.length, 3);
  });

  it('is not itself taken back; the act entered again gives the totals of before', () => {
    const { book, use } = setUp();
    const before = balances(book);
    const undo = made(correction(use, actOf('undo')));
    post(book, undo);
    assert.match((correction(undo, actOf('redo')) as { refused: string }).refused, /Enter the act again/);
    post(book, { ...use, act: actOf('redo'), lots: [] });
    assert.deepEqual(balances(book), before);
  });

  it('is refused when what came in has been used since', () => {
    const { book } = setUp();
    const receipt = book.entries[0];
    assert.ok(receipt);
    assert.match(
      (post(book, made(correction(receipt, actOf('undo')))) as { refused: string }).refused,
      /3800 g left .* 5000 asked/,
    );
  });
});

describe('the figures of a refusal', () => {
  it('name what is left, what it is and what was asked', () => {
    assert.equal(
      overdrawn(lotOf('x', { label: 'Sugar', code: 'R-1' }), 3, 9).refused,
      '3 g left of Sugar (R-1); 9 asked for',
    );
  });
});

describe('movements of a lot', () => {
  it('are those into it and out of it, oldest first', () => {
    const book = emptyBook();
    post(book, bought('sugar', 5000));
    post(book, bought('lids', 10, { unit: 'lid' }));
    post(book, entryOf('use', [moveGrams({ lot: 'sugar' }, { sink: 'eaten' }, 5)]));
    assert.deepEqual(
      movementsOf(book, 'sugar').map((m) => m.qty),
      [5000, 5],
    );
  });
});
