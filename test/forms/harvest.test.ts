import { describe, expect, it } from 'vitest';
import { harvestAct } from '#lib/forms/harvest.ts';
import { plainHarvest } from '#lib/forms/plain-harvest.ts';

const reading = { grossG: 5620, tareG: 620 };
const act = {
  id: 'phone-act-1',
  rowId: 'D3|damson',
  day: '2025-09-12',
  readings: [reading],
  grades: { perfect: 5000 },
};

describe('a picking sent by a phone', () => {
  it('is whole with the least it can say', () => {
    expect(harvestAct.parse(act)).toEqual({
      ...act,
      at: null,
      readings: [{ ...reading, text: '', unit: 'kg', containerId: '', containerCount: 1 }],
      groundFall: false,
      nothing: null,
      unweighed: null,
      person: null,
      device: null,
    });
  });

  it('may say less of the grades, and that nothing was ripe', () => {
    expect(harvestAct.safeParse({ ...act, readings: [], grades: {}, nothing: 'nothing ripe' }).success).toBe(true);
    expect(harvestAct.safeParse({ ...act, at: '2025-09-12T18:10:00+01:00' }).success).toBe(true);
  });

  it('may name a full container that waits for the scale', () => {
    const waits = (count: number) => ({ ...act, readings: [], grades: {}, unweighed: { containerId: 'blue', count } });
    expect(harvestAct.safeParse(waits(1)).success).toBe(true);
    expect(harvestAct.safeParse(waits(0)).success).toBe(false);
  });

  it('is refused where a value is not what it must be', () => {
    const wrong: object[] = [
      { id: 'short' },
      { id: undefined },
      { rowId: '' },
      { at: '18:10' },
      { readings: [{ ...reading, grossG: 5620.5 }] },
      { readings: [{ ...reading, grossG: '5620' }] },
      { readings: [{ ...reading, grossG: Number.NaN }] },
      { readings: [{ ...reading, grossG: 2_000_001 }] },
      { readings: [{ ...reading, unit: 'st' }] },
      { readings: [{ ...reading, containerCount: 100 }] },
      { readings: Array.from({ length: 61 }, () => reading) },
      { grades: { splendid: 5000 } },
      { grades: { perfect: 1.5 } },
      { groundFall: 'yes' },
    ];
    for (const change of wrong)
      expect(harvestAct.safeParse({ ...act, ...change }).success, JSON.stringify(change)).toBe(false);
  });
});

describe('the plain form', () => {
  const typed = {
    id: 'plain-form-1',
    day: '2025-09-12',
    row: 'D3|damson',
    gross: '5,62',
    unit: 'kg',
    container: 'bucket',
    containerCount: '1',
    'grade-blemished': '',
    'grade-soft': '0.5',
    'grade-cull': '',
  };

  it('reads what was typed and leaves blanks unsaid', () => {
    expect(plainHarvest.parse(typed)).toEqual({
      ...typed,
      gross: 5.62,
      containerCount: 1,
      'grade-blemished': null,
      'grade-soft': 0.5,
      'grade-cull': null,
      groundFall: false,
    });
    expect(plainHarvest.parse({ ...typed, groundFall: 'on' }).groundFall).toBe(true);
  });

  it('misses the weight when it is blank', () => {
    const result = plainHarvest.safeParse({ ...typed, gross: '' });
    expect(result.error?.issues.map((i) => i.message)).toEqual(['the weight is missing']);
  });
});
