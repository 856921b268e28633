/** Acts queued on a device and sent when there is a signal. Each stands alone; sending any of them again changes nothing. */
import { z } from 'zod';
import { harvestAct } from '#lib/forms/harvest.ts';
import { takeAct } from '#lib/forms/take.ts';
import type { Context } from './context.ts';
import { harvestAfterwards, type Taken, takeAfterwards } from './questions.ts';

export type ActAnswer =
  | { id: string; status: 'saved' | 'known' | 'question'; said: string }
  | { id: string; status: 'refused'; reason: string };

const queue = z.object({ acts: z.array(z.unknown()).max(500) });

/** Answers in the order sent; null when it was not a list of acts at all. */
export async function takeActs(ctx: Context, body: unknown): Promise<ActAnswer[] | null> {
  const list = queue.safeParse(body);
  if (!list.success) return null;
  const answers: ActAnswer[] = [];
  for (const raw of list.data.acts) answers.push(await takeOne(ctx, raw));
  return answers;
}

async function takeOne(ctx: Context, raw: unknown): Promise<ActAnswer> {
  const isTake = typeof raw === 'object' && raw !== null && 'what' in raw && raw.what === 'take';
  return isTake
    ? answerOf(raw, takeAct, ({ what: _, ...act }) => takeAfterwards(ctx, { ...act, person: null }))
    : answerOf(raw, harvestAct, (act) => harvestAfterwards(ctx, act));
}

async function answerOf<T>(raw: unknown, schema: z.ZodType<T>, run: (act: T) => Promise<Taken>): Promise<ActAnswer> {
  const act = schema.safeParse(raw);
  const id = typeof raw === 'object' && raw !== null && 'id' in raw ? String(raw.id) : '';
  if (!act.success)
    return {
      id,
      status: 'refused',
      reason: act.error.issues.map((i) => `${i.path.join('.')}: ${i.message}`).join('; '),
    };
  const done = await run(act.data);
  if ('question' in done) return { id, status: 'question', said: done.question };
  if ('refused' in done) return { id, status: 'refused', reason: done.refused };
  return { id, status: done.replayed ? 'known' : 'saved', said: done.done.said };
}
