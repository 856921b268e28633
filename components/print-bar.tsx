'use client';
import type { ReactNode } from 'react';
import { Button } from './button.tsx';
import { LinkButton } from './link-button.tsx';
import styles from './print-bar.module.css';

/** Above a printed sheet, on the screen only: print it, or go back. */
export function PrintBar({ back, backText, children }: { back: string; backText: string; children?: ReactNode }) {
  return (
    <div className={`${styles.bar} no-print`}>
      {children}
      <div className={styles.buttons}>
        <Button type="button" onClick={() => window.print()}>
          Print it
        </Button>
        <LinkButton kind="quiet" href={back}>
          {backText}
        </LinkButton>
      </div>
    </div>
  );
}
