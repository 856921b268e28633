import Link from 'next/link';
import { Button } from './button.tsx';
import { DataTable } from './data-table.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import styles from './plan-view.module.css';
import { Problem } from './problem.tsx';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

export type WantsViewProps = {
  view: {
    choices: readonly { id: string; title: string }[];
    lines: readonly { id: string; title: string; stated: number | null; recorded: number | null }[];
  };
  state: FormAction;
  id: string;
  typed: Readonly<Record<string, string | undefined>>;
};

/** How much of each line the household wants in a year, said by itself. */
export function WantsView({ view, state, id, typed }: WantsViewProps) {
  return (
    <>
      {typed.refused ? <Problem title="Not noted">{typed.refused}</Problem> : null}
      {typed.said ? <p role="status">{typed.said}</p> : null}
      <TrayTable columns="equal">
        <Tray title="Say it">
          <form action={state} className={styles.hours}>
            <input type="hidden" name="id" value={id} />
            <Field
              as="select"
              name="recipe"
              label="Line"
              required
              defaultValue={typed.recipe}
              options={view.choices.map((c) => ({ value: c.id, label: c.title }))}
            />
            <Field
              name="pieces"
              label="Jars or packs a year"
              hint="Empty: by the record"
              inputMode="numeric"
              defaultValue={typed.pieces}
            />
            <Button>Note it</Button>
          </form>
        </Tray>
        <Tray title="Wanted in a year">
          {view.lines.length > 0 ? (
            <DataTable
              caption="Jars or packs wanted in a year"
              hideCaption
              columns={[
                { key: 'line', label: 'Line' },
                { key: 'record', label: 'By the record', numeric: true },
                { key: 'said', label: 'As you said', numeric: true },
              ]}
              rows={view.lines.map((l) => ({
                id: l.id,
                cells: { line: l.title, record: l.recorded ?? '', said: l.stated ?? '' },
              }))}
            />
          ) : (
            <p>Nothing has left the shelf yet and nothing is said: every line counts with eight a year.</p>
          )}
        </Tray>
      </TrayTable>
      <p>
        <Link href="/plan">Back to the plan</Link>
      </p>
    </>
  );
}
