import styles from './batch-chooser.module.css';
import { Tray } from './tray.tsx';

type Row = { id: string; title: string; goes: string; standing: string; note: string | null };
export type RecipeListProps = { groups: readonly { kind: string; recipes: readonly Row[] }[] };

/** The book, one tray to a kind. */
export function RecipeList({ groups }: RecipeListProps) {
  return groups.map((g) => (
    <Tray key={g.kind} title={`${g.kind.charAt(0).toUpperCase()}${g.kind.slice(1)}`}>
      <ul className={styles.recipes}>
        {g.recipes.map((r) => (
          <li key={r.id}>
            <a href={`/recipes/${r.id}`}>
              <b>{r.title}</b>
              <span className={styles.quiet}>
                {r.goes} · {r.standing}
              </span>
              {r.note ? <span className={styles.note}>{r.note}</span> : null}
            </a>
          </li>
        ))}
      </ul>
    </Tray>
  ));
}
