import { longDate, type PlainDate } from '#lib/units/plain-date.ts';
import { Button } from './button.tsx';
import { DataTable } from './data-table.tsx';
import { EmptyState } from './empty-state.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import { LinkButton } from './link-button.tsx';
import styles from './stock-take.module.css';
import { Tray } from './tray.tsx';

export type CountPlacesProps = { places: readonly { place: string; lines: readonly unknown[] }[]; torch: boolean };

/** Which shelf is counted next. */
export function CountPlaces({ places, torch }: CountPlacesProps) {
  if (places.length === 0)
    return <EmptyState title="Nothing stands on a shelf yet." first="There is nothing to count." />;
  return (
    <Tray title="Which shelf?">
      <div className={styles.places}>
        {places.map((p) => (
          <LinkButton
            key={p.place}
            kind="quiet"
            size="large"
            href={`/stock-take?${new URLSearchParams({ shelf: p.place, ...(torch ? { torch: 'on' } : {}) })}`}
          >
            {p.place}
          </LinkButton>
        ))}
      </div>
    </Tray>
  );
}

export type CountFormProps = {
  place: string;
  lines: readonly { key: string; line: string; jar: string }[];
  jars: readonly { code: string; label: string }[];
  action: FormAction;
  id: string;
};

/** A blind count: the lines that should stand here, without their numbers. */
export function CountForm({ place, lines, jars, action, id }: CountFormProps) {
  return (
    <Tray title={`Count ${place}`}>
      <form action={action} className={styles.form}>
        <input type="hidden" name="id" value={id} />
        <input type="hidden" name="place" value={place} />
        {lines.map((l) => (
          <label key={l.key} className={styles.row}>
            <span>
              {l.line} <span className="quiet">{l.jar}</span>
            </span>
            <input type="hidden" name="keys" value={l.key} />
            <input name="counted" inputMode="numeric" autoComplete="off" className={styles.count} />
          </label>
        ))}
        <fieldset className={styles.unlabelled}>
          <legend>Jars without a label</legend>
          {jars.map((j) => (
            <label key={j.code} className={styles.row}>
              <span>{j.label}</span>
              <input type="hidden" name="items" value={j.code} />
              <input name="unlabelled" inputMode="numeric" autoComplete="off" className={styles.count} />
            </label>
          ))}
        </fieldset>
        <p className="quiet">A line left blank is not counted. Type 0 where it is gone.</p>
        <Button size="large">Counted: show the differences</Button>
      </form>
    </Tray>
  );
}

export type CountResultProps = {
  view: {
    id: string;
    place: string;
    rows: readonly { key: string; line: string; jar: string; counted: number; expected: number; difference: number }[];
    unlabelled: readonly {
      item: string;
      jar: string;
      count: number;
      candidates: readonly { code: string; line: string; madeOn: string; here: boolean }[];
    }[];
    settled: boolean;
  };
  action: FormAction;
  id: string;
};

const FEWER = [
  { value: 'eaten', label: 'eaten, not logged' },
  { value: 'given', label: 'given, not logged' },
  { value: 'broken', label: 'broken' },
  { value: 'missing', label: 'lost, nobody knows' },
  { value: 'miscounted', label: 'miscounted: the book stands' },
];
const MORE = [
  { value: 'found', label: 'found, never logged' },
  { value: 'miscounted', label: 'miscounted: the book stands' },
];

/** The count beside the book, and a reason for every difference. */
export function CountResult({ view, action, id }: CountResultProps) {
  const different = view.rows.filter((r) => r.difference !== 0);
  const open = !view.settled && different.length + view.unlabelled.length > 0;
  return (
    <>
      <Tray title={view.settled ? `${view.place}, now` : `${view.place}, counted and expected`}>
        <DataTable
          caption="Counted and expected"
          hideCaption
          none="No labelled line was counted here."
          columns={[
            { key: 'line', label: 'Line' },
            { key: 'counted', label: 'Counted', numeric: true },
            { key: 'expected', label: view.settled ? 'In the book' : 'Expected', numeric: true },
            { key: 'difference', label: 'Difference', numeric: true },
          ]}
          rows={view.rows.map((r) => ({
            id: r.key,
            cells: {
              line: `${r.line}, ${r.jar}`,
              counted: r.counted,
              expected: r.expected,
              difference: r.difference > 0 ? `+${r.difference}` : String(r.difference).replace('-', '−'),
            },
          }))}
        />
      </Tray>
      {open ? (
        <Tray title="Why?">
          <form action={action} className={styles.form}>
            <input type="hidden" name="id" value={id} />
            <input type="hidden" name="countId" value={view.id} />
            {different.map((r) => (
              <div key={r.key}>
                <input type="hidden" name="keys" value={r.key} />
                <Field
                  as="select"
                  name="reasons"
                  label={`${r.line}: ${r.counted} and not ${r.expected}`}
                  options={r.difference < 0 ? FEWER : MORE}
                />
              </div>
            ))}
            {view.unlabelled.map((u) => (
              <div key={u.item}>
                <input type="hidden" name="items" value={u.item} />
                <Field
                  as="select"
                  name="lots"
                  label={`${u.count} ${u.jar} without a label: taken for`}
                  hint="By jar, shelf and date. They stay for the household, whatever they are taken for."
                  options={[
                    { value: '', label: 'nobody knows: on hold' },
                    ...u.candidates.map((c) => ({
                      value: c.code,
                      label: `${c.line}, ${longDate(c.madeOn as PlainDate)}${c.here ? ', this shelf' : ''} (${c.code})`,
                    })),
                  ]}
                />
              </div>
            ))}
            <Button size="large">Put it in the book</Button>
          </form>
        </Tray>
      ) : null}
    </>
  );
}
