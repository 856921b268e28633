import styles from './count-sheet.module.css';

export type CountSheetProps = {
  places: readonly { place: string; lines: readonly { key: string; line: string; jar: string }[] }[];
};

/** Shelf by shelf, a ruled box beside each line; no number is given away. */
export const CountSheet = ({ places }: CountSheetProps) =>
  places.map((p) => (
    <section key={p.place} className={styles.shelf}>
      <h2>{p.place}</h2>
      <ul>
        {p.lines.map((l) => (
          <li key={l.key}>
            <span>
              {l.line}, {l.jar}
            </span>
            <span className={styles.box} />
          </li>
        ))}
        <li>
          <span>Without a label, by jar</span>
          <span className={styles.box} />
        </li>
      </ul>
    </section>
  ));
