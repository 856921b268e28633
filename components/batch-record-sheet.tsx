import { AnswerHeading } from './answer-heading.tsx';
import { DataTable } from './data-table.tsx';
import styles from './trace-trays.module.css';

export type BatchRecordSheetProps = {
  view: {
    code: string;
    line: string;
    day: string;
    facts: readonly { what: string; value: string }[];
    lots: readonly { code: string; label: string; amount: string; from: string }[];
    trees: readonly string[];
    readings: readonly { id: string; when: string; what: string; value: string }[];
    log: readonly { at: string; time: string; what: string }[];
    sums: readonly { what: string; count: number }[];
  };
  place: string;
  printed: string;
};

/** The record of one batch on paper, for whoever asks for it. */
export function BatchRecordSheet({ view, place, printed }: BatchRecordSheetProps) {
  return (
    <>
      <AnswerHeading
        answer={`Batch ${view.code}: ${view.line}`}
        sub={`${place}. Made ${view.day}; printed ${printed}.`}
      />
      <dl className={styles.facts}>
        {view.facts.map((f) => (
          <div key={f.what}>
            <dt>{f.what}</dt>
            <dd>{f.value}</dd>
          </div>
        ))}
        <div>
          <dt>Jars and packs now</dt>
          <dd>{view.sums.map((s) => `${s.count} ${s.what}`).join(', ') || 'none made'}</dd>
        </div>
        <div>
          <dt>Trees and rows</dt>
          <dd>{view.trees.join(', ') || 'none on record'}</dd>
        </div>
      </dl>
      <h2>Lots that went in</h2>
      <DataTable
        caption="Lots that went in"
        hideCaption
        none="None on record."
        columns={[
          { key: 'lot', label: 'Lot' },
          { key: 'what', label: 'What' },
          { key: 'from', label: 'From' },
          { key: 'amount', label: 'Amount', numeric: true },
        ]}
        rows={view.lots.map((l) => ({
          id: l.code,
          cells: { lot: l.code, what: l.label, from: l.from, amount: l.amount },
        }))}
      />
      <h2>Readings</h2>
      <DataTable
        caption="Readings"
        hideCaption
        none="No reading is on record."
        columns={[
          { key: 'when', label: 'When' },
          { key: 'what', label: 'What' },
          { key: 'value', label: 'Read', numeric: true },
        ]}
        rows={view.readings.map((r) => ({ id: r.id, cells: { when: r.when, what: r.what, value: r.value } }))}
      />
      <h2>Log</h2>
      <ol>
        {view.log.map((l, i) => (
          <li key={`${l.at}-${i}`}>
            {l.time} {l.what}
          </li>
        ))}
      </ol>
    </>
  );
}
