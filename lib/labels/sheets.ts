/**
 * Where labels stand on the paper, in millimetres from its top left corner. Margins are our own; a printer that
 * is off by a little is met by moving them. Paper: A4 of ISO 216, US Letter 8.5 × 11 in.
 */
import type { Purpose } from './jar-label.ts';

export type PaperId = 'a4' | 'letter' | 'single';

export interface Sheet {
  readonly paper: { readonly widthMm: number; readonly heightMm: number };
  readonly columns: number;
  readonly rows: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly leftMm: number;
  readonly topMm: number;
  readonly gapXMm: number;
  readonly gapYMm: number;
}

const A4 = { widthMm: 210, heightMm: 297 };
const LETTER = { widthMm: 215.9, heightMm: 279.4 };

const grid = (
  paper: Sheet['paper'],
  columns: number,
  rows: number,
  widthMm: number,
  heightMm: number,
  gapXMm: number,
  gapYMm: number,
): Sheet => ({
  paper,
  columns,
  rows,
  widthMm,
  heightMm,
  gapXMm,
  gapYMm,
  leftMm: (paper.widthMm - columns * widthMm - (columns - 1) * gapXMm) / 2,
  topMm: (paper.heightMm - rows * heightMm - (rows - 1) * gapYMm) / 2,
});

const single = (widthMm: number, heightMm: number): Sheet => grid({ widthMm, heightMm }, 1, 1, widthMm, heightMm, 0, 0);

/** Full labels need room at 10 point; the small label and the tag stand closer. */
const SHEETS: Readonly<Record<Purpose, Readonly<Record<PaperId, Sheet>>>> = {
  sale: { a4: grid(A4, 2, 4, 95, 66, 4, 3), letter: grid(LETTER, 2, 4, 98, 62, 4, 3), single: single(100, 70) },
  home: { a4: grid(A4, 3, 6, 62, 44, 3, 3), letter: grid(LETTER, 3, 6, 63, 42, 3, 3), single: single(80, 50) },
  gift: { a4: grid(A4, 2, 5, 90, 50, 4, 4), letter: grid(LETTER, 2, 5, 90, 48, 4, 4), single: single(90, 50) },
};

export const sheetFor = (purpose: Purpose, paper: PaperId): Sheet => SHEETS[purpose][paper];

/** The grid moved by some millimetres, for a printer that feeds off its edge; negative is left and up. */
export const moved = (sheet: Sheet, rightMm: number, downMm: number): Sheet => ({
  ...sheet,
  leftMm: sheet.leftMm + rightMm,
  topMm: sheet.topMm + downMm,
});

export interface Spot {
  readonly page: number;
  readonly xMm: number;
  readonly yMm: number;
}

export const labelsOnSheet = (s: Sheet): number => s.columns * s.rows;

/** Places of `count` labels, row by row, when the first `used` of the first sheet are gone. */
export function spots(sheet: Sheet, count: number, used = 0): Spot[] {
  const onSheet = labelsOnSheet(sheet);
  return Array.from({ length: count }, (_, i): Spot => {
    const at = (i + used) % onSheet;
    return {
      page: Math.floor((i + used) / onSheet),
      xMm: sheet.leftMm + (at % sheet.columns) * (sheet.widthMm + sheet.gapXMm),
      yMm: sheet.topMm + Math.floor(at / sheet.columns) * (sheet.heightMm + sheet.gapYMm),
    };
  });
}
