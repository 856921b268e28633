import { counted } from '#lib/units/format.ts';
import { DataTable } from './data-table.tsx';
import styles from './trace-trays.module.css';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

export type TraceTraysProps = {
  view: {
    code: string;
    label: string;
    batchCode: string | null;
    facts: readonly { what: string; value: string }[];
    parents: readonly { id: string; code: string; label: string; kind: string; amount: string; from: string }[];
    trees: readonly string[];
    receipts: readonly { code: string; label: string; from: string }[];
    sisters: readonly { code: string; where: string }[];
  };
};

/** Back to the trees and receipts, and on to the sister jars. */
export function TraceTrays({ view }: TraceTraysProps) {
  return (
    <>
      <TrayTable columns="equal">
        <Tray title="This one">
          <dl className={styles.facts}>
            {view.facts.map((f) => (
              <div key={f.what}>
                <dt>{f.what}</dt>
                <dd>{f.value}</dd>
              </div>
            ))}
          </dl>
          <p>
            <a href={`/recall?code=${encodeURIComponent(view.code)}`}>Recall from here</a>
          </p>
          {view.batchCode ? (
            <p>
              <a href={`/batches/${view.batchCode}`}>The batch and its log</a>
            </p>
          ) : null}
        </Tray>
        <Tray title="Where it came from">
          {view.trees.length > 0 ? (
            <>
              <h3>Trees and rows</h3>
              <ul className={styles.chips}>
                {view.trees.map((t) => (
                  <li key={t}>
                    <a href={`/place/row/${encodeURIComponent(t)}`}>{t}</a>
                  </li>
                ))}
              </ul>
            </>
          ) : null}
          {view.receipts.length > 0 ? (
            <>
              <h3>Receipts, one step back</h3>
              <ul className={styles.list}>
                {view.receipts.map((r) => (
                  <li key={r.code}>
                    <a href={`/trace/${r.code}`}>{r.code}</a> {r.label}, {r.from}
                  </li>
                ))}
              </ul>
            </>
          ) : null}
          {view.trees.length + view.receipts.length === 0 ? <p>Nothing is recorded behind it.</p> : null}
        </Tray>
      </TrayTable>
      {view.parents.length > 0 ? (
        <Tray title="What went in">
          <DataTable
            caption="Lots this was made from"
            hideCaption
            columns={[
              { key: 'what', label: 'What' },
              { key: 'lot', label: 'Lot' },
              { key: 'from', label: 'From' },
              { key: 'amount', label: 'Amount', numeric: true },
            ]}
            rows={view.parents.map((p) => ({
              id: p.id,
              cells: { what: p.label, lot: <a href={`/trace/${p.code}`}>{p.code}</a>, from: p.from, amount: p.amount },
            }))}
          />
        </Tray>
      ) : null}
      {view.sisters.length > 0 ? (
        <Tray title={`Its sisters: ${counted(view.sisters.length, 'jar')} of this lot`}>
          <DataTable
            caption="Every jar of this lot and where it is"
            hideCaption
            columns={[
              { key: 'jar', label: 'Jar' },
              { key: 'where', label: 'Where' },
            ]}
            rows={view.sisters.map((s) => ({
              id: s.code,
              cells: { jar: <a href={`/trace/${s.code}`}>{s.code}</a>, where: s.where },
            }))}
          />
        </Tray>
      ) : null}
    </>
  );
}
