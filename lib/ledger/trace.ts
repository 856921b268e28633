/** Who came from whom: the ledger read as a graph, both ways. */
import type { Entry } from './entry.ts';
import { isLot } from './movement.ts';

/** Lots that gave something to each lot, and lots each gave to, by lot id. Counter-entries cancel their originals. */
export interface Lineage {
  parents: Map<string, Set<string>>;
  children: Map<string, Set<string>>;
}

export function lineage(entries: readonly Pick<Entry, 'movements'>[]): Lineage {
  const net = new Map<string, number>();
  for (const { movements } of entries) {
    for (const m of movements) {
      if (!isLot(m.from) || !isLot(m.to)) continue;
      const forward = `${m.from.lot} ${m.to.lot}`;
      const back = `${m.to.lot} ${m.from.lot}`;
      if ((net.get(back) ?? 0) > 0) net.set(back, (net.get(back) as number) - m.qty);
      else net.set(forward, (net.get(forward) ?? 0) + m.qty);
    }
  }
  const parents = new Map<string, Set<string>>();
  const children = new Map<string, Set<string>>();
  const link = (map: Map<string, Set<string>>, a: string, b: string) => map.set(a, (map.get(a) ?? new Set()).add(b));
  for (const [key, qty] of net) {
    if (qty <= 0) continue;
    const [from, to] = key.split(' ') as [string, string];
    link(parents, to, from);
    link(children, from, to);
  }
  return { parents, children };
}

/** Everything reachable from a lot along one direction, nearest first, the lot itself left out. */
export function reach(from: string, links: Map<string, Set<string>>): string[] {
  const seen = new Set<string>([from]);
  const queue = [from];
  for (let i = 0; i < queue.length; i++) {
    for (const next of links.get(queue[i] as string) ?? []) {
      if (seen.has(next)) continue;
      seen.add(next);
      queue.push(next);
    }
  }
  return queue.slice(1);
}
