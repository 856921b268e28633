import { type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import { Button } from './button.tsx';
import { DataTable } from './data-table.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import styles from './line-pieces.module.css';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

export type LinePiecesProps = {
  slug: string;
  pieces: readonly { code: string; address: string | null; madeOn: PlainDate; why: string | null }[];
  action: FormAction;
  id: string;
  typed: { count: string; who: string };
  /** Who was given jars before: one tap gives to them. */
  people: readonly string[];
};

/** One line: its numbered jars, oldest first, and the ways out. */
export function LinePieces({ slug, pieces, action, id, typed, people }: LinePiecesProps) {
  return (
    <TrayTable columns="equal">
      <Tray title="Take, give or sell">
        <form action={action} className={styles.form}>
          <input type="hidden" name="slug" value={slug} />
          <input type="hidden" name="id" value={id} />
          <Field name="count" label="How many?" inputMode="numeric" defaultValue={typed.count} required />
          <Field
            name="who"
            defaultValue={typed.who}
            label="To whom, or where sold?"
            hint="Kept with the jar, so that it can be found again."
            maxLength={80}
          />
          <Field name="price" label="Paid, if sold" inputMode="decimal" />
          {people.length > 0 ? (
            <div className={styles.ways}>
              {people.map((p) => (
                <Button key={p} name="give" value={p} kind="quiet">
                  Give to {p}
                </Button>
              ))}
            </div>
          ) : null}
          <div className={styles.ways}>
            <Button name="to" value="eaten">
              Eaten
            </Button>
            <Button name="to" value="given" kind="quiet">
              Given
            </Button>
            <Button name="to" value="sold" kind="quiet">
              Sold
            </Button>
            <Button name="to" value="spoiled" kind="refuse">
              Spoiled
            </Button>
          </div>
          <p className={styles.hint}>
            The oldest leaves first. Before a sale: the local code and the licensing office decide what may be sold, and
            how it is labelled. Mould, a moving bubble or a lid that gives: the whole jar goes, never scraped or tasted.
          </p>
        </form>
      </Tray>
      <Tray title="Jar by jar">
        <DataTable
          caption="Jars of this line, oldest first"
          hideCaption
          columns={[
            { key: 'jar', label: 'Jar' },
            { key: 'made', label: 'Made' },
            { key: 'where', label: 'Where' },
          ]}
          rows={pieces.map((p) => ({
            id: p.code,
            cells: {
              jar: <a href={`/jar/${p.code}`}>{p.code}</a>,
              made: `${shortDate(p.madeOn)} ${p.madeOn.slice(0, 4)}`,
              where: p.why ?? p.address ?? 'not on a shelf',
            },
          }))}
        />
      </Tray>
    </TrayTable>
  );
}
