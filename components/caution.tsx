import type { ReactNode } from 'react';
import styles from './notice.module.css';

/** A caution: something doubtful, or a hazard where the act happens. Always in words, never by colour alone. */
export function Caution({ title, children }: { title?: ReactNode; children?: ReactNode }) {
  return (
    <div role="note" className={styles.caution}>
      <p className={styles.title}>
        <svg viewBox="0 0 20 20" className={styles.mark} aria-hidden="true">
          <path d="M10 2 19 18H1z" />
        </svg>
        <span>
          <span className={styles.word}>Caution.</span> {title}
        </span>
      </p>
      {children ? <div className={styles.body}>{children}</div> : null}
    </div>
  );
}
