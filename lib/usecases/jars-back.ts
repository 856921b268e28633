/** Empty jars brought back go to the empties of their kind. */
import { childId } from '#lib/ledger/entry.ts';
import { newLot } from '#lib/ledger/lot.ts';
import { freeReceiptNumber, receiptCode } from '#lib/ledger/lot-code.ts';
import { movePieces } from '#lib/ledger/movement.ts';
import { loadLots, type Written, writeAct } from '#lib/store/ledger-store.ts';
import { roomOfKind } from '#lib/store/place.ts';
import { counted } from '#lib/units/format.ts';
import { actOf } from './act-of.ts';
import type { Told } from './batch-flow.ts';
import type { Context } from './context.ts';

const BACK = 'JBK';

export const jarsBack = (ctx: Context, input: { id: string; jar: string; count: number }): Promise<Written<Told>> =>
  writeAct(ctx.db, ctx.place.id, input.id, ctx.enteredAt, async (tx) => {
    const kind = ctx.place.jarKinds.find((k) => k.code === input.jar && k.canning);
    if (!kind) return { refused: `"${input.jar}" is no jar of this place` };
    const act = actOf(ctx, input.id, 'receive', { ...input, why: 'jars brought back' });
    const lots = await loadLots(tx, ctx.place.id, { kinds: ['empties'], emptied: true });
    const first = lots.find((l) => l.item === kind.code);
    const made = first
      ? []
      : [
          newLot({
            id: childId(act.id, 'empties'),
            code: receiptCode(
              ctx.today,
              BACK,
              freeReceiptNumber(
                lots.map((l) => l.code),
                ctx.today,
                BACK,
              ),
            ),
            kind: 'empties',
            label: `Empty jars, ${kind.label}`,
            unit: 'jar',
            item: kind.code,
            parentActId: act.id,
            madeOn: ctx.today,
            since: act.at,
            roomId: roomOfKind(ctx.place, 'dry')?.id ?? null,
          }),
        ];
    const into = first?.id ?? (made[0]?.id as string);
    const empty = lots.filter((l) => l.item === kind.code).reduce((n, l) => n + l.onHand, 0) + input.count;
    return {
      entry: { act, lots: made, movements: [movePieces({ sink: 'in-use' }, { lot: into }, input.count)], changes: [] },
      tell: { said: `${counted(input.count, `${kind.label} jar`)} back: ${empty} empty now.` },
    };
  });
