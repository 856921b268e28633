import type { ReactNode } from 'react';
import styles from './page-state.module.css';

export type ErrorStateProps = {
  /** What did not work: "The plan could not be worked out." */
  what: ReactNode;
  /** What has been kept in spite of it. */
  kept?: ReactNode;
  /** What to try next. */
  next: ReactNode;
  action?: ReactNode;
};

/** Something went wrong: says what, what was kept, and what to try. Never blames, never only a code. */
export function ErrorState({ what, kept, next, action }: ErrorStateProps) {
  return (
    <div role="alert" className={`${styles.state} ${styles.error}`}>
      <svg viewBox="0 0 60 64" className={styles.jar} aria-hidden="true">
        <rect x="13" y="3" width="34" height="9" rx="3" />
        <path d="M12 15h36q4 0 4 6v32q0 6-6 6H14q-6 0-6-6V21q0-6 4-6z" />
        <path d="M30 15l-6 14 10 6-8 12 5 12" />
      </svg>
      <div>
        <p className={styles.title}>{what}</p>
        {kept ? <p>{kept}</p> : null}
        <p>{next}</p>
        {action ? <div className={styles.action}>{action}</div> : null}
      </div>
    </div>
  );
}
