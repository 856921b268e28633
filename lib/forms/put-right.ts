/** An act put right: why, and for a harvest the figures it should have had. */
import { z } from 'zod';
import { actId, massKg, word } from './fields.ts';

const kg = (grade: string) =>
  z.preprocess(
    (v) => (typeof v === 'string' && v.trim() === '' ? '0' : (v ?? '0')),
    massKg({ what: grade, min: 0, max: 2000 }),
  );

/** Kilograms of each grade as typed; an empty field is none of it. */
export const gradesForm = z.object({
  perfect: kg('perfect'),
  blemished: kg('blemished'),
  soft: kg('soft'),
  cull: kg('cull'),
});

/** What was typed stands before the reason of the button that was pressed. */
const reason = z.object({
  typed: z.string().trim().max(120, 'the reason is longer than 120 letters').default(''),
  why: word('the reason', 120),
});
const reasonOf = ({ typed, why }: z.infer<typeof reason>): string => typed || why;

export const takeBackForm = z
  .object({ id: actId, act: word('the entry', 160) })
  .and(reason)
  .transform(({ id, act, ...r }) => ({ id, act, reason: reasonOf(r) }));

export const weighAgainForm = z
  .object({ id: actId, act: word('the entry', 160) })
  .and(reason)
  .and(gradesForm)
  .transform(({ id, act, perfect, blemished, soft, cull, ...r }) => ({
    id,
    act,
    reason: reasonOf(r),
    grades: { perfect, blemished, soft, cull },
  }));
