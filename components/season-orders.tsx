import { longDate, type PlainDate } from '#lib/units/plain-date.ts';
import { Button } from './button.tsx';
import { ButtonRow } from './button-row.tsx';
import { DataTable } from './data-table.tsx';
import { Field } from './field.tsx';
import { FigureWithSource } from './figure-with-source.tsx';
import { PrintButton } from './print-button.tsx';
import { Problem } from './problem.tsx';
import styles from './season-orders.module.css';
import { Tray } from './tray.tsx';

export type SeasonOrdersProps = {
  view: {
    today: PlainDate;
    by: PlainDate;
    boxOf: number;
    bagKg: number;
    jars: readonly {
      code: string;
      label: string;
      fills: number;
      before: number;
      back: number;
      per: number;
      empties: number;
    }[];
    rows: readonly {
      id: string;
      what: string;
      text: string;
      by: PlainDate;
      why: {
        formula: string;
        inputs: readonly { label: string; value: string; from?: string }[];
        source: string;
        status: string;
        changes?: string;
      };
    }[];
    plan: readonly {
      id: string;
      line: string;
      itemLabel: string;
      batches: number;
      jars: number;
      before: number;
      lastYear: number;
    }[];
  };
  problems: readonly string[];
  /** Address of the same order as a file. */
  csv: string;
};

/** The order, each line open to its reasons; the plan behind it, and the figures a household may set otherwise. */
export function SeasonOrders({ view, problems, csv }: SeasonOrdersProps) {
  return (
    <div className={styles.trays}>
      {problems.length > 0 ? (
        <Problem title="Left aside">
          {problems.map((p) => (
            <p key={p}>{p}</p>
          ))}
        </Problem>
      ) : null}
      <Tray title="The order">
        <p className="quiet">To be there by {longDate(view.by)}.</p>
        {view.rows.map((r) => (
          <FigureWithSource key={r.id} label={r.what} value={r.text} {...r.why} />
        ))}
        <div className="no-print">
          <ButtonRow>
            <PrintButton />
            <a className={styles.file} href={csv} download>
              The order as a CSV file
            </a>
          </ButtonRow>
        </div>
      </Tray>
      <div className="no-print">
        <Tray title="Plan it otherwise">
          <Otherwise view={view} />
        </Tray>
      </div>
      <Tray title="The plan behind it">
        <details>
          <summary className={styles.more}>{view.plan.length} lines, from “What to make and open”</summary>
          <DataTable
            caption={`What the lists say to make, and of it before ${longDate(view.by)}`}
            none="No line has anything to make."
            columns={[
              { key: 'line', label: 'Line' },
              { key: 'jar', label: 'Jar' },
              { key: 'batches', label: 'Batches', numeric: true },
              { key: 'jars', label: 'Make', numeric: true },
              { key: 'before', label: 'Before the date', numeric: true },
              { key: 'last', label: 'Last year', numeric: true },
            ]}
            rows={view.plan.map((p) => ({
              id: p.id,
              cells: {
                line: p.line,
                jar: p.itemLabel,
                batches: p.batches,
                jars: p.jars,
                before: p.before,
                last: p.lastYear,
              },
            }))}
          />
        </details>
      </Tray>
    </div>
  );
}

function Otherwise({ view }: Pick<SeasonOrdersProps, 'view'>) {
  const whole = { type: 'text', inputMode: 'numeric' } as const;
  return (
    <form method="get" className={styles.form}>
      <div className={styles.row}>
        <Field name="by" type="date" label="To be there by" defaultValue={view.by} />
        <Field name="box" {...whole} label="Lids in a box" defaultValue={view.boxOf} />
        <Field name="bag" {...whole} label="Bag of sugar" unit="kg" defaultValue={view.bagKg} />
      </div>
      {view.jars.map((j) => (
        <fieldset key={j.code} className={styles.kind}>
          <legend>
            {j.label}: {j.empties} empty
          </legend>
          <div className={styles.row}>
            <Field name={`fills-${j.code}`} {...whole} label="Fills in the year" defaultValue={j.fills} />
            <Field name={`before-${j.code}`} {...whole} label="Of them before the date" defaultValue={j.before} />
            <Field name={`back-${j.code}`} {...whole} label="Expected back by then" defaultValue={j.back} />
            <Field name={`per-${j.code}`} {...whole} label="Jars in a case" defaultValue={j.per} />
          </div>
        </fieldset>
      ))}
      <ButtonRow>
        <Button type="submit">Reckon the order</Button>
      </ButtonRow>
    </form>
  );
}
