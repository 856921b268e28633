/** What is said about jars afterwards: something else that went in, and the rule card of the place of sale. */
import type { RULE_CARD_FIELDS } from '#lib/labels/rule-card.ts';
import { lotOfCode, type Written, writeAct } from '#lib/store/ledger-store.ts';
import { saveSettings } from '#lib/store/place-store.ts';
import { actOf } from './act-of.ts';
import type { Told } from './batch-flow.ts';
import type { Context } from './context.ts';
import { IN_IT } from './jar-contents.ts';

/** Butter against the foam, a sulphite dip: the lot's ingredients and allergens carry it from now on. */
export const noteIngredient = (
  ctx: Context,
  input: { id: string; lot: string; what: string },
): Promise<Written<Told>> =>
  writeAct(ctx.db, ctx.place.id, input.id, ctx.enteredAt, async (tx) => {
    const lot = await lotOfCode(tx, ctx.place.id, input.lot);
    if (!lot) return { refused: `there is no lot ${input.lot}` };
    const what = input.what.trim().toLowerCase();
    const flags = [...new Set([...lot.flags, `${IN_IT}${what}`])];
    return {
      entry: {
        act: actOf(ctx, input.id, 'note', { ...input }),
        lots: [],
        movements: [],
        changes: [{ lotId: lot.id, flags }],
      },
      tell: { said: `${lot.code} holds ${what} too. Labels printed before do not say so: print them again.` },
    };
  });

export type RuleCardInput = Record<(typeof RULE_CARD_FIELDS)[number] | 'id' | 'asks', string>;

/** Keeps the rule card as typed. */
export const keepRuleCard = (ctx: Context, { id, ...card }: RuleCardInput): Promise<Written<Told>> =>
  writeAct(ctx.db, ctx.place.id, id, ctx.enteredAt, async (tx) => {
    await saveSettings(tx, ctx.place.id, { ruleCard: card });
    return {
      entry: { act: actOf(ctx, id, 'place', { ruleCard: card }), lots: [], movements: [], changes: [] },
      tell: { said: 'The rule card is kept.' },
    };
  });
