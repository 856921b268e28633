import type { ReactNode } from 'react';
import styles from './notice.module.css';

export type RefusalProps = {
  /** What is refused and why, naming the edge that was crossed. */
  cause: ReactNode;
  /** At least one way out. */
  waysOut: readonly ReactNode[];
  /** Publication or rule the refusal rests on. */
  source?: ReactNode;
};

/** Something that must not be done: the cause, and what can be done in its place. */
export function Refusal({ cause, waysOut, source }: RefusalProps) {
  return (
    <div role="alert" className={styles.refusal}>
      <p className={styles.title}>
        <svg viewBox="0 0 20 20" className={styles.mark} aria-hidden="true">
          <path d="M6 1h8l5 5v8l-5 5H6l-5-5V6z" />
          <path d="M6 10h8" className={styles.bar} />
        </svg>
        <span>
          <span className={styles.word}>Not this way.</span> {cause}
        </span>
      </p>
      <div className={styles.body}>
        {waysOut.length === 1 ? (
          <p>{waysOut[0]}</p>
        ) : (
          <ul className={styles.list}>
            {waysOut.map((way, i) => (
              <li key={i}>{way}</li>
            ))}
          </ul>
        )}
        {source ? <p className={styles.source}>Source: {source}</p> : null}
      </div>
    </div>
  );
}
