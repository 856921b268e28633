import { describe, expect, it } from 'vitest';
import { freezerColdTime, freezerRoomG, fridgeColdTime } from '#lib/science/cold-box-outage.ts';
import { pounds } from '#lib/units/convert.ts';

/** Checked against the story of the trade's needs (64.2 kg in a chest of 300 L) and the printed 35 lb a cubic foot, 48 and 24 hours. */
describe('a freezer that has stopped', () => {
  it('of 300 L has room for 371 lb; 64.2 kg in it are 38 %: about 24 hours', () => {
    expect(Math.round(pounds(freezerRoomG(300)))).toBe(371);
    const { share, row } = freezerColdTime(64_200, 300);
    expect(Math.floor(100 * (share ?? 0))).toBe(38);
    expect(row).toMatchObject({ fullness: 'half full or less', hours: 24, source: 'HALF_OUTAGE' });
  });

  it('stays cold 48 hours only when it is full; between half and full nothing is drawn', () => {
    const room = freezerRoomG(100);
    expect(freezerColdTime(room * 0.5, 100).row.fullness).toBe('half full or less');
    expect(freezerColdTime(room * 0.5 + 1, 100).row).toMatchObject({ fullness: 'more than half full', hours: 24 });
    expect(freezerColdTime(room - 1, 100).row.hours).toBe(24);
    expect(freezerColdTime(room, 100).row).toMatchObject({ fullness: 'full', hours: 48 });
  });

  it('of unknown size counts as half full; one without room is refused', () => {
    expect(freezerColdTime(10_000, null)).toMatchObject({ share: null, row: { hours: 24 } });
    expect(() => freezerRoomG(0)).toThrow(RangeError);
    expect(fridgeColdTime().row.hours).toBe(4);
  });
});
