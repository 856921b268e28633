import { Button } from './button.tsx';
import { ButtonRow } from './button-row.tsx';
import { EmptyState } from './empty-state.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import styles from './put-right-view.module.css';
import { Tray } from './tray.tsx';

type Shown = {
  id: string;
  text: string;
  day: string;
  about: 'take' | 'bucket';
  left: number | null;
  count: number | null;
  mayAll: boolean;
  twin: boolean;
  unweighed: boolean;
};
export type QuestionListProps = {
  questions: readonly (Shown & { formId: string })[];
  /** Lines on hand: it may have been another one. */
  lines: readonly { slug: string; line: string }[];
  action: FormAction;
};

/** Acts that did not fit, each with the ways it may have been. */
export function QuestionList({ questions, lines, action }: QuestionListProps) {
  if (questions.length === 0)
    return (
      <EmptyState
        title="No question is open."
        first="What two devices told differently, or what did not fit the shelf, is asked about here."
      />
    );
  return questions.map((q) => (
    <Tray key={q.id} title={q.text}>
      <form action={action} className={styles.form}>
        <input type="hidden" name="id" value={q.formId} />
        <input type="hidden" name="question" value={q.id} />
        {q.about === 'take' ? <TakeWays q={q} lines={lines} /> : <BucketWays q={q} />}
      </form>
    </Tray>
  ));
}

function TakeWays({ q, lines }: { q: Shown; lines: QuestionListProps['lines'] }) {
  return (
    <>
      <ButtonRow>
        {q.left ? (
          <Button name="way" value="left">
            Only {q.left}
          </Button>
        ) : null}
        <Button name="way" value="none" kind="quiet">
          None of it
        </Button>
        {q.mayAll ? (
          <Button name="way" value="all" kind="quiet">
            All {q.count}: the shelf held more
          </Button>
        ) : null}
      </ButtonRow>
      <Field
        as="select"
        name="line"
        label="Or it was another line"
        options={lines.map((l) => ({ value: l.slug, label: l.line }))}
      />
      <ButtonRow>
        <Button name="way" value="line" kind="quiet">
          It was that line
        </Button>
      </ButtonRow>
    </>
  );
}

function BucketWays({ q }: { q: Shown }) {
  return (
    <>
      {q.twin ? (
        <ButtonRow>
          <Button name="way" value="same">
            Yes, the same bucket
          </Button>
        </ButtonRow>
      ) : null}
      {q.unweighed ? (
        <Field name="kg" label={q.twin ? 'No: the other one, net' : 'It weighs, net'} unit="kg" inputMode="decimal" />
      ) : null}
      <ButtonRow>
        <Button name="way" value="other" kind="quiet">
          {q.twin ? 'No, two buckets' : 'Weigh it in'}
        </Button>
        {q.twin ? null : (
          <Button name="way" value="none" kind="quiet">
            There was none
          </Button>
        )}
      </ButtonRow>
    </>
  );
}
