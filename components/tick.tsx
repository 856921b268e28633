import styles from './tick.module.css';

/** A box to tick, large enough for a wet thumb, its words beside it. */
export const Tick = ({ name, label, on = false }: { name: string; label: string; on?: boolean }) => (
  <label className={styles.tick}>
    <input type="checkbox" name={name} defaultChecked={on} />
    <span>{label}</span>
  </label>
);
