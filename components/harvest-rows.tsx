import { useState } from 'react';
import { fruitColour } from './fruit-colour.ts';
import styles from './harvest-pad.module.css';
import type { PadRow, PadTap } from './harvest-pad-state.ts';

export type HarvestRowsProps = { rows: readonly PadRow[]; chosen: PadRow | null; tap: (t: PadTap) => void };

/** Tiles of crops and rows, ripe ones first as handed in; folds to the chosen one. */
export function HarvestRows({ rows, chosen, tap }: HarvestRowsProps) {
  const [open, setOpen] = useState(false);
  if (chosen && !open) {
    return (
      <div className={styles.chosenRow}>
        <h2>
          <RowName row={chosen} />
        </h2>
        <button type="button" className={styles.chip} onClick={() => setOpen(true)}>
          Other row
        </button>
      </div>
    );
  }
  const ripe = rows.filter((r) => r.inSeason !== false);
  const others = rows.filter((r) => r.inSeason === false);
  const tile = (row: PadRow) => (
    <button
      key={row.id}
      type="button"
      className={styles.tile}
      aria-pressed={row.id === chosen?.id}
      onClick={() => {
        tap({ do: 'row', row });
        setOpen(false);
      }}
    >
      <RowName row={row} />
    </button>
  );
  return (
    <>
      <fieldset className={styles.rows}>
        <legend>Which row?</legend>
        {ripe.map(tile)}
      </fieldset>
      {others.length > 0 ? (
        <details className={styles.others} open={ripe.length === 0}>
          <summary>Rows out of season</summary>
          <div className={styles.rows}>{others.map(tile)}</div>
        </details>
      ) : null}
    </>
  );
}

const RowName = ({ row }: { row: PadRow }) => (
  <span className={styles.rowName}>
    <i className={`${styles.dot} keeps-colour`} style={{ background: fruitColour(row.cropId) }} aria-hidden="true" />
    <span>
      {row.cropLabel} <span className={styles.rowLabel}>{row.label}</span>
    </span>
  </span>
);
