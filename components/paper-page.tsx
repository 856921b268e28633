import type { ReactNode } from 'react';
import styles from './paper-page.module.css';

/** A page for the printer: A4 or US Letter with a margin, black on white; `large` is 14 point for older eyes. */
export function PaperPage({ large = false, children }: { large?: boolean; children: ReactNode }) {
  return (
    <>
      <style>{'@page { margin: 14mm; }'}</style>
      <div className={large ? `${styles.paper} ${styles.large}` : styles.paper}>{children}</div>
    </>
  );
}
