import { describe, expect, it } from 'vitest';
import type { ReadingRecord } from '#lib/ledger/batch-record.ts';
import { cookTrack } from '#lib/usecases/cook-track.ts';
import type { FrozenSheet } from '#lib/usecases/frozen-sheet.ts';

// Story A1: mix 2.73 kg, final 2.143 kg, 13 minutes in the 10 L pan (0.045 kg a minute).
const sheet = { mixG: 2730, finalG: 2143, boilMin: 13 } as FrozenSheet;
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
      stopKg: 2.143,
      ahead: null,
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
