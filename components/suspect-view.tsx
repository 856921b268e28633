import { Button } from './button.tsx';
import { ButtonRow } from './button-row.tsx';
import { Caution } from './caution.tsx';
import { DataTable } from './data-table.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import { LinkButton } from './link-button.tsx';
import styles from './suspect-view.module.css';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

export type SuspectShown = {
  jar: string | null;
  lot: string;
  line: string;
  sign: string | null;
  reported: readonly { jar: string; sign: string; day: string }[];
  sisters: readonly { code: string; at: string; where: string }[];
  held: string | null;
  batch: string | null;
  sameLoad: readonly string[];
  signs: readonly { id: string; name: string; look: string }[];
  signSource: string;
  rule: string;
};

export type SuspectViewProps = { view: SuspectShown; report: FormAction; ids: readonly string[] };

/** One jar that looks wrong: the signs to look for, each a button; then what to do with it, and its sisters. */
export function SuspectView({ view, report, ids }: SuspectViewProps) {
  return (
    <TrayTable columns="equal">
      {view.jar !== null && view.sign === null ? (
        <Tray title="What do you see?">
          <form action={report} className={styles.signs}>
            <input type="hidden" name="code" value={view.jar} />
            <input type="hidden" name="id" value={ids[0]} />
            {view.signs.map((s) => (
              <div key={s.id}>
                <Button kind="refuse" size="large" block name="sign" value={s.id}>
                  {s.name}
                </Button>
                <p>{s.look}</p>
              </div>
            ))}
          </form>
          <p className={`quiet ${styles.part}`}>{view.signSource}.</p>
          <Caution title={view.rule} />
        </Tray>
      ) : null}
      {view.sign !== null || view.reported.length > 0 ? (
        <Tray title={view.held ? 'The batch is on hold' : 'What to do'}>
          {view.sign === null ? null : <Caution title={view.rule} />}
          {view.held ? (
            <>
              <p>
                <b>{view.held}.</b> Nothing of it is eaten, given or sold. Take it off the shelf and off the stall, and
                tell whoever has some of it.
              </p>
              <ButtonRow>
                <LinkButton href={`/print/calls?code=${encodeURIComponent(view.lot)}`}>Call list</LinkButton>
                <LinkButton kind="quiet" href={`/recall?code=${encodeURIComponent(view.lot)}`}>
                  Recall the lot
                </LinkButton>
              </ButtonRow>
            </>
          ) : (
            <p className={styles.part}>
              Look at each of its sisters in good light. A second one like it puts the whole batch on hold (rule of this
              house).
            </p>
          )}
          <h3 className={styles.part}>Reported so far</h3>
          <ul>
            {view.reported.map((r) => (
              <li key={r.jar}>
                {r.jar}: {r.sign}, {r.day}
              </li>
            ))}
          </ul>
        </Tray>
      ) : null}
      <Tray title={view.jar === null ? 'Its jars' : 'Its sisters'}>
        <DataTable
          caption="Jars of the batch and where each is"
          hideCaption
          none="It was the only jar of its batch."
          columns={[
            { key: 'jar', label: 'Jar' },
            { key: 'where', label: 'Where' },
          ]}
          rows={view.sisters.map((s) => ({
            id: s.code,
            cells: {
              jar: <a href={`/jar/${s.code}`}>{s.code}</a>,
              where: (
                <span className={styles.where}>
                  {s.where}
                  {view.reported.some((r) => r.jar === s.code) ? (
                    <b>reported</b>
                  ) : (
                    <a href={`/suspect/${s.code}`}>
                      looks wrong<span className="heard">: {s.code}</span>
                    </a>
                  )}
                </span>
              ),
            },
          }))}
        />
        {view.sameLoad.length > 0 ? (
          <p>
            In the same canner load:{' '}
            {view.sameLoad.map((c) => (
              <a key={c} href={`/suspect/${c}`}>
                {c}{' '}
              </a>
            ))}
          </p>
        ) : null}
        {view.batch ? (
          <p>
            <a href={`/batches/${view.batch}`}>The batch and its log</a>
          </p>
        ) : null}
      </Tray>
    </TrayTable>
  );
}

export type SuspectStartProps = { typed: string; reports: readonly { jar: string; sign: string; day: string }[] };

/** Which jar, and what was reported before. */
export function SuspectStart({ typed, reports }: SuspectStartProps) {
  return (
    <TrayTable columns="equal">
      <Tray title="Which jar?">
        <form action="/suspect">
          <Field
            name="code"
            label="Jar or lot"
            hint="25193-RAS-A/04, as on the label"
            defaultValue={typed}
            required
            size="large"
          />
          <Button>Look it up</Button>
        </form>
      </Tray>
      <Tray title="Reported so far">
        <DataTable
          caption="Jars that looked wrong, the newest first"
          hideCaption
          none="No jar has looked wrong yet."
          columns={[
            { key: 'jar', label: 'Jar' },
            { key: 'sign', label: 'Sign' },
            { key: 'day', label: 'Reported' },
          ]}
          rows={reports.map((r) => ({
            id: r.jar,
            cells: { jar: <a href={`/suspect/${r.jar}`}>{r.jar}</a>, sign: r.sign, day: r.day },
          }))}
        />
      </Tray>
    </TrayTable>
  );
}
