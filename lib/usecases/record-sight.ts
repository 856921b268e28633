/** An estimate by eye of what still hangs, written as an act; it moves nothing and bears on the forecast only. */
import type { SightForm } from '#lib/forms/sight.ts';
import { type Written, writeAct } from '#lib/store/ledger-store.ts';
import { actOf } from './act-of.ts';
import type { Context } from './context.ts';

export interface SightTold {
  said: string;
}

export const recordSight = (ctx: Context, input: SightForm): Promise<Written<SightTold>> =>
  writeAct<SightTold>(ctx.db, ctx.place.id, input.id, ctx.enteredAt, async () => {
    const crop = ctx.place.crops.find((c) => c.id === input.cropId);
    if (!crop) return { refused: 'There is no such crop here' };
    const { id, ...payload } = input;
    return {
      entry: { act: actOf(ctx, id, 'sight', payload), lots: [], movements: [], changes: [] },
      tell: { said: `${crop.label}: about ${input.kg} kg seen hanging. It counts until the next time you look.` },
    };
  });
