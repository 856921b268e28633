import { kilograms } from '#lib/units/format.ts';
import { DataTable } from './data-table.tsx';
import { fruitColour, NO_FRUIT } from './fruit-colour.ts';
import styles from './mass-flow.module.css';
import { Sankey } from './sankey.tsx';

export type MassFlowProps = {
  title: string;
  flow: {
    nodes: readonly { id: string; label: string; column: number; foodId: string | null }[];
    links: readonly { from: string; to: string; grams: number }[];
  };
};

const MANY = 6;
const [USUAL, TALL] = [460, 760];

/** The Sankey picture of grams, and the same as a table. */
export function MassFlow({ title, flow }: MassFlowProps) {
  const name = new Map(flow.nodes.map((n) => [n.id, n.label]));
  const most = Math.max(0, ...flow.nodes.map((n) => flow.nodes.filter((o) => o.column === n.column).length));
  const colour = new Map(flow.nodes.map((n) => [n.id, n.foodId ? fruitColour(n.foodId) : NO_FRUIT]));
  return (
    <>
      <Sankey
        title={title}
        height={most > MANY ? TALL : USUAL}
        nodes={flow.nodes.map(({ foodId: _, ...n }) => ({ ...n, colour: colour.get(n.id) ?? NO_FRUIT }))}
        links={flow.links.map((l) => ({ ...l, colour: linkColour(colour.get(l.from), colour.get(l.to)) }))}
      />
      <details className={styles.same}>
        <summary>The same as a table</summary>
        <DataTable
          caption={title}
          hideCaption
          columns={[
            { key: 'from', label: 'From' },
            { key: 'to', label: 'To' },
            { key: 'mass', label: 'Mass', numeric: true },
          ]}
          rows={flow.links.map((l, i) => ({
            id: String(i),
            cells: { from: name.get(l.from) ?? l.from, to: name.get(l.to) ?? l.to, mass: kilograms(l.grams) },
          }))}
        />
      </details>
    </>
  );
}

/** A ribbon takes the fruit's colour, from whichever end has one. */
const linkColour = (from = NO_FRUIT, to = NO_FRUIT): string => (from === NO_FRUIT ? to : from);
