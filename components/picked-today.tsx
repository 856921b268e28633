import { BothUnits } from './both-units.tsx';
import { EmptyState } from './empty-state.tsx';
import styles from './picked-today.module.css';
import { Tray } from './tray.tsx';

export type PickedTodayProps = {
  pickings: readonly { id: string; at: string; what: string; grams: number; code: string; byPerson: string | null }[];
};

/** What came in today, newest first. */
export function PickedToday({ pickings }: PickedTodayProps) {
  return (
    <Tray title="Picked today">
      {pickings.length === 0 ? (
        <EmptyState
          title="Nothing has been weighed in today."
          first="Choose the row above and type what the scale says."
        />
      ) : (
        <ul className={styles.list}>
          {pickings.map((p) => (
            <li key={p.id}>
              <b>{p.what}</b> <span className={styles.row}>{p.code}</span>
              {p.grams > 0 ? <BothUnits grams={p.grams} /> : <span>nothing ripe</span>}
              <a href={`/put-right/${encodeURIComponent(p.id)}`} aria-label={`Put right: ${p.what}, ${p.code}`}>
                Wrong?
              </a>
            </li>
          ))}
        </ul>
      )}
    </Tray>
  );
}
