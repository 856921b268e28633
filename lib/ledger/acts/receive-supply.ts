/** Something bought (or there at the start) comes in as a receipt lot: one step back, with supplier and date. */
import { type Act, childId, type Entry } from '../entry.ts';
import { type Grade, type LotKind, type LotUnit, newLot } from '../lot.ts';
import { receiptCode } from '../lot-code.ts';

export interface Receipt {
  act: Act;
  kind: Extract<LotKind, 'supply' | 'empties' | 'lids' | 'fruit' | 'set-aside'>;
  item: string;
  /** Three letters for the code. */
  what: string;
  number: number;
  label: string;
  unit: LotUnit;
  qty: number;
  roomId: string | null;
  foodId?: string;
  /** Of fruit; perfect when it is not said. */
  grade?: Grade;
  groundFall?: boolean;
  code?: string;
  flags?: string[];
  details?: Record<string, unknown>;
}

export function receiveSupply(r: Receipt): Entry {
  const lot = newLot({
    id: childId(r.act.id, r.item),
    code: r.code ?? receiptCode(r.act.day, r.what, r.number),
    kind: r.kind,
    label: r.label,
    unit: r.unit,
    item: r.item,
    foodId: r.foodId ?? null,
    grade: r.kind === 'fruit' ? (r.grade ?? 'perfect') : null,
    groundFall: r.groundFall ?? false,
    roomId: r.roomId,
    parentActId: r.act.id,
    madeOn: r.act.day,
    since: r.act.at,
    flags: r.flags ?? [],
    details: r.details ?? {},
  });
  const source = r.act.kind === 'opening' ? ('opening' as const) : ('bought' as const);
  return {
    act: r.act,
    lots: [lot],
    movements: [
      { from: { sink: source }, to: { lot: lot.id }, qty: r.qty, grams: r.unit === 'g' ? r.qty : null, piece: null },
    ],
    changes: [],
  };
}
