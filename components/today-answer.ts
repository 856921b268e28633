import { kilograms } from '#lib/units/format.ts';

type Turning = { name: string; grade: string; grams: number; left: string; hours: number };
export type TodayAnswerInput = { turning: readonly Turning[]; soonG: number; totalG: number };

/** "12.40 kg of fruit to place in the next two days", and what goes first. */
export function todayAnswer({ turning, soonG, totalG }: TodayAnswerInput): { answer: string; sub: string } {
  const first = turning[0];
  if (!first) return { answer: 'No fruit is waiting', sub: 'What is weighed in stands here in the order it turns.' };
  const sub = `${first.name}, ${first.grade}, goes first: ${first.hours <= 0 ? 'past its time' : `${first.left} left`}. ${kilograms(totalG)} stands in the stores in all.`;
  if (soonG === 0) return { answer: 'Nothing turns in the next two days', sub };
  return { answer: `${kilograms(soonG)} of fruit to place in the next two days`, sub };
}
