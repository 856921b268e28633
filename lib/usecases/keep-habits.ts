/** The household's own constants: losses, margins, how much of its glass comes back. */
import type { FittingValues } from '#lib/forms/fittings.ts';
import { type Written, writeAct } from '#lib/store/ledger-store.ts';
import { saveSettings } from '#lib/store/place-store.ts';
import { actOf } from './act-of.ts';
import type { Context } from './context.ts';

/** Values by field name, as the form shows them. */
export const habitsOf = ({ place: { settings: s } }: Context): FittingValues => ({
  panLossG: s.panLossG,
  invertedShare: s.invertedShare,
  lidMargin: s.lidMargin,
  breakage: s.breakage,
  reserve: s.reserve,
  'jarsBack.eaten': s.jarsBack.eaten,
  'jarsBack.given': s.jarsBack.given,
  'jarsBack.sold': s.jarsBack.sold,
});

export async function keepHabits(
  ctx: Context,
  { id, values }: { id: string; values: FittingValues },
): Promise<Written<{ said: string }>> {
  const of = (name: string): number => Number(values[name] ?? habitsOf(ctx)[name]);
  const act = actOf(ctx, id, 'place', { habits: values });
  return writeAct(ctx.db, ctx.place.id, id, ctx.enteredAt, async (tx) => {
    await saveSettings(tx, ctx.place.id, {
      panLossG: of('panLossG'),
      invertedShare: of('invertedShare'),
      lidMargin: of('lidMargin'),
      breakage: of('breakage'),
      reserve: of('reserve'),
      jarsBack: { eaten: of('jarsBack.eaten'), given: of('jarsBack.given'), sold: of('jarsBack.sold') },
    });
    return { entry: { act, lots: [], movements: [], changes: [] }, tell: { said: 'The house’s habits are noted.' } };
  });
}
