import { DataTable } from './data-table.tsx';
import styles from './season-trays.module.css';
import { Tray } from './tray.tsx';

export type WhatIfTraysProps = {
  rows: readonly {
    id: string;
    title: string;
    means: string;
    says: readonly string[];
    figures: readonly { name: string; before: string; change: string }[];
  }[];
};

/** One tray a change: what clearly differs in a sentence each, all figures beneath. */
export function WhatIfTrays({ rows }: WhatIfTraysProps) {
  return (
    <div className={styles.trays}>
      {rows.map((r) => (
        <Tray key={r.id} title={r.title}>
          <p className={`quiet ${styles.say}`}>{r.means}.</p>
          {r.says.length === 0 ? <p>No clear difference.</p> : null}
          <ul className={styles.list}>
            {r.says.map((s) => (
              <li key={s}>{s}</li>
            ))}
          </ul>
          <details className={styles.more}>
            <summary>
              All figures<span className="heard"> of {r.title}</span>
            </summary>
            <DataTable
              caption={`${r.title}: a year, on average over the seasons tried`}
              columns={[
                { key: 'name', label: 'What' },
                { key: 'before', label: 'Without it', numeric: true },
                { key: 'change', label: 'With it', numeric: true },
              ]}
              rows={r.figures.map((f) => ({ id: f.name, cells: f }))}
            />
          </details>
        </Tray>
      ))}
    </div>
  );
}
