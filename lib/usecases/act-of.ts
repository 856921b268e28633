/** The act of a person here and now, as most use cases begin it; `known` holds what else the form or the device said. */
import type { Act } from '#lib/ledger/entry.ts';
import type { Context } from './context.ts';

export const actOf = (
  ctx: Context,
  id: string,
  kind: Act['kind'],
  payload: Record<string, unknown>,
  known: Partial<Pick<Act, 'day' | 'at' | 'person' | 'device' | 'note'>> = {},
): Act => ({
  id,
  kind,
  day: ctx.today,
  at: ctx.now.toISOString(),
  person: null,
  device: null,
  note: null,
  payload,
  corrects: null,
  ...known,
});
