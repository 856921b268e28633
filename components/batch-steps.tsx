import type { ReactNode } from 'react';
import styles from './batch-steps.module.css';
import { StatusMark } from './status-mark.tsx';

export type BatchStep = {
  id: string;
  title: string;
  state: 'done' | 'now' | 'next';
  /** What to do, with the figures; only the present step shows it at the stove. */
  body?: ReactNode;
  /** When it was done, or when it is due: "18:42". */
  at?: string;
  /** The button that ends the step. */
  action?: ReactNode;
};
export type BatchStepsProps = {
  steps: readonly BatchStep[];
  /** One step a screen, 28 px, the button across the bottom. */
  stove?: boolean;
};

/** The batch in order: done, now, next. */
export function BatchSteps({ steps, stove = false }: BatchStepsProps) {
  return (
    <ol className={styles.steps} data-mode={stove ? 'stove' : undefined}>
      {steps.map((s, i) => (
        <li
          key={s.id}
          className={styles.step}
          data-state={s.state}
          aria-current={s.state === 'now' ? 'step' : undefined}
        >
          <div className={styles.head}>
            <span className={styles.number}>{i + 1}</span>
            <h3>{s.title}</h3>
            <span className={styles.state}>
              {s.state === 'next' ? null : <StatusMark state={s.state} />}
              {s.at ? <span className="quiet"> {s.at}</span> : null}
            </span>
          </div>
          {s.body && (s.state === 'now' || !stove) ? <div className={styles.body}>{s.body}</div> : null}
          {s.action && s.state === 'now' ? <div className={styles.action}>{s.action}</div> : null}
        </li>
      ))}
    </ol>
  );
}
