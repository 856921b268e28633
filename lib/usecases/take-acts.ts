/** Acts queued on a device and sent when there is a signal. Each stands alone; sending any of them again changes nothing. */
import { z } from 'zod';
import { harvestAct } from '#lib/forms/harvest.ts';
import type { Context } from './context.ts';
import { recordHarvest } from './record-harvest.ts';

export type ActAnswer =
  | { id: string; status: 'saved' | 'known'; said: string }
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
  const act = harvestAct.safeParse(raw);
  const id = typeof raw === 'object' && raw !== null && 'id' in raw ? String(raw.id) : '';
  if (!act.success)
    return {
      id,
      status: 'refused',
      reason: act.error.issues.map((i) => `${i.path.join('.')}: ${i.message}`).join('; '),
    };
  const done = await recordHarvest(ctx, act.data);
  if ('refused' in done) return { id, status: 'refused', reason: done.refused };
  return { id, status: done.replayed ? 'known' : 'saved', said: done.done.said };
}
