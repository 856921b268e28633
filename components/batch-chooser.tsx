import { bothMasses } from '#lib/units/format.ts';
import styles from './batch-chooser.module.css';
import { Button } from './button.tsx';
import { EmptyState } from './empty-state.tsx';
import { LinkButton } from './link-button.tsx';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

export type BatchChooserProps = {
  fruit: readonly { id: string; code: string; label: string; grade: string; grams: number; chosen: boolean }[];
  recipes: readonly { id: string; title: string; kind: string; goes: string; standing: string; note: string | null }[];
};

/** First the fruit, then what it may become here. */
export function BatchChooser({ fruit, recipes }: BatchChooserProps) {
  if (fruit.length === 0)
    return (
      <EmptyState
        title="No fruit is waiting."
        first="A batch begins with fruit that was weighed in."
        action={
          <>
            <LinkButton href="/harvest">Weigh in a picking</LinkButton> <ElsewhereLink />
          </>
        }
      />
    );
  const chosen = fruit.filter((f) => f.chosen);
  return (
    <TrayTable columns="equal">
      <Tray title="Which fruit?">
        <form>
          <ul className={styles.fruit}>
            {[...chosen, ...fruit.filter((f) => !f.chosen)].map((f) => (
              <li key={f.id}>
                <label className={styles.tick}>
                  <input type="checkbox" name="lot" value={f.id} defaultChecked={f.chosen} />
                  <span>
                    <b>{f.label}</b>
                    {f.grade ? `, ${f.grade}` : ''}
                    <span className={styles.quiet}>
                      {bothMasses(f.grams)} · {f.code}
                    </span>
                  </span>
                </label>
              </li>
            ))}
          </ul>
          <Button kind={chosen.length > 0 ? 'quiet' : 'primary'}>Show what it can become</Button>
        </form>
        <p>
          <ElsewhereLink />
        </p>
      </Tray>
      <Tray title="What shall it become?">
        {chosen.length === 0 ? (
          <p>Tick the fruit first.</p>
        ) : recipes.length === 0 ? (
          <p>No recipe of the book takes this fruit together. Take one kind at a time.</p>
        ) : (
          <ul className={styles.recipes}>
            {recipes.map((r) => (
              <li key={r.id}>
                <a
                  href={`/batches/new?${new URLSearchParams([
                    ['recipe', r.id],
                    ...chosen.flatMap((f): [string, string][] => [
                      ['lot', f.id],
                      ['kg', (f.grams / 1000).toFixed(3)],
                    ]),
                  ])}`}
                >
                  <b>{r.title}</b>
                  <span className={styles.quiet}>
                    {r.kind} · {r.goes} · {r.standing}
                  </span>
                  {r.note ? <span className={styles.note}>{r.note}</span> : null}
                </a>
              </li>
            ))}
          </ul>
        )}
      </Tray>
    </TrayTable>
  );
}

const ElsewhereLink = () => (
  <LinkButton kind="quiet" href="/harvest/elsewhere">
    Fruit from elsewhere
  </LinkButton>
);
