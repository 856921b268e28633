'use client';
import { useState } from 'react';
import { Button } from './button.tsx';
import styles from './harvest-desk.module.css';
import type { PadRow } from './harvest-pad-state.ts';

export type NothingRipeProps = {
  rows: readonly PadRow[];
  onLook: (rowId: string) => Promise<{ ok: boolean; said?: string; reason?: string }>;
};

/** A look that found nothing ripe is a record too: the forecast learns from it. */
export function NothingRipe({ rows, onLook }: NothingRipeProps) {
  const [said, setSaid] = useState('');
  return (
    <details className={styles.look}>
      <summary>Looked, and nothing was ripe</summary>
      <form
        className={styles.lookForm}
        onSubmit={async (e) => {
          e.preventDefault();
          const row = new FormData(e.currentTarget).get('row');
          const answer = await onLook(String(row));
          setSaid(answer.said ?? answer.reason ?? 'Recorded.');
        }}
      >
        <label>
          Row{' '}
          <select name="row" className={styles.select}>
            {rows.map((r) => (
              <option key={r.id} value={r.id}>
                {r.cropLabel}, {r.label}
              </option>
            ))}
          </select>
        </label>
        <Button kind="quiet">Record the look</Button>
        <p role="status">{said}</p>
      </form>
    </details>
  );
}
