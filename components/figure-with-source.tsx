import type { ReactNode } from 'react';
import styles from './figure-with-source.module.css';

export type FigureInput = { label: string; value: string; from?: string };
export type FigureWithSourceProps = {
  /** The figure as it is read: "103.0 °C · 217.5 °F". */
  value: ReactNode;
  /** What it is: "Stop at". */
  label?: string;
  /** In words or signs: "today's boiling water + 4.44 K". */
  formula: string;
  inputs?: readonly FigureInput[];
  /** Publication, table, edition; or "common practice". */
  source: string;
  /** verified, from memory, estimate, common practice, measured here. */
  status: string;
  /** What would change it. */
  changes?: string;
};

/** A figure that opens to how it came about: formula, inputs, source and how sure the source is. */
export function FigureWithSource(props: FigureWithSourceProps) {
  const { value, label, formula, inputs = [], source, status, changes } = props;
  return (
    <details className={styles.figure}>
      <summary>
        {label ? <span className={styles.label}>{label}</span> : null}
        <span className={styles.value}>
          <b>{value}</b>
          <span className={styles.why}>
            why<span className="heard"> this figure</span>
          </span>
        </span>
      </summary>
      <div className={styles.sheet}>
        <p>{formula}</p>
        {inputs.length > 0 ? (
          <dl className={styles.inputs}>
            {inputs.map((i) => (
              <div key={i.label}>
                <dt>{i.label}</dt>
                <dd>
                  {i.value}
                  {i.from ? <span className={styles.from}>{i.from}</span> : null}
                </dd>
              </div>
            ))}
          </dl>
        ) : null}
        <p>
          <span className={styles.from}>Source:</span> {source} <span className={styles.status}>{status}</span>
        </p>
        {changes ? (
          <p>
            <span className={styles.from}>What changes it:</span> {changes}
          </p>
        ) : null}
      </div>
    </details>
  );
}
