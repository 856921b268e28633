import type { FieldShown } from '#lib/forms/fittings.ts';
import { Button } from './button.tsx';
import { Field } from './field.tsx';
import styles from './fitting-form.module.css';
import type { FormAction } from './form-action.ts';
import { Problem } from './problem.tsx';
import { Tick } from './tick.tsx';
import { Tray } from './tray.tsx';

export type FittingFormProps = {
  fields: readonly FieldShown[];
  /** Kept with the form: which fitting it is. */
  hidden: Readonly<Record<string, string>>;
  keep: FormAction;
  /** Null where there is nothing to take away. */
  drop: FormAction | null;
  button: string;
  ids: { keep: string; drop: string };
  refused: string | null;
};

/** One thing a place is fitted with: its figures, and the way to take it off the list. */
export function FittingForm({ fields, hidden, keep, drop, button, ids, refused }: FittingFormProps) {
  const address = Object.entries(hidden).map(([k, v]) => <input key={k} type="hidden" name={k} value={v} />);
  return (
    <>
      {refused ? <Problem title="Not changed">{refused}</Problem> : null}
      <Tray title="Figures">
        <form action={keep} className={styles.form}>
          <input type="hidden" name="id" value={ids.keep} />
          {address}
          {fields.map((f) =>
            f.as === 'tick' ? (
              <Tick key={f.name} name={f.name} label={f.label} on={f.text === 'true'} />
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
          <Button>{button}</Button>
        </form>
      </Tray>
      {drop === null ? null : (
        <form action={drop}>
          <input type="hidden" name="id" value={ids.drop} />
          {address}
          <Button kind="quiet">Take it off the list</Button>
        </form>
      )}
    </>
  );
}
