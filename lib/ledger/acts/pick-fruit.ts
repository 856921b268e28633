/** A picking weighed in: one fruit lot for each grade, all under one harvest code. */
import { type Act, childId, type Entry } from '../entry.ts';
import { GRADES, type Grade, newLot } from '../lot.ts';
import { foodCode, harvestCode } from '../lot-code.ts';
import { moveGrams } from '../movement.ts';

export interface Picking {
  act: Act;
  crop: { id: string; label: string; foodId: string };
  row: string;
  /** Counts the pickings of that row and crop on that day, from 1. */
  number: number;
  /** Whole grams of each grade; grades without fruit left out or 0. */
  gradeG: Partial<Record<Grade, number>>;
  groundFall: boolean;
  roomId: string | null;
  flags: string[];
  lockedUntil: Act['day'] | null;
  /** What the trace shows of where it came from: plantings of the row, weighings. */
  details: Record<string, unknown>;
}

export const GRADE_LETTERS: Readonly<Record<Grade, string>> = { perfect: 'P', blemished: 'B', soft: 'S', cull: 'C' };

export function pickFruit(p: Picking): Entry {
  const code = harvestCode(p.act.day, p.row, foodCode(p.crop.foodId), p.number);
  const lots = GRADES.filter((g) => (p.gradeG[g] ?? 0) > 0).map((grade) =>
    newLot({
      id: childId(p.act.id, grade),
      code: `${code}/${GRADE_LETTERS[grade]}`,
      kind: 'fruit',
      label: p.crop.label,
      unit: 'g',
      cropId: p.crop.id,
      foodId: p.crop.foodId,
      grade,
      groundFall: p.groundFall,
      row: p.row,
      roomId: p.roomId,
      parentActId: p.act.id,
      madeOn: p.act.day,
      since: p.act.at,
      lockedUntil: p.lockedUntil,
      flags: p.flags,
      details: { ...p.details, harvest: code },
    }),
  );
  return {
    act: p.act,
    lots,
    movements: lots.map((lot) =>
      moveGrams({ sink: 'harvest' }, { lot: lot.id }, p.gradeG[lot.grade as Grade] as number),
    ),
    changes: [],
  };
}
