/** Mass flow in columns: nodes as tall as what goes through them, links as wide as what they carry. */
export type FlowNode = {
  readonly id: string;
  readonly label: string;
  readonly column: number;
  readonly colour: string;
};
export type FlowLink = { readonly from: string; readonly to: string; readonly grams: number; readonly colour?: string };
export type PlacedNode = FlowNode & {
  readonly grams: number;
  readonly x: number;
  readonly y: number;
  readonly height: number;
};
export type PlacedLink = FlowLink & { readonly path: string; readonly width: number };
export type SankeySize = {
  readonly width: number;
  readonly height: number;
  readonly nodeWidth: number;
  readonly gap: number;
};

/** Places nodes top down in the order given and ribbons between them; a node without flow is left out. */
export function sankeyLayout(
  nodes: readonly FlowNode[],
  links: readonly FlowLink[],
  size: SankeySize,
): { nodes: PlacedNode[]; links: PlacedLink[] } {
  const sum = (id: string, end: 'from' | 'to') => links.reduce((s, l) => (l[end] === id ? s + l.grams : s), 0);
  const weighed = nodes
    .map((n) => ({ ...n, grams: Math.max(sum(n.id, 'from'), sum(n.id, 'to')) }))
    .filter((n) => n.grams > 0);
  const last = Math.max(0, ...weighed.map((n) => n.column));
  const inColumn = (c: number) => weighed.filter((n) => n.column === c);
  const scale = Math.min(
    ...Array.from({ length: last + 1 }, (_, c) => {
      const column = inColumn(c);
      const total = column.reduce((s, n) => s + n.grams, 0);
      return total > 0 ? (size.height - size.gap * (column.length + 1)) / total : Number.POSITIVE_INFINITY;
    }),
  );
  const placed = new Map<string, PlacedNode>();
  for (let c = 0; c <= last; c++) {
    const tall = inColumn(c).reduce((h, n) => h + Math.max(1.5, n.grams * scale) + size.gap, 0);
    let y = (size.height - tall + size.gap) / 2;
    for (const n of inColumn(c)) {
      const height = Math.max(1.5, n.grams * scale);
      const x = last === 0 ? 0 : (c / last) * (size.width - size.nodeWidth);
      placed.set(n.id, { ...n, x, y, height });
      y += height + size.gap;
    }
  }
  const used = { from: new Map<string, number>(), to: new Map<string, number>() };
  const ribbons = links.flatMap((l) => {
    const [a, b] = [placed.get(l.from), placed.get(l.to)];
    if (!a || !b || l.grams <= 0) return [];
    const width = Math.max(1, l.grams * scale);
    const [ya, yb] = [a.y + (used.from.get(l.from) ?? 0) + width / 2, b.y + (used.to.get(l.to) ?? 0) + width / 2];
    used.from.set(l.from, (used.from.get(l.from) ?? 0) + width);
    used.to.set(l.to, (used.to.get(l.to) ?? 0) + width);
    const [xa, xb] = [a.x + size.nodeWidth, b.x];
    const mid = (xa + xb) / 2;
    return [
      {
        ...l,
        width,
        path: `M${xa} ${ya.toFixed(1)}C${mid} ${ya.toFixed(1)} ${mid} ${yb.toFixed(1)} ${xb} ${yb.toFixed(1)}`,
      },
    ];
  });
  return { nodes: [...placed.values()], links: ribbons };
}
