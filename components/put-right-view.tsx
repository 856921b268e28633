import { Button } from './button.tsx';
import { ButtonRow } from './button-row.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import { LinkButton } from './link-button.tsx';
import { Problem } from './problem.tsx';
import styles from './put-right-view.module.css';
import { Tray } from './tray.tsx';

const GRADES = ['perfect', 'blemished', 'soft', 'cull'] as const;
type Grades = Readonly<Record<(typeof GRADES)[number], string>>;

export type PutRightProps = {
  view: {
    id: string;
    against: string | null;
    changes: readonly string[];
    grades: Readonly<Record<(typeof GRADES)[number], number>> | null;
    asked: { lines: readonly string[]; refused: string | null } | null;
    lot: string | null;
  };
  /** Kilograms as typed; the figures of the entry until something is typed. */
  typed: Grades;
  takeBack: FormAction;
  weighAgain: FormAction;
  ids: readonly [string, string];
};

/** One entry: what depends on it, and the ways to put it right. */
export function PutRight({ view, typed, takeBack, weighAgain, ids }: PutRightProps) {
  return (
    <>
      {view.grades ? <Reweigh view={view} typed={typed} action={weighAgain} id={ids[1]} /> : null}
      <Tray title="Take it back">
        {view.against ? (
          <p>
            <b>It cannot be taken back.</b> {view.against}
          </p>
        ) : (
          <>
            <Changes lines={view.changes} />
            <form action={takeBack} className={styles.form}>
              <input type="hidden" name="id" value={ids[0]} />
              <input type="hidden" name="act" value={view.id} />
              <Reasons reasons={['it did not happen', 'entered twice', 'the wrong line or lot']} />
            </form>
          </>
        )}
      </Tray>
      {view.lot ? (
        <ButtonRow>
          <LinkButton kind="quiet" href={`/trace/${view.lot}#entries`}>
            Leave it as it is
          </LinkButton>
        </ButtonRow>
      ) : null}
    </>
  );
}

function Reweigh({
  view,
  typed,
  action,
  id,
}: Pick<PutRightProps, 'view' | 'typed'> & { action: FormAction; id: string }) {
  return (
    <Tray title="Other figures">
      <form method="get" className={styles.form}>
        <div className={styles.grades}>
          {GRADES.map((g) => (
            <Field key={g} name={g} label={g} unit="kg" inputMode="decimal" defaultValue={typed[g]} />
          ))}
        </div>
        <Button kind="quiet">Show what changes</Button>
      </form>
      {view.asked?.refused ? <Problem title="Not this way">{view.asked.refused}</Problem> : null}
      {view.asked && !view.asked.refused ? (
        <form action={action} className={styles.form}>
          <input type="hidden" name="id" value={id} />
          <input type="hidden" name="act" value={view.id} />
          {GRADES.map((g) => (
            <input key={g} type="hidden" name={g} value={typed[g]} />
          ))}
          <Changes lines={view.asked.lines} />
          <Reasons reasons={['weighed again', 'the wrong unit', 'typed wrong']} />
        </form>
      ) : null}
    </Tray>
  );
}

const Changes = ({ lines }: { lines: readonly string[] }) => (
  <ul className={styles.changes}>
    {lines.map((line) => (
      <li key={line}>{line}</li>
    ))}
    <li>The first entry stays in the book with its counter-entry; labels and sheets stay as printed.</li>
  </ul>
);

const Reasons = ({ reasons }: { reasons: readonly string[] }) => (
  <>
    <Field name="typed" label="Why, in your own words" maxLength={120} />
    <ButtonRow>
      {reasons.map((r, i) => (
        <Button key={r} name="why" value={r} kind={i === 0 ? 'primary' : 'quiet'}>
          {r.charAt(0).toUpperCase() + r.slice(1)}
        </Button>
      ))}
    </ButtonRow>
  </>
);
