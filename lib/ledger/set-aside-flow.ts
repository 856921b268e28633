/**
 * What came off fruit in a span of days, what of it was kept, what it became and what it went into: the grams of the ledger's
 * own movements. What a lot became is what it is now; its water went off as vapour.
 */
import type { HeldLot } from './lot.ts';
import { type MassFlow, type MassNode, Nets } from './mass-flow.ts';
import { isLot, type Movement } from './movement.ts';

/** What is to be known of a set-aside lot besides its movements. */
export interface SetAsideSort {
  /** Id and words of what it was fresh; null for what was made of something set aside (stock). */
  material: { id: string; label: string } | null;
  /** What it is now: "powder", "frozen". */
  now: { id: string; label: string };
  /** Cut on purpose (rings) is no trim, and nothing kept from the compost. */
  trim: boolean;
}

export interface SetAsideFlow {
  flow: MassFlow;
  /** Fresh trim: what came off, and what of it was kept. */
  cameOffG: number;
  keptG: number;
  /** Kept, less what went to the compost after all. */
  fromCompostG: number;
  /** Grams of each set-aside lot that went into a pan. */
  intoBatchesG: Map<string, number>;
}

const node = (id: string, label: string, column: number): MassNode => ({ id, label, column, foodId: null });
const PANS = node('pans', 'off the pans', 0);
const BOARD = node('board', 'press and board', 0);
const WATER = node('water', 'water', 0);
const SUGAR = node('sugar', 'sugar', 0);
const GARDEN = node('garden', 'from the garden', 0);
const BEFORE = node('before', 'there before', 0);
const THROWN = node('thrown', 'not kept', 1);
const USED = node('used', 'into batches', 3);
const LEFT = node('left', 'still here', 3);
const ENDS: Readonly<Record<string, MassNode>> = {
  vapour: node('vapour', 'dried off', 2),
  hens: node('feed', 'feed', 2),
  compost: node('compost', 'compost', 2),
};
const GONE: Readonly<Record<string, string>> = { spoiled: 'spoiled', eaten: 'eaten', given: 'given', sold: 'sold' };

/** Movements with the act that made them; mistakes and their corrections already left out. */
export function setAsideFlow(
  movements: readonly (Movement & { actId: string })[],
  lots: readonly HeldLot[],
  sortOf: (lot: HeldLot) => SetAsideSort,
): SetAsideFlow {
  const byId = new Map(lots.map((l) => [l.id, l]));
  const held = new Map(lots.filter((l) => l.kind === 'set-aside').map((l) => [l.id, new Sums(l, sortOf(l))]));
  const cutting = boardActs(movements, byId);
  const net = new Nets();
  let thrownG = 0;
  for (const m of movements) {
    if (!m.grams) continue;
    const from = isLot(m.from) ? held.get(m.from.lot) : undefined;
    const to = isLot(m.to) ? held.get(m.to.lot) : undefined;
    if (from || to) between(net, m, from, to, byId);
    else if (isThrown(m, byId, cutting)) {
      net.add(kindOf(m.from, byId) === 'batch' ? PANS : BOARD, THROWN, m.grams);
      thrownG += m.grams;
    }
  }
  let keptG = 0;
  let backG = 0;
  for (const s of held.values()) {
    s.close(net);
    if (!s.sort.trim) continue;
    keptG += s.freshG;
    backG += Math.max(0, s.compostG - s.waterG);
  }
  return {
    flow: net.flow(),
    cameOffG: keptG + thrownG,
    keptG,
    fromCompostG: Math.max(0, keptG - backG),
    intoBatchesG: new Map([...held].filter(([, s]) => s.usedG > 0).map(([id, s]) => [id, s.usedG])),
  };
}

type Lots = ReadonlyMap<string, HeldLot>;
const kindOf = (a: Movement['from'], lots: Lots) => (isLot(a) ? lots.get(a.lot)?.kind : undefined);

/** Acts of a press or a board: fruit became juice or something set aside. */
const boardActs = (movements: readonly (Movement & { actId: string })[], lots: Lots): ReadonlySet<string> =>
  new Set(
    movements.flatMap((m) => {
      const to = kindOf(m.to, lots);
      return kindOf(m.from, lots) === 'fruit' && (to === 'set-aside' || to === 'supply') ? [m.actId] : [];
    }),
  );

/** Trim thrown at the filling, and what a press or a board did not keep. */
function isThrown(m: Movement & { actId: string }, lots: Lots, cutting: ReadonlySet<string>): boolean {
  if (isLot(m.to)) return false;
  const from = kindOf(m.from, lots);
  if (from === 'batch') return m.to.sink === 'trim';
  return from === 'fruit' && cutting.has(m.actId) && (m.to.sink === 'trim' || m.to.sink === 'compost');
}

function between(net: Nets, m: Movement, from: Sums | undefined, to: Sums | undefined, lots: Lots): void {
  const grams = m.grams ?? 0;
  if (from) from.outG += grams;
  if (to) {
    to.inG += grams;
    to.inQty += to.lot.unit === 'g' ? grams : m.qty;
  }
  if (to && !from) {
    const source = sourceOf(m, lots);
    net.add(source, to.start, grams);
    if (source === PANS || source === BOARD) to.freshG += grams;
    if (source === WATER) to.waterG += grams;
  } else if (to && from) {
    if (to.start.id !== from.start.id) net.add(from.start, to.start, grams);
  } else if (from) leaves(net, m, from, lots);
}

function sourceOf(m: Movement, lots: Lots): MassNode {
  const kind = kindOf(m.from, lots);
  if (kind === 'batch') return PANS;
  if (kind === 'supply') return SUGAR;
  if (kind !== undefined) return BOARD;
  if (isLot(m.from)) return BEFORE;
  return m.from.sink === 'tap' ? WATER : m.from.sink === 'harvest' ? GARDEN : BEFORE;
}

function leaves(net: Nets, m: Movement, from: Sums, lots: Lots): void {
  const grams = m.grams ?? 0;
  const end = isLot(m.to) ? undefined : ENDS[m.to.sink];
  if (end) {
    net.add(from.start, end, grams);
    if (end === ENDS.compost) from.compostG += grams;
    return;
  }
  from.became(net, grams);
  if (!isLot(m.to)) {
    const words = GONE[m.to.sink] ?? m.to.sink;
    net.add(from.end, node(m.to.sink, words, 3), grams);
  } else if (kindOf(m.to, lots) === 'batch') {
    from.usedG += grams;
    net.add(from.end, USED, grams);
  } else net.add(from.end, node('packed', 'packed', 3), grams);
}

/** One set-aside lot while its movements are added up. */
class Sums {
  inG = 0;
  outG = 0;
  inQty = 0;
  freshG = 0;
  waterG = 0;
  compostG = 0;
  usedG = 0;
  readonly start: MassNode;
  readonly end: MassNode;

  constructor(
    readonly lot: HeldLot,
    readonly sort: SetAsideSort,
  ) {
    this.end = node(`now ${sort.now.id}`, sort.now.label, 2);
    const { material } = sort;
    this.start = material ? { ...node(`from ${material.id}`, material.label, 1), foodId: material.id } : this.end;
  }

  became(net: Nets, grams: number): void {
    if (this.start.id !== this.end.id) net.add(this.start, this.end, grams);
  }

  /** What is still here; and what was here before the first movement of the span. */
  close(net: Nets): void {
    const leftG = this.leftG();
    if (leftG > 0) {
      this.became(net, leftG);
      net.add(this.end, LEFT, leftG);
    }
    const beforeG = this.outG + leftG - this.inG;
    if (beforeG > 0) net.add(BEFORE, this.start, beforeG);
  }

  /** Packs weigh what they weighed when they came; 0 where that is not among the movements. */
  private leftG(): number {
    if (this.lot.unit === 'g') return this.lot.onHand;
    return this.inQty > 0 ? Math.round((this.lot.onHand * this.inG) / this.inQty) : 0;
  }
}
