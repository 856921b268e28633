import { kilograms } from '#lib/units/format.ts';
import { DataTable } from './data-table.tsx';
import { NO_FRUIT } from './fruit-colour.ts';
import styles from './sankey.module.css';
import { type FlowLink, type FlowNode, sankeyLayout } from './sankey-layout.ts';

export type SankeyProps = {
  title: string;
  nodes: readonly FlowNode[];
  links: readonly FlowLink[];
  /** Of the drawing, in its own units; more where many nodes stand in one column. */
  height?: number;
};

const USUAL = { width: 900, height: 460, nodeWidth: 14, gap: 30 };

/** In the drawing the table's decimals would only crowd. */
const shortKilograms = (g: number): string =>
  g < 10_000 ? `${(g / 1000).toFixed(1)} kg` : `${Math.round(g / 1000)} kg`;

/** The year's mass from tree to jar, compost and vapour. On a narrow screen the table in words takes its place. */
export function Sankey({ title, nodes, links, height = USUAL.height }: SankeyProps) {
  const size = { ...USUAL, height };
  const flow = sankeyLayout(nodes, links, size);
  const name = new Map(nodes.map((n) => [n.id, n.label]));
  const lastX = size.width - size.nodeWidth;
  return (
    <figure className={styles.flow}>
      <figcaption className="heard">{title}</figcaption>
      <svg viewBox={`0 0 ${size.width} ${size.height}`} aria-hidden="true" className={`${styles.drawing} keeps-colour`}>
        {flow.links.map((l, i) => (
          <path key={i} d={l.path} fill="none" stroke={l.colour ?? NO_FRUIT} strokeOpacity={0.55} strokeWidth={l.width}>
            <title>{`${name.get(l.from)} to ${name.get(l.to)}: ${kilograms(l.grams)}`}</title>
          </path>
        ))}
        {flow.nodes.map((n) => (
          <g key={n.id}>
            <rect x={n.x} y={n.y} width={size.nodeWidth} height={n.height} fill={n.colour} rx={2} />
            <text
              x={n.x >= lastX - 1 ? n.x - 8 : n.x + size.nodeWidth + 8}
              y={n.y + n.height / 2}
              textAnchor={n.x >= lastX - 1 ? 'end' : 'start'}
              dominantBaseline="central"
              className={styles.label}
            >
              {n.label} <tspan fontWeight={650}>{shortKilograms(n.grams)}</tspan>
            </text>
          </g>
        ))}
      </svg>
      <div className={styles.words}>
        <DataTable
          caption={title}
          columns={[
            { key: 'from', label: 'From' },
            { key: 'to', label: 'To' },
            { key: 'grams', label: 'Mass', numeric: true },
          ]}
          rows={links.map((l, i) => ({
            id: String(i),
            cells: { from: name.get(l.from) ?? l.from, to: name.get(l.to) ?? l.to, grams: kilograms(l.grams) },
          }))}
        />
      </div>
    </figure>
  );
}
