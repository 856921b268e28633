/** What is set aside, how old it is and what is known of its strength. */
import { loadLots } from '#lib/store/ledger-store.ts';
import type { PlainDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';

export interface SetAsideView {
  lots: {
    code: string;
    label: string;
    amount: number;
    unit: string;
    madeOn: PlainDate;
    bestBefore: PlainDate | null;
    where: string;
    state: string;
    strength: string;
    grade: string | null;
    seedsOut: boolean;
  }[];
  powderG: number;
}

export async function readSetAsides(ctx: Context): Promise<SetAsideView> {
  const lots = await loadLots(ctx.db, ctx.place.id, { kinds: ['set-aside'] });
  const said = (v: unknown, otherwise: string) => (typeof v === 'string' ? v : otherwise);
  return {
    lots: lots.map((l) => ({
      code: l.code,
      label: l.label,
      amount: l.onHand,
      unit: l.unit,
      madeOn: l.madeOn,
      bestBefore: l.bestBefore,
      where: ctx.place.rooms.find((r) => r.id === l.roomId)?.label ?? 'no place given',
      state: said(l.details.state, 'unknown'),
      strength: said(l.details.strength, 'untested'),
      grade: l.grade,
      seedsOut: l.details.seedsOut === true,
    })),
    powderG: lots
      .filter((l) => l.item === 'apple-powder' && l.details.state === 'dry')
      .reduce((g, l) => g + l.onHand, 0),
  };
}
