import { describe, expect, it } from 'vitest';
import { labelsOnSheet, moved, sheetFor, spots } from '#lib/labels/sheets.ts';

const EVERY = (['sale', 'home', 'gift'] as const).flatMap((purpose) =>
  (['a4', 'letter', 'single'] as const).map((paper) => ({ purpose, paper, sheet: sheetFor(purpose, paper) })),
);

describe('label sheets', () => {
  it('stand whole on their paper (A4 of ISO 216, US Letter 8.5 × 11 in), no two over each other', () => {
    for (const { purpose, paper, sheet } of EVERY) {
      const at = spots(sheet, labelsOnSheet(sheet));
      for (const [i, a] of at.entries()) {
        const name = `${purpose} ${paper} ${i}`;
        expect(a.xMm, name).toBeGreaterThanOrEqual(0);
        expect(a.yMm, name).toBeGreaterThanOrEqual(0);
        expect(a.xMm + sheet.widthMm, name).toBeLessThanOrEqual(sheet.paper.widthMm + 1e-9);
        expect(a.yMm + sheet.heightMm, name).toBeLessThanOrEqual(sheet.paper.heightMm + 1e-9);
        for (const b of at.slice(i + 1)) {
          const apart =
            Math.abs(a.xMm - b.xMm) >= sheet.widthMm - 1e-9 || Math.abs(a.yMm - b.yMm) >= sheet.heightMm - 1e-9;
          expect(apart, name).toBe(true);
        }
      }
    }
    expect(sheetFor('sale', 'a4').paper).toEqual({ widthMm: 210, heightMm: 297 });
    expect(sheetFor('sale', 'letter').paper.widthMm).toBeCloseTo(8.5 * 25.4, 9);
    expect(sheetFor('sale', 'letter').paper.heightMm).toBeCloseTo(11 * 25.4, 9);
  });

  it('begin after the labels that are gone, and go on to the next sheet', () => {
    const sheet = sheetFor('sale', 'a4');
    const at = spots(sheet, 4, 6);
    expect(at.map((s) => s.page)).toEqual([0, 0, 1, 1]);
    expect(at[0]).toEqual({ page: 0, xMm: sheet.leftMm, yMm: sheet.topMm + 3 * (sheet.heightMm + sheet.gapYMm) });
    expect([at[2]?.xMm, at[2]?.yMm]).toEqual([sheet.leftMm, sheet.topMm]);
  });

  it('move as a whole for a printer that is off', () => {
    const sheet = sheetFor('home', 'letter');
    const [a, b] = [spots(sheet, 4)[3], spots(moved(sheet, 0.5, -1), 4)[3]];
    expect([(b?.xMm ?? 0) - (a?.xMm ?? 0), (b?.yMm ?? 0) - (a?.yMm ?? 0)]).toEqual([
      expect.closeTo(0.5, 9),
      expect.closeTo(-1, 9),
    ]);
  });
});
