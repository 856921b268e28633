import { Button } from './button.tsx';
import { Field } from './field.tsx';
import styles from './fitting-form.module.css';
import type { FormAction } from './form-action.ts';
import { Problem } from './problem.tsx';
import { Tray } from './tray.tsx';

export type FittingFormProps = {
  fields: readonly {
    name: string;
    label: string;
    hint: string | null;
    as: 'word' | 'number' | 'choice' | 'tick';
    unit: string | null;
    required: boolean;
    options: readonly { value: string; label: string }[];
    text: string;
  }[];
  /** Kept with the form: which fitting it is. */
  hidden: Readonly<Record<string, string>>;
  isNew: boolean;
  keep: FormAction;
  drop: FormAction;
  ids: { keep: string; drop: string };
  refused: string | null;
};

/** One thing a place is fitted with: its figures, and the way to take it off the list. */
export function FittingForm({ fields, hidden, isNew, keep, drop, ids, refused }: FittingFormProps) {
  const address = Object.entries(hidden).map(([k, v]) => <input key={k} type="hidden" name={k} value={v} />);
  return (
    <>
      {refused ? <Problem title="Not changed">{refused}</Problem> : null}
      <Tray title={isNew ? 'What is it like?' : 'Its figures'}>
        <form action={keep} className={styles.form}>
          <input type="hidden" name="id" value={ids.keep} />
          {address}
          {fields.map((f) =>
            f.as === 'tick' ? (
              <label key={f.name} className={styles.tick}>
                <input type="checkbox" name={f.name} defaultChecked={f.text === 'true'} />
                <span>{f.label}</span>
              </label>
            ) : (
              <Field
                key={f.name}
                as={f.as === 'choice' ? 'select' : 'input'}
                name={f.name}
                label={f.label}
                required={f.required}
                options={f.options}
                {...(f.hint ? { hint: f.hint } : {})}
                {...(f.unit ? { unit: f.unit } : {})}
                {...(f.as === 'number' ? { inputMode: 'decimal' as const } : {})}
                {...(f.text === '' ? {} : { defaultValue: f.text })}
              />
            ),
          )}
          <Button>{isNew ? 'Add it' : 'Keep the change'}</Button>
        </form>
      </Tray>
      {isNew ? null : (
        <form action={drop}>
          <input type="hidden" name="id" value={ids.drop} />
          {address}
          <Button kind="quiet">Take it off the list</Button>
        </form>
      )}
    </>
  );
}
