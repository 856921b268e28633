import assert from 'node:assert/strict';
import fc from 'fast-check';
import { test } from 'vitest';
import { actId } from '#components/act-id.ts';
import { harvestAct, isGhostTap, weightDoubt } from '#components/harvest-act.ts';
import {
  afterTap,
  emptyPad,
  GRADES,
  gradeSplit,
  netGrams,
  type PadRow,
  type PadState,
  type PadTap,
} from '#components/harvest-pad-state.ts';

const containers = [
  { id: 'blue-bucket', label: 'blue bucket', tareG: 620 },
  { id: 'crate', label: 'crate', tareG: 1400 },
];
const row: PadRow = {
  id: 'D3',
  label: 'row D3',
  cropId: 'damson',
  cropLabel: 'Damson',
  usualKg: 12,
  usualContainer: 'blue-bucket',
};
const frame = { id: 'act-1', day: '2025-09-12', containers };

const digits = (text: string): PadTap[] => [...text].map((key) => ({ do: 'digit', key }));
const pad = (taps: readonly PadTap[], from: PadState = emptyPad('blue-bucket')): PadState =>
  taps.reduce(afterTap, from);
/** The record button is the last tap of every count. */
const count = (taps: readonly PadTap[]) => ({
  taps: taps.filter((t) => t.do !== 'digit' && t.do !== 'backspace').length + 1,
  keys: taps.filter((t) => t.do === 'digit' || t.do === 'backspace').length,
});
const next: PadTap = { do: 'next-bucket' };
const choose: PadTap = { do: 'row', row };

test('one bucket, all perfect, is recorded with two taps and four keys (budget: four and four)', () => {
  const taps = [choose, ...digits('5.62')];
  assert.deepEqual(count(taps), { taps: 2, keys: 4 });
  const result = harvestAct(pad(taps), frame);
  assert.ok(result.ok);
  assert.equal(result.act.netG, 5000);
  assert.deepEqual(result.act.grades, { perfect: 5000, blemished: 0, soft: 0, cull: 0 });
});

test('three buckets of damsons come to 13.74 kg with 1.04 kg soft, in six taps and twelve keys and the keys of the grades', () => {
  const weighing = [choose, ...digits('5.62'), next, ...digits('5.10'), next, ...digits('4.88')];
  assert.equal(count(weighing).keys, 12);
  const grading: PadTap[] = [
    { do: 'focus', on: 'perfect' },
    ...digits('9'),
    { do: 'focus', on: 'blemished' },
    ...digits('3.7'),
  ];
  assert.deepEqual(count([...weighing, ...grading]), { taps: 6, keys: 12 + 4 });
  const result = harvestAct(pad([...weighing, ...grading]), frame);
  assert.ok(result.ok);
  assert.deepEqual(
    result.act.readings.map((r) => r.grossG - r.tareG),
    [5000, 4480, 4260],
  );
  assert.equal(result.act.netG, 13740);
  assert.deepEqual(result.act.grades, { perfect: 9000, blemished: 3700, soft: 1040, cull: 0 });
});

test('12.4 lb in a 0.62 kg bucket is 5.00 kg of fruit (1 lb = 453.59237 g)', () => {
  const result = harvestAct(pad([choose, { do: 'unit' }, ...digits('12.4')]), frame);
  assert.ok(result.ok);
  assert.equal(result.act.netG, Math.round(12.4 * 453.59237) - 620);
});

test('the unit key keeps the digits and reads them in the other unit', () => {
  const state = pad([...digits('12.4'), { do: 'unit' }]);
  assert.deepEqual([state.draft, state.unit], ['12.4', 'lb']);
});

test('a bucket lighter than its own tare is refused with both weights, and the digits stay', () => {
  const state = pad([choose, ...digits('0.5')]);
  const result = harvestAct(state, frame);
  assert.ok(!result.ok);
  assert.match(result.reason, /^Gross less than the bucket: 0\.50 < 0\.62 kg/);
  assert.equal(state.draft, '0.5');
});

test('grades beyond the weight are refused by how much', () => {
  const result = harvestAct(pad([choose, ...digits('5.62'), { do: 'focus', on: 'soft' }, ...digits('5.2')]), frame);
  assert.ok(!result.ok);
  assert.match(result.reason, /0\.20 kg more than the 5\.00 kg/);
});

test('a row and a weight are asked for when they are missing', () => {
  assert.deepEqual(harvestAct(pad(digits('5')), frame), { ok: false, reason: 'Choose the row first.' });
  assert.deepEqual(harvestAct(pad([choose]), frame), { ok: false, reason: 'Type what the scale says.' });
});

test('a grade told to take the rest takes it; typing a weight for it afterwards undoes that', () => {
  const rest = pad([choose, ...digits('5.62'), { do: 'rest', grade: 'soft' }]);
  assert.equal(gradeSplit(rest, netGrams(rest, containers)).grams.soft, 5000);
  const typed = pad([{ do: 'focus', on: 'soft' }, ...digits('1')], rest);
  assert.deepEqual(gradeSplit(typed, netGrams(typed, containers)).grams, {
    perfect: 4000,
    blemished: 0,
    soft: 1000,
    cull: 0,
  });
});

test('the container of the last bucket is remembered for the next one, and after recording', () => {
  const state = pad([choose, { do: 'container', id: 'crate' }, ...digits('9'), next, ...digits('8')]);
  const result = harvestAct(state, frame);
  assert.ok(result.ok);
  assert.deepEqual(
    result.act.readings.map((r) => r.tareG),
    [1400, 1400],
  );
  assert.equal(afterTap(state, { do: 'recorded' }).containerId, 'crate');
});

test('a weight whose pounds fit the row is asked about with both readings and still recorded', () => {
  const state = pad([choose, ...digits('50')]);
  const doubt = weightDoubt(state, row, containers);
  assert.deepEqual([doubt?.otherUnitFits, doubt?.asKgG, doubt?.asLbG], [true, 49380, Math.round(50 * 453.59237) - 620]);
  assert.ok(harvestAct(state, frame).ok);
  assert.equal(weightDoubt(pad([choose, ...digits('12')]), row, containers), null);
});

test('the same tap within 700 ms is one tap', () => {
  assert.equal(isGhostTap(null, 5), false);
  assert.equal(isGhostTap(1000, 1699), true);
  assert.equal(isGhostTap(1000, 1700), false);
});

test('whatever is tapped, an accepted act conserves the grams: readings less tare = net = grades', () => {
  const key = fc.constantFrom(...'0123456789.').map((k): PadTap => ({ do: 'digit', key: k }));
  const other = fc.constantFrom<PadTap>(
    choose,
    next,
    { do: 'unit' },
    { do: 'backspace' },
    { do: 'ground-fall' },
    { do: 'container', id: 'crate' },
    { do: 'container-count', count: 2 },
    { do: 'focus', on: 'gross' },
    { do: 'focus', on: 'soft' },
    { do: 'focus', on: 'perfect' },
    { do: 'rest', grade: 'blemished' },
    { do: 'remove-reading', index: 0 },
  );
  let accepted = 0;
  fc.assert(
    fc.property(
      fc.array(fc.oneof({ weight: 4, arbitrary: key }, { weight: 2, arbitrary: other }), { maxLength: 30 }),
      (taps) => {
        const result = harvestAct(pad([choose, ...digits('9.5'), ...taps]), frame);
        if (!result.ok) return;
        accepted += 1;
        const { act } = result;
        assert.equal(
          act.readings.reduce((s, r) => s + r.grossG - r.tareG, 0),
          act.netG,
        );
        assert.equal(
          GRADES.reduce((s, g) => s + act.grades[g], 0),
          act.netG,
        );
        assert.ok(GRADES.every((g) => act.grades[g] >= 0 && Number.isInteger(act.grades[g])));
      },
    ),
    { numRuns: 500 },
  );
  assert.ok(accepted > 50, `only ${accepted} of 500 were accepted`);
});

test('an id made on the device is a version 4 id and never the same twice', () => {
  const ids = Array.from({ length: 200 }, actId);
  for (const id of ids) assert.match(id, /^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  assert.equal(new Set(ids).size, ids.length);
});
