import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { counterMovement, type Movement } from '#lib/ledger/movement.ts';
import { pieceCode, pieceStates, piecesHere } from '#lib/ledger/pieces.ts';

const into = (qty: number): Movement => ({ from: { lot: 'pan' }, to: { lot: 'jars' }, qty, grams: null, piece: null });
const out = (piece: number, to: Movement['to'] = { sink: 'eaten' }): Movement => ({
  from: { lot: 'jars' },
  to,
  qty: 1,
  grams: 311,
  piece,
});

describe('numbered jars', () => {
  it('are numbered on from the highest as they come', () => {
    assert.deepEqual(piecesHere(pieceStates('jars', [into(3), into(2)])), [1, 2, 3, 4, 5]);
  });

  it('are each there, or where they last went', () => {
    const states = pieceStates('jars', [into(4), out(2), out(3, { lot: 'open' }), out(4, { sink: 'given' })]);
    assert.deepEqual(states.get(1), { at: 'here' });
    assert.deepEqual(states.get(2), { at: 'sink', sink: 'eaten' });
    assert.deepEqual(states.get(3), { at: 'lot', lot: 'open' });
    assert.deepEqual(states.get(4), { at: 'sink', sink: 'given' });
  });

  it('come back under their own number when the act is undone', () => {
    const eaten = out(2);
    assert.deepEqual(piecesHere(pieceStates('jars', [into(3), eaten, counterMovement(eaten)])), [1, 2, 3]);
  });

  it('leave lowest first where no number was said', () => {
    const two: Movement = { from: { lot: 'jars' }, to: { sink: 'missing' }, qty: 2, grams: null, piece: null };
    assert.deepEqual(piecesHere(pieceStates('jars', [into(4), out(1), two])), [4]);
  });

  it('keep their number in the lot they moved to', () => {
    const moved = out(4, { lot: 'open' });
    assert.deepEqual(piecesHere(pieceStates('open', [into(6), moved])), [4]);
  });

  it('are printed with two digits after the lot', () => {
    assert.equal(pieceCode('25256-DAM-A', 1), '25256-DAM-A/01');
    assert.equal(pieceCode('25256-DAM-A', 112), '25256-DAM-A/112');
  });
});
