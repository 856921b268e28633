/** The year's mass from tree to jar and out of the door, added up from the ledger's own movements. */
import { type Account, isLot } from '#lib/ledger/movement.ts';
import { longDate } from '#lib/units/plain-date.ts';
import type { Context } from './context.ts';
import { type SeasonSnapshot, seasonSnapshot } from './season-snapshot.ts';

export interface FlowView {
  answer: string;
  sub: string;
  nodes: { id: string; label: string; column: number }[];
  links: { from: string; to: string; grams: number }[];
}

/** Kinds of goods, in the order they are drawn within their column. */
const NODES: FlowView['nodes'] = [
  { id: 'harvest', label: 'Picked', column: 0 },
  { id: 'bought', label: 'Fruit bought', column: 0 },
  { id: 'supply', label: 'Sugar and the like', column: 0 },
  { id: 'tap', label: 'Water', column: 0 },
  { id: 'used-set-asides', label: 'Set-asides used', column: 0 },
  { id: 'sold-fresh', label: 'Sold fresh', column: 1 },
  { id: 'eaten-fresh', label: 'Eaten fresh', column: 1 },
  { id: 'fruit', label: 'Fruit store', column: 1 },
  { id: 'pans', label: 'Pans and trays', column: 2 },
  { id: 'jars', label: 'Jars', column: 3 },
  { id: 'frozen', label: 'Frozen', column: 3 },
  { id: 'dried', label: 'Dried', column: 3 },
  { id: 'set-asides', label: 'Set aside', column: 3 },
  { id: 'eaten', label: 'Eaten', column: 5 },
  { id: 'sold', label: 'Sold', column: 5 },
  { id: 'given', label: 'Given', column: 5 },
  { id: 'spoiled', label: 'Spoiled', column: 5 },
  { id: 'vapour', label: 'Vapour', column: 5 },
  { id: 'compost', label: 'Compost, losses', column: 5 },
];
const LOT_NODE: Record<string, string> = {
  fruit: 'fruit',
  supply: 'supply',
  batch: 'pans',
  jars: 'jars',
  'cold-jars': 'jars',
  frozen: 'frozen',
  dried: 'dried',
  'set-aside': 'set-asides',
};
const SINK_NODE: Record<string, string> = {
  harvest: 'harvest',
  bought: 'bought',
  tap: 'tap',
  eaten: 'eaten',
  given: 'given',
  sold: 'sold',
  spoiled: 'spoiled',
  vapour: 'vapour',
  compost: 'compost',
  hens: 'compost',
  trim: 'compost',
  skimmings: 'compost',
  'pan-loss': 'compost',
};
/** Less than this is not drawn. */
const LEAST_G = 100;

export async function readYearFlow(ctx: Context): Promise<FlowView> {
  return yearFlow(await seasonSnapshot(ctx));
}

export function yearFlow(s: SeasonSnapshot): FlowView {
  const lots = new Map(s.lots.map((l) => [l.id, l.kind]));
  const node = (a: Account) => (isLot(a) ? LOT_NODE[lots.get(a.lot) ?? ''] : SINK_NODE[a.sink]);
  const sums = new Map<string, number>();
  for (const m of s.movements) {
    const link = linkOf(node(m.from), node(m.to));
    if (link && m.grams) sums.set(link, (sums.get(link) ?? 0) + m.grams);
  }
  const links = [...sums.entries()]
    .filter(([, grams]) => grams >= LEAST_G)
    .map(([link, grams]) => {
      const [from, to] = link.split(' ') as [string, string];
      return { from, to, grams };
    })
    .sort((a, b) => place(a.from) - place(b.from) || place(a.to) - place(b.to));
  const into = (id: string) => links.reduce((g, l) => g + (l.to === id ? l.grams : 0), 0);
  const picked = links.reduce((g, l) => g + (l.from === 'harvest' ? l.grams : 0), 0);
  const kept = into('jars') + into('frozen') + into('dried');
  return {
    answer:
      picked > 0
        ? `${wholeKg(picked)} kg picked in a year, ${wholeKg(kept)} kg put up`
        : 'Nothing picked in the last year',
    sub: `From ${longDate(s.recordedFrom)} to ${longDate(s.today)}, added up from the ledger. What stands in a store at the end, or stood there before, makes the two sides of a place differ.`,
    nodes: NODES.filter((n) => links.some((l) => l.from === n.id || l.to === n.id)),
    links,
  };
}

const wholeKg = (g: number): string => Math.round(g / 1000).toLocaleString('en');

/** What goes straight from the tree has ends of its own; a set-aside that goes back into a pan must not run backwards. */
function linkOf(from: string | undefined, to: string | undefined): string | null {
  if (!from || !to || from === to) return null;
  if (from === 'bought') return to === 'fruit' ? 'bought fruit' : null;
  if (from === 'set-asides') return to === 'pans' ? 'used-set-asides pans' : `${from} ${to}`;
  if (from === 'harvest' || from === 'fruit') {
    if (to === 'sold') return `${from} sold-fresh`;
    if (to === 'eaten') return `${from} eaten-fresh`;
  }
  return place(from) < place(to) ? `${from} ${to}` : null;
}
const place = (id: string): number => NODES.findIndex((n) => n.id === id);
