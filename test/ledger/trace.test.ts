import assert from 'node:assert/strict';
import { describe, it } from 'vitest';
import { counterMovement, moveGrams } from '#lib/ledger/movement.ts';
import { lineage, reach } from '#lib/ledger/trace.ts';

const move = (from: string, to: string, g = 100) => moveGrams({ lot: from }, { lot: to }, g);
const pick = moveGrams({ sink: 'harvest' }, { lot: 'fruit' }, 500);
const inPan = move('fruit', 'pan');
const batch = [
  pick,
  inPan,
  move('sugar', 'pan'),
  move('pan', 'jars'),
  moveGrams({ lot: 'pan' }, { sink: 'vapour' }, 5),
];

describe('where a jar comes from and went', () => {
  it('is found both ways', () => {
    const { parents, children } = lineage([{ movements: batch }]);
    assert.deepEqual(reach('jars', parents), ['pan', 'fruit', 'sugar']);
    assert.deepEqual(reach('fruit', children), ['pan', 'jars']);
    assert.deepEqual(reach('sugar', children), ['pan', 'jars']);
    assert.deepEqual(reach('fruit', parents), []);
  });

  it('runs through a set-aside into another batch', () => {
    const later = [move('pan', 'peel'), move('peel', 'pan2'), move('pan2', 'jars2')];
    const { parents, children } = lineage([{ movements: batch }, { movements: later }]);
    assert.deepEqual(reach('jars2', parents), ['pan2', 'peel', 'pan', 'fruit', 'sugar']);
    assert.ok(reach('fruit', children).includes('jars2'));
  });

  it('forgets what was undone, and remembers it entered again', () => {
    const undo = { movements: [counterMovement(inPan)] };
    assert.deepEqual(reach('jars', lineage([{ movements: batch }, undo]).parents), ['pan', 'sugar']);
    const redo = { movements: [inPan] };
    assert.deepEqual(reach('jars', lineage([{ movements: batch }, undo, redo]).parents), ['pan', 'fruit', 'sugar']);
  });

  it('keeps a parent of which only a part was taken back', () => {
    const part = { movements: [move('pan', 'fruit', 40)] };
    const { parents } = lineage([{ movements: batch }, part]);
    assert.ok(reach('jars', parents).includes('fruit'));
    assert.deepEqual(reach('fruit', parents), []);
  });

  it('ends, though lots gave to each other in a ring', () => {
    const ring = lineage([{ movements: [move('a', 'b'), move('b', 'c'), move('c', 'a')] }]);
    assert.deepEqual(reach('a', ring.parents), ['c', 'b']);
  });
});
