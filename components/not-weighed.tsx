'use client';
import { useState } from 'react';
import { actId } from './act-id.ts';
import { Button } from './button.tsx';
import styles from './harvest-desk.module.css';
import type { PadRow } from './harvest-pad-state.ts';
import type { PadContainer } from './harvest-weights.ts';

export type NotWeighedProps = {
  rows: readonly PadRow[];
  containers: readonly PadContainer[];
  onKeep: (
    id: string,
    rowId: string,
    unweighed: { containerId: string; count: number },
  ) => Promise<{ ok: boolean; said?: string; reason?: string }>;
};

/** A bucket that stands full and waits for the scale: it is asked about until it is weighed. */
export function NotWeighed({ rows, containers, onKeep }: NotWeighedProps) {
  const [said, setSaid] = useState('');
  // One id for one filling-in: pressed twice, it is the same bucket.
  const [id, setId] = useState(actId);
  const fresh = () => {
    setId(actId());
    setSaid('');
  };
  return (
    <details className={styles.look}>
      <summary>Full, and not weighed yet</summary>
      <form
        className={styles.lookForm}
        onSubmit={async (e) => {
          e.preventDefault();
          const form = new FormData(e.currentTarget);
          const count = Number(form.get('count'));
          const answer = await onKeep(id, String(form.get('row')), {
            containerId: String(form.get('container')),
            count,
          });
          setSaid(answer.said ?? answer.reason ?? 'Kept.');
        }}
      >
        <label>
          From row{' '}
          <select name="row" className={styles.select}>
            {rows.map((r) => (
              <option key={r.id} value={r.id}>
                {r.cropLabel}, {r.label}
              </option>
            ))}
          </select>
        </label>
        <label>
          How many{' '}
          <input type="number" name="count" className={styles.select} defaultValue={1} min={1} max={99} required />
        </label>
        <label>
          Of what{' '}
          <select name="container" className={styles.select}>
            {containers.map((c) => (
              <option key={c.id} value={c.id}>
                {c.label}
              </option>
            ))}
          </select>
        </label>
        {said ? (
          <Button type="button" kind="quiet" onClick={fresh}>
            Another one
          </Button>
        ) : (
          <Button kind="quiet">Keep it for the scale</Button>
        )}
        <p role="status">{said}</p>
      </form>
    </details>
  );
}
