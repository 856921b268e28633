import type { ReactNode } from 'react';
import styles from './notice.module.css';

/** Something the person did was not taken: what, and why with the numbers. What was typed stays. */
export function Problem({ title, children }: { title: string; children: ReactNode }) {
  return (
    <div role="alert" className={styles.refusal}>
      <p className={styles.title}>
        <span>
          <span className={styles.word}>{title}.</span> {children}
        </span>
      </p>
    </div>
  );
}
