/** The ledger's grams as a flow from tree to jar: what a batch or a season took in, and where all of it went. */
import type { HeldLot } from './lot.ts';
import { type Account, isLot, type Movement } from './movement.ts';

export interface MassNode {
  id: string;
  label: string;
  column: number;
  /** Food whose colour it carries; null for what is no fruit. */
  foodId: string | null;
}
export interface MassLink {
  from: string;
  to: string;
  grams: number;
}
export interface MassFlow {
  nodes: MassNode[];
  links: MassLink[];
}

type LotOf = (id: string) => HeldLot | undefined;

const SINK_WORDS: Readonly<Record<string, string>> = {
  tap: 'water',
  bought: 'bought as used',
  trim: 'trim, thrown',
  vapour: 'vapour',
  skimmings: 'skimmings',
  'pan-loss': 'stuck to the pan',
};
const sinkWords = (sink: string): string => SINK_WORDS[sink] ?? sink;

/** One batch: lots on the left, the pan, and what came of it; both sides add up to the same grams once it is filled. */
export function batchFlow(pan: Pick<HeldLot, 'id' | 'label'>, movements: readonly Movement[], lotOf: LotOf): MassFlow {
  const net = new Nets();
  const end = (account: Account, side: 'in' | 'out'): MassNode => {
    const column = side === 'in' ? 0 : 2;
    if (!isLot(account)) return { id: `${side} ${account.sink}`, label: sinkWords(account.sink), column, foodId: null };
    const lot = lotOf(account.lot);
    const label = lot ? (lot.row ? `${lot.label}, ${lot.row}` : lot.label) : 'a lot not on record';
    return { id: `${side} ${label}`, label, column, foodId: lot?.foodId ?? null };
  };
  const middle: MassNode = { id: 'pan', label: 'in the pan', column: 1, foodId: null };
  for (const m of movements) {
    const grams = m.grams ?? 0;
    if (isLot(m.to) && m.to.lot === pan.id) net.add(end(m.from, 'in'), middle, grams);
    else if (isLot(m.from) && m.from.lot === pan.id) net.add(middle, end(m.to, 'out'), grams);
  }
  return net.flow();
}

/** Where a lot of a kind stands in the season's picture. */
const PLACES: Readonly<Record<string, MassNode>> = {
  fruit: { id: 'store', label: 'fruit store', column: 1, foodId: null },
  batch: { id: 'pans', label: 'pans and trays', column: 2, foodId: null },
  'set-aside': { id: 'set-asides', label: 'set-asides', column: 3, foodId: null },
  jars: { id: 'jars', label: 'jars', column: 4, foodId: null },
  'cold-jars': { id: 'cold', label: 'fridge', column: 4, foodId: null },
  frozen: { id: 'frozen', label: 'frozen', column: 4, foodId: null },
  dried: { id: 'dried', label: 'dried', column: 4, foodId: null },
};
const TREES: MassNode = { id: 'trees', label: 'trees and rows', column: 0, foodId: null };
const SUPPLIES: MassNode = { id: 'supplies', label: 'sugar and supplies', column: 0, foodId: null };
const USED_AGAIN: MassNode = { id: 'used-again', label: 'set-asides used', column: 0, foodId: null };
const LEFT: MassNode = { id: 'left', label: 'still in the fruit store', column: 4, foodId: null };
const BEFORE: MassNode = { id: 'before', label: 'in the store from before', column: 0, foodId: null };
const GONE: Readonly<Record<string, string>> = { sold: 'fruit sold fresh', eaten: 'fruit eaten fresh' };
/** Made into food once more: these stand behind the pans, so what leaves them is not the season's flow any more. */
const MADE = new Set(['jars', 'cold-jars', 'frozen', 'dried']);

/** A season: from tree to jar, fresh, dried, compost and vapour. Movements of jars after they were made are left out. */
export function seasonFlow(movements: readonly Movement[], lotOf: LotOf): MassFlow {
  const net = new Nets();
  let storeG = 0;
  for (const m of movements) {
    if (m.grams === null) continue;
    const from = startOf(m.from, m.to, lotOf);
    const to = endOf(m.to, lotOf);
    if (!from || !to) continue;
    net.add(from, to, m.grams);
    if (to.id === 'store') storeG += m.grams;
    if (from.id === 'store') storeG -= m.grams;
  }
  if (storeG > 0) net.add(PLACES.fruit as MassNode, LEFT, storeG);
  if (storeG < 0) net.add(BEFORE, PLACES.fruit as MassNode, -storeG);
  return net.flow();
}

function startOf(from: Account, to: Account, lotOf: LotOf): MassNode | null {
  if (!isLot(from)) {
    if (from.sink === 'harvest') return TREES;
    if (from.sink === 'tap') return { id: 'water', label: 'water', column: 0, foodId: null };
    const fruit = isLot(to) && lotOf(to.lot)?.kind === 'fruit';
    if (from.sink === 'bought' || from.sink === 'opening')
      return fruit ? { id: 'bought-fruit', label: 'bought fruit', column: 0, foodId: null } : inPan(to, lotOf);
    return null;
  }
  const kind = lotOf(from.lot)?.kind;
  if (kind === undefined || MADE.has(kind)) return null;
  if (kind === 'supply') return SUPPLIES;
  if (kind === 'set-aside' && isLot(to) && lotOf(to.lot)?.kind === 'batch') return USED_AGAIN;
  return PLACES[kind] ?? null;
}

const inPan = (to: Account, lotOf: LotOf): MassNode | null =>
  isLot(to) && lotOf(to.lot)?.kind === 'batch' ? SUPPLIES : null;

function endOf(to: Account, lotOf: LotOf): MassNode | null {
  if (isLot(to)) return PLACES[lotOf(to.lot)?.kind ?? ''] ?? null;
  return { id: `end ${to.sink}`, label: GONE[to.sink] ?? sinkWords(to.sink), column: 4, foodId: null };
}

/** Links added up; a flow the other way counts against it, so that a correction leaves nothing behind. */
export class Nets {
  private readonly nodes = new Map<string, MassNode>();
  private readonly links = new Map<string, MassLink>();

  add(from: MassNode, to: MassNode, grams: number): void {
    if (grams === 0) return;
    this.nodes.set(from.id, from);
    this.nodes.set(to.id, to);
    const key = `${from.id}>${to.id}`;
    const known = this.links.get(key) ?? { from: from.id, to: to.id, grams: 0 };
    this.links.set(key, { ...known, grams: known.grams + grams });
  }

  flow(): MassFlow {
    const links = [...this.links.values()]
      .map((l) => ({ ...l, grams: l.grams - (this.links.get(`${l.to}>${l.from}`)?.grams ?? 0) }))
      .filter((l) => l.grams > 0)
      .sort((a, b) => b.grams - a.grams);
    const used = new Set(links.flatMap((l) => [l.from, l.to]));
    const weight = (id: string) => links.reduce((g, l) => (l.from === id || l.to === id ? g + l.grams : g), 0);
    const nodes = [...this.nodes.values()]
      .filter((n) => used.has(n.id))
      .sort((a, b) => a.column - b.column || weight(b.id) - weight(a.id));
    return { nodes, links };
  }
}
