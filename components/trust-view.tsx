import { DataTable } from './data-table.tsx';
import type { FormAction } from './form-action.ts';
import { LearntTray, type LearntTrayProps } from './learn-tray.tsx';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';
import styles from './trust-view.module.css';

type RestsOn = { what: string; why: string };
export type TrustViewProps = {
  finish: readonly RestsOn[];
  processing: readonly RestsOn[];
  willNotSay: readonly { what: string; instead: string; figure: string; source: string }[];
  accuracy: readonly {
    id: string;
    quantity: string;
    rows: number;
    mean: string;
    worst: string;
    unit: string;
    note: string;
  }[];
  learnt: LearntTrayProps['learnt'];
  forget: FormAction;
  id: string;
};

/** What stands behind the figures, what is never said, what own batches taught, and the checks against print. */
export function TrustPage({ finish, processing, willNotSay, accuracy, learnt, forget, id }: TrustViewProps) {
  return (
    <>
      <TrayTable columns="equal">
        <Tray title="When is it done? In this order">
          <Order items={finish} />
        </Tray>
        <Tray title="What lets a jar onto the shelf">
          <Order items={processing} />
        </Tray>
      </TrayTable>
      <Tray title="What the program will not say" id="will-not-say">
        <dl className={styles.limits}>
          {willNotSay.map((w) => (
            <div key={w.what}>
              <dt>{w.what}</dt>
              <dd>{w.instead}</dd>
              <dd className={styles.quiet}>
                <span className={styles.figure}>{w.figure}</span>. {w.source}.
              </dd>
            </div>
          ))}
        </dl>
      </Tray>
      <LearntTray learnt={learnt} forget={forget} id={id} />
      <Tray title="Against what is printed" id="accuracy">
        <p>
          Every published figure the sums were tried on. Mean and worst distance count known misses too; where a formula
          was fitted to the very figures, or a figure is from memory, it says so.
        </p>
        <DataTable
          caption="Accuracy"
          hideCaption
          columns={[
            { key: 'quantity', label: 'Quantity' },
            { key: 'rows', label: 'Rows', numeric: true },
            { key: 'error', label: 'Mean error, worst' },
            { key: 'note', label: 'Take care' },
          ]}
          rows={accuracy.map((a) => ({
            id: a.id,
            cells: {
              quantity: a.quantity,
              rows: a.rows,
              error: `${a.mean}, ${a.worst} ${a.unit}`,
              note: a.note || null,
            },
          }))}
        />
      </Tray>
    </>
  );
}

const Order = ({ items }: { items: readonly RestsOn[] }) => (
  <ol className={styles.order}>
    {items.map((i) => (
      <li key={i.what}>
        <strong>{i.what}</strong> {i.why}
      </li>
    ))}
  </ol>
);
