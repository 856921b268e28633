import type { ReactNode } from 'react';
import styles from './answer-heading.module.css';

/** The page's question answered in one sentence with the number in it, and one quiet sentence beneath. */
export function AnswerHeading({ answer, sub }: { answer: ReactNode; sub?: ReactNode }) {
  return (
    <div className={styles.heading}>
      <h1>{answer}</h1>
      {sub ? <p className={styles.sub}>{sub}</p> : null}
    </div>
  );
}
