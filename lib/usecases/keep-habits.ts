/** The household's own constants: losses, margins, how much of its glass comes back. */
import { type FieldSpec, type FittingValues, HABIT_FIELDS, PRICE_FIELDS } from '#lib/forms/fittings.ts';
import type { DoseItem } from '#lib/reference/recipes/dose-items.ts';
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
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, async (tx) => {
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

/** Prices by field name, as the form shows them. */
export function pricesOf({ place: { settings } }: Context): FittingValues {
  const { currency = '', perKg = {}, perLid = null } = settings.prices ?? {};
  return {
    'prices.currency': currency,
    'prices.perLid': perLid,
    ...Object.fromEntries(Object.entries(perKg).map(([item, cents]) => [`prices.${item}`, cents])),
  };
}

export async function keepPrices(
  ctx: Context,
  { id, values }: { id: string; values: FittingValues },
): Promise<Written<{ said: string }>> {
  const act = actOf(ctx, id, 'place', { prices: values });
  const { 'prices.currency': currency, 'prices.perLid': perLid, ...goods } = values;
  const perKg = Object.fromEntries(
    Object.entries(goods).flatMap(([name, cents]) => (cents === null ? [] : [[name.slice('prices.'.length), cents]])),
  ) as Partial<Record<DoseItem, number>>;
  const prices = { currency: String(currency), perKg, ...(typeof perLid === 'number' ? { perLid } : {}) };
  return writeAct(ctx.db, ctx.place.id, act, ctx.enteredAt, async (tx) => {
    await saveSettings(tx, ctx.place.id, { prices });
    return { entry: { act, lots: [], movements: [], changes: [] }, tell: { said: 'Prices are noted.' } };
  });
}

interface HouseTopic {
  title: string;
  sub: string;
  fields: readonly FieldSpec[];
  stored: (ctx: Context) => FittingValues;
  keep: (ctx: Context, input: { id: string; values: FittingValues }) => Promise<Written<{ said: string }>>;
}

const TOPICS: Readonly<Record<string, HouseTopic>> = {
  habits: {
    title: 'How this house works',
    sub: 'What the sums start from until your own records teach better. None of it touches a process or a pH.',
    fields: HABIT_FIELDS,
    stored: habitsOf,
    keep: keepHabits,
  },
  prices: {
    title: 'What bought goods cost here',
    sub: 'For the cost of a batch. Own fruit and hours are not priced; what has no price is named beside the sum.',
    fields: PRICE_FIELDS,
    stored: pricesOf,
    keep: keepPrices,
  },
};

/** Habits or prices, by the name in the address; null for any other. */
export const houseTopic = (name: string): HouseTopic | null => TOPICS[name] ?? null;
