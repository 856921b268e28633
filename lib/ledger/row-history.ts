/** What each row of a crop brought, year by year, and what became of it: shares follow the grams through the pans into the jars. */
import type { Lot } from './lot.ts';
import { isLot, type Movement } from './movement.ts';

/** A crop in a row: the smallest thing that is weighed. */
export const rowKey = (row: string, cropId: string): string => `${row}|${cropId}`;

export interface RowYear {
  year: number;
  /** Grams picked and, of them, culled. */
  pickedG: number;
  cullG: number;
  /** Jars and packs made of its fruit, by its share of the pan, and how many of them were eaten, given or sold since. */
  jars: number;
  finished: number;
}

export interface PickedFrom {
  /** `rowKey`. */
  row: string;
  year: number;
  movements: readonly Movement[];
}

type HistoryLot = Pick<Lot, 'id' | 'kind' | 'unit' | 'row' | 'cropId' | 'grade' | 'madeOn'>;
const FINISHED = ['eaten', 'given', 'sold'];
const PIECES = ['jars', 'cold-jars', 'frozen', 'dried'];

/** `pickings`: harvest acts of all years; `lots` and `movements`: those of the years asked about. */
export function rowHistory(o: {
  pickings: readonly PickedFrom[];
  lots: readonly HistoryLot[];
  movements: readonly Movement[];
}): Map<string, RowYear[]> {
  const lots = new Map(o.lots.map((l) => [l.id, l]));
  const rows = new Map<string, Map<number, RowYear>>();
  const at = (row: string, year: number): RowYear => {
    const years = rows.get(row) ?? new Map<number, RowYear>();
    rows.set(row, years);
    const known = years.get(year) ?? { year, pickedG: 0, cullG: 0, jars: 0, finished: 0 };
    years.set(year, known);
    return known;
  };
  for (const p of o.pickings)
    for (const m of p.movements) {
      if (isLot(m.from) || m.from.sink !== 'harvest') continue;
      const culled = isLot(m.to) ? lots.get(m.to.lot)?.grade === 'cull' : m.to.sink === 'compost';
      const year = at(p.row, p.year);
      year.pickedG += m.grams ?? 0;
      if (culled) year.cullG += m.grams ?? 0;
    }
  const sharesOf = sharesByRow(lots, o.movements);
  for (const m of o.movements) {
    const lot = isLot(m.from) ? lots.get(m.from.lot) : undefined;
    const into = isLot(m.to) ? lots.get(m.to.lot) : undefined;
    const count = (piece: HistoryLot, field: 'jars' | 'finished') => {
      for (const [row, share] of sharesOf(piece.id)) at(row, Number(piece.madeOn.slice(0, 4)))[field] += share * m.qty;
    };
    if (into && isPiece(into) && lot && !isPiece(lot)) count(into, 'jars');
    if (lot && isPiece(lot) && !isLot(m.to) && FINISHED.includes(m.to.sink)) count(lot, 'finished');
  }
  return new Map([...rows.entries()].map(([row, years]) => [row, [...years.values()].sort((a, b) => a.year - b.year)]));
}

const isPiece = (l: HistoryLot): boolean => PIECES.includes(l.kind) && l.unit !== 'g';

/** Share of each row in a lot's fruit, by the grams that went in; what came from no row has none. */
function sharesByRow(lots: ReadonlyMap<string, HistoryLot>, movements: readonly Movement[]) {
  const into = new Map<string, { from: string; grams: number }[]>();
  for (const m of movements)
    if (isLot(m.to) && isLot(m.from))
      into.set(m.to.lot, [...(into.get(m.to.lot) ?? []), { from: m.from.lot, grams: m.grams ?? 0 }]);
  const known = new Map<string, Map<string, number>>();
  const sharesOf = (id: string): Map<string, number> => {
    const before = known.get(id);
    if (before) return before;
    const shares = new Map<string, number>();
    known.set(id, shares);
    const lot = lots.get(id);
    if (lot?.kind === 'fruit') {
      if (lot.row && lot.cropId) shares.set(rowKey(lot.row, lot.cropId), 1);
      return shares;
    }
    const parts = (into.get(id) ?? []).filter((p) => isFruitOnTheWay(lots.get(p.from)));
    const all = parts.reduce((g, p) => g + p.grams, 0);
    for (const p of parts)
      for (const [row, share] of sharesOf(p.from))
        shares.set(row, (shares.get(row) ?? 0) + (all > 0 ? (share * p.grams) / all : 0));
    return shares;
  };
  return sharesOf;
}

/** Sugar, acid and water have a mass and no row. */
const isFruitOnTheWay = (lot: HistoryLot | undefined): boolean => lot !== undefined && lot.kind !== 'supply';
