import { Button } from './button.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import styles from './put-right-view.module.css';
import { Tray } from './tray.tsx';

type Option = { value: string; label: string };
export type LateBatchFormProps = {
  action: FormAction;
  id: string;
  recipes: readonly Option[];
  jars: readonly Option[];
  typed: { recipeId?: string | undefined; day: string; jar?: string | undefined; about?: string | undefined };
};

/** A batch nobody logged: what it was, about when, about how many. */
export function LateBatchForm({ action, id, recipes, jars, typed }: LateBatchFormProps) {
  return (
    <Tray title="From memory">
      <form action={action} className={styles.form}>
        <input type="hidden" name="id" value={id} />
        <Field
          as="select"
          name="recipeId"
          label="What was made?"
          options={recipes}
          defaultValue={typed.recipeId}
          required
        />
        <Field type="date" name="day" label="On what day?" defaultValue={typed.day} required />
        <Field as="select" name="jar" label="In which jars?" options={jars} defaultValue={typed.jar} required />
        <Field name="about" label="About how many?" inputMode="numeric" defaultValue={typed.about} required />
        <p className="quiet">
          The jars count in the pantry and in the season, marked as from memory. They are not for sale until the sealed
          ones are counted and the process is stated. A jar nobody looked at: lid flat, no mould, no moving bubble, no
          odd smell on opening, or the whole jar goes. Never taste to find out.
        </p>
        <Button>Log it</Button>
      </form>
    </Tray>
  );
}

/** What was found out since about a batch logged from memory. */
export function LateBatchState({
  action,
  id,
  lot,
  onHand,
}: {
  action: FormAction;
  id: string;
  lot: string;
  onHand: number;
}) {
  return (
    <Tray title="Logged from memory">
      <form action={action} className={styles.form}>
        <input type="hidden" name="id" value={id} />
        <input type="hidden" name="lot" value={lot} />
        <Field
          name="sealed"
          label="Sealed jars, counted"
          inputMode="numeric"
          hint={`The book says about ${onHand}.`}
          required
        />
        <Field
          name="minutes"
          label="Minutes at a full boil in the canner"
          inputMode="decimal"
          hint="Empty when nobody knows: the jars stay for the household."
        />
        <Field
          as="select"
          name="asWritten"
          label="Cooked as the recipe is written?"
          options={[
            { value: '', label: 'no, or nobody knows' },
            { value: 'on', label: 'yes: fruit, amounts and acid' },
          ]}
        />
        <Button>State it</Button>
      </form>
    </Tray>
  );
}
