/** A recall's two acts: everything in the circle that is still here goes on hold; or the drill is written down. */
import { type Written, writeAct } from '#lib/store/ledger-store.ts';
import { counted } from '#lib/units/format.ts';
import { actOf } from './act-of.ts';
import type { Told } from './batch-flow.ts';
import type { Context } from './context.ts';
import { withHold } from './ph-hold.ts';
import { circleOf, lotOf, readRecall } from './read-recall.ts';

export interface HoldInput {
  id: string;
  code: string;
  why: string;
}

/** Puts the lot and all it went into on hold: nothing of it leaves, is cooked or is sold until that is decided. */
export const holdCircle = (ctx: Context, input: HoldInput): Promise<Written<Told>> =>
  writeAct(ctx.db, ctx.place.id, input.id, ctx.enteredAt, async (tx) => {
    const lot = await lotOf(ctx, tx, input.code);
    if (!lot) return { refused: `nothing bears the code ${input.code}` };
    const { lots } = await circleOf(ctx, tx, lot);
    const here = lots.filter((l) => l.kind !== 'batch' && l.onHand > 0);
    if (here.length === 0) return { refused: `nothing of ${lot.code} is left here to hold` };
    const jars = here.filter((l) => l.unit === 'jar' || l.unit === 'pack').reduce((n, l) => n + l.onHand, 0);
    return {
      entry: {
        act: actOf(ctx, input.id, 'hold', { ...input }, { note: input.why }),
        lots: [],
        movements: [],
        changes: here.map((l) => ({ lotId: l.id, hold: withHold(l.hold, input.why) })),
      },
      tell: {
        said: `${counted(here.length, 'lot')} on hold, ${counted(jars, 'jar or pack', 'jars and packs')} among them.`,
      },
    };
  });

/** A practice run, with what it found. */
export async function recordDrill(ctx: Context, input: { id: string; code: string }): Promise<Written<Told>> {
  const view = await readRecall(ctx, input.code);
  if (!view) return { refused: `nothing bears the code ${input.code}` };
  const { total, placedPercent } = view;
  return writeAct(ctx.db, ctx.place.id, input.id, ctx.enteredAt, async () => ({
    entry: {
      act: actOf(ctx, input.id, 'recall', { code: view.code, drill: true, total, placedPercent }),
      lots: [],
      movements: [],
      changes: [],
    },
    tell: { said: `Drill written down: ${counted(total, 'jar')} of ${view.code}, ${placedPercent} % placed.` },
  }));
}
