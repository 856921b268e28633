import type { ReactNode } from 'react';
import styles from './page-state.module.css';

export type EmptyStateProps = {
  /** "Nothing has been picked yet." */
  title: ReactNode;
  /** What to do first. */
  first: ReactNode;
  /** The button or link that does it. */
  action?: ReactNode;
};

/** A page or tray with nothing in it says what to do first. */
export function EmptyState({ title, first, action }: EmptyStateProps) {
  return (
    <div className={styles.state}>
      <svg viewBox="0 0 60 64" className={styles.jar} aria-hidden="true">
        <rect x="13" y="3" width="34" height="9" rx="3" />
        <path d="M12 15h36q4 0 4 6v32q0 6-6 6H14q-6 0-6-6V21q0-6 4-6z" />
      </svg>
      <div>
        <p className={styles.title}>{title}</p>
        <p>{first}</p>
        {action ? <div className={styles.action}>{action}</div> : null}
      </div>
    </div>
  );
}
