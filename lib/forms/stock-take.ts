/** A count as called out, and the reasons for its differences. Lists run side by side. */
import { z } from 'zod';
import { actId, count, word } from './fields.ts';

export const COUNT_LISTS = ['keys', 'counted', 'items', 'unlabelled'];
export const SETTLE_LISTS = ['keys', 'reasons', 'items', 'lots'];

const texts = z.array(z.string().max(120)).max(300).default([]);
const howMany = count({ what: 'a count', min: 0, max: 2000 });

/** What was left blank was not counted. */
const sideBySide = (names: readonly string[], typed: readonly string[], ctx: z.RefinementCtx) =>
  names.flatMap((name, i) => {
    const text = (typed[i] ?? '').trim();
    if (text === '') return [];
    const n = howMany.safeParse(text);
    if (n.success) return [{ name, n: n.data }];
    ctx.addIssue({ code: 'custom', message: `${name.split('|')[0]}: ${n.error.issues[0]?.message ?? 'not a count'}` });
    return [];
  });

export const countForm = z
  .object({ id: actId, place: word('the shelf', 60), keys: texts, counted: texts, items: texts, unlabelled: texts })
  .transform((f, ctx) => ({
    id: f.id,
    place: f.place,
    counts: sideBySide(f.keys, f.counted, ctx).map(({ name, n }) => ({ key: name, counted: n })),
    unlabelled: sideBySide(f.items, f.unlabelled, ctx)
      .filter(({ n }) => n > 0)
      .map(({ name, n }) => ({ item: name, count: n })),
  }));

const REASONS = ['eaten', 'given', 'broken', 'missing', 'found', 'miscounted'] as const;

export const settleForm = z
  .object({
    id: actId,
    countId: actId,
    keys: texts,
    reasons: z.array(z.enum(REASONS)).max(300).default([]),
    items: texts,
    lots: texts,
  })
  .transform((f) => ({
    id: f.id,
    countId: f.countId,
    reasons: f.keys.flatMap((key, i) => {
      const reason = f.reasons[i];
      return reason ? [{ key, reason }] : [];
    }),
    takenFor: f.items.map((item, i) => ({ item, lot: f.lots[i] || null })),
  }));
