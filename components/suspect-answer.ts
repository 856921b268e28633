import { counted } from '#lib/units/format.ts';

export type SuspectAnswerInput = {
  jar: string | null;
  lot: string;
  line: string;
  madeOn: string;
  place: string | null;
  sign: string | null;
  sisters: readonly unknown[];
  where: string;
};

/** "Throw 25193-RAS-A/04 away, the whole jar", and where its sisters are. */
export function suspectAnswer(v: SuspectAnswerInput): { answer: string; sub: string } {
  const others = `${counted(v.sisters.length, 'other', 'others')}: ${v.where || 'none'}.`;
  if (v.jar === null)
    return { answer: `Which jar of ${v.lot} looks wrong?`, sub: `${v.line}, made ${v.madeOn}. ${v.where}.` };
  if (v.sign === null)
    return {
      answer: `What is wrong with ${v.jar}?`,
      sub: `${v.line}, made ${v.madeOn}; by the book ${v.place ?? 'there is no such jar'}. Look, smell, never taste.`,
    };
  return { answer: `Throw ${v.jar} away, the whole jar`, sub: `${v.line}, made ${v.madeOn}: ${v.sign}. ${others}` };
}
