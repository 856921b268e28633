import { DataTable } from './data-table.tsx';
import styles from './season-trays.module.css';
import { Tray } from './tray.tsx';

export type CheckTraysProps = {
  view: {
    held: readonly { id: string; what: string; n: number; five: number; eight: number; nineteen: number }[];
    said: readonly { id: string; asOf: string; what: string; said: string; came: string; held: boolean }[];
    leaning: readonly string[];
  };
};

/** How often the bands held, where they lean, and statement by statement what was said and what came. */
export function CheckTrays({ view }: CheckTraysProps) {
  if (view.said.length === 0) return null;
  return (
    <div className={styles.trays}>
      <Tray title="How often the bands held">
        <DataTable
          caption="A band meant for 8 in 10 should hold about 8 times in 10: many more, and it is too wide; many fewer, too narrow."
          columns={[
            { key: 'what', label: 'What' },
            { key: 'n', label: 'Statements', numeric: true },
            { key: 'five', label: 'Meant for 5 in 10', numeric: true },
            { key: 'eight', label: 'Meant for 8 in 10', numeric: true },
            { key: 'nineteen', label: 'Meant for 19 in 20', numeric: true },
          ]}
          rows={view.held.map((h) => ({
            id: h.id,
            cells: {
              what: h.what,
              n: h.n,
              five: held(h.five, h.n),
              eight: held(h.eight, h.n),
              nineteen: held(h.nineteen, h.n),
            },
          }))}
        />
        {view.leaning.length > 0 ? (
          <ul className={styles.list}>
            {view.leaning.map((l) => (
              <li key={l}>{l}</li>
            ))}
          </ul>
        ) : null}
        <p className="quiet">
          Statements of one crop or line at several dates hang together, so they are fewer than they look. Use is
          checked only where jars were left all the time. In the first year on record the presents and stall weeks to
          come are not known yet, and more is used than was said.
        </p>
      </Tray>
      <Tray title="What was said, and what came">
        <details className={styles.more}>
          <summary>The last {view.said.length} statements</summary>
          <DataTable
            caption="The latest first"
            columns={[
              { key: 'what', label: 'What' },
              { key: 'asOf', label: 'Said on' },
              { key: 'said', label: 'Said, 8 in 10' },
              { key: 'came', label: 'Came', numeric: true },
              { key: 'held', label: 'Held' },
            ]}
            rows={view.said.map((s) => ({
              id: s.id,
              cells: { what: s.what, asOf: s.asOf, said: s.said, came: s.came, held: s.held ? 'yes' : 'no' },
            }))}
          />
        </details>
      </Tray>
    </div>
  );
}

const held = (k: number, n: number): string => (n === 0 ? 'none' : `${k} of ${n}`);
