import { describe, expect, it } from 'vitest';
import type { ReadingRecord } from '#lib/ledger/batch-record.ts';
import { cookTrack } from '#lib/usecases/cook-track.ts';
import type { FrozenSheet } from '#lib/usecases/frozen-sheet.ts';

// Story A1: mix 2.73 kg, final 2.143 kg, 13 minutes in the 10 L pan (0.045 kg a minute).
const sheet = { mixG: 2730, finalG: 2143, boilMin: 13, brix: null, waterC: null } as FrozenSheet;
const weighed = (minute: number, kg: number) =>
  ({
    kind: 'weight',
    at: new Date(Date.UTC(2025, 8, 13, 10, minute)).toISOString(),
    value: Math.round(kg * 100),
  }) as ReadingRecord;

describe('the boil as it was weighed', () => {
  it('is the expected line alone before the first weighing', () => {
    expect(cookTrack(sheet, [])).toEqual({
      curve: [
        { minute: 0, kg: 2.73 },
        { minute: 13, kg: 2.143 },
      ],
      weighings: [],
      byTemperature: [],
      stopKg: 2.143,
      ahead: null,
      rest: [],
    });
  });

  it('puts the first weighing on the line and counts on from there', () => {
    const track = cookTrack(sheet, [weighed(0, 2.73), weighed(5, 2.5)]);
    expect(track?.weighings).toEqual([
      { minute: 0, kg: 2.73 },
      { minute: 5, kg: 2.5 },
    ]);
    // 230 g in 5 minutes; 357 g still to go.
    expect(track?.ahead?.gPerMin).toBeCloseTo(46, 9);
    expect(track?.ahead?.minutesLeft).toBeCloseTo(357 / 46, 9);
  });

  it('says nothing of the rest from one weighing, or from a pan that does not lose', () => {
    expect(cookTrack(sheet, [weighed(3, 2.6)])?.ahead).toBeNull();
    expect(cookTrack(sheet, [weighed(3, 2.6), weighed(6, 2.62)])?.ahead).toBeNull();
  });

  it('is not drawn for what is not boiled down to a weight', () => {
    expect(cookTrack({ ...sheet, finalG: null }, [])).toBeNull();
  });
});

describe('the rest of the boil', () => {
  // Solids 2143 g at 65 °Bx; 98.6 °C is today's boiling water (story A1).
  const hot = { ...sheet, brix: 65, waterC: 98.6, boilStartedAt: new Date(Date.UTC(2025, 8, 13, 10, 0)).toISOString() };
  const read = (minute: number, t: number) =>
    ({ ...weighed(minute, 0), kind: 'temperature', value: Math.round(t * 100) }) as ReadingRecord;

  it('runs from the last weighing to the stop at the rate seen, in minutes since it boils', () => {
    const track = cookTrack(hot, [weighed(2, 2.7), weighed(7, 2.5)]);
    expect(track?.weighings.map((w) => w.minute)).toEqual([2, 7]);
    expect(track?.ahead?.by).toBe('weight');
    expect(track?.rest[0]).toEqual({ minute: 7, kg: 2.5 });
    expect(track?.rest[1]?.kg).toBe(2.143);
    expect(track?.rest[1]?.minute).toBeCloseTo(7 + 357 / 40, 9);
  });

  it('is a guide by temperature where the pan was not weighed twice', () => {
    const track = cookTrack(hot, [read(4, 101.5), read(9, 102.5)]);
    const [first, last] = track?.byTemperature ?? [];
    expect((first?.kg ?? 0) > (last?.kg ?? 9) && (last?.kg ?? 0) > 2.1).toBe(true);
    expect(track?.ahead?.by).toBe('temperature');
  });

  it('puts the stop weight at about 8 °F over boiling water, as the sheet does (MSU sheet 01600890), within a twentieth', () => {
    const at = cookTrack(hot, [read(10, 98.6 + 4.44)])?.byTemperature[0];
    expect(Math.abs((at?.kg ?? 0) / 2.143 - 1)).toBeLessThan(0.05);
  });

  it('takes nothing from a thermometer below today’s boiling water', () => {
    expect(cookTrack(hot, [read(1, 90)])?.byTemperature).toEqual([]);
  });
});
