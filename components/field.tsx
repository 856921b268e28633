import { type InputHTMLAttributes, type ReactNode, useId } from 'react';
import { classNames } from './class-names.ts';
import styles from './field.module.css';

export type FieldProps = {
  name: string;
  label: ReactNode;
  /** How to fill it, or the bounds. */
  hint?: ReactNode;
  /** What is wrong with what was typed, with the numbers; the text typed stays. */
  error?: ReactNode;
  /** Unit after the number: "kg". */
  unit?: string;
  as?: 'input' | 'select' | 'textarea';
  options?: readonly { value: string; label: string }[];
  size?: 'normal' | 'large';
} & Pick<
  InputHTMLAttributes<HTMLInputElement>,
  | 'type'
  | 'inputMode'
  | 'defaultValue'
  | 'required'
  | 'min'
  | 'max'
  | 'step'
  | 'autoComplete'
  | 'placeholder'
  | 'maxLength'
>;

/** A labelled control; hint and error are tied to it for people who hear the page. */
export function Field({
  name,
  label,
  hint,
  error,
  unit,
  as = 'input',
  options = [],
  size = 'normal',
  ...rest
}: FieldProps) {
  const id = useId();
  const describedBy = classNames(hint ? `${id}-hint` : null, error ? `${id}-error` : null) || undefined;
  const common = {
    id,
    name,
    className: classNames(styles.control, size === 'large' && styles.large),
    'aria-describedby': describedBy,
    'aria-invalid': error ? true : undefined,
    required: rest.required,
    defaultValue: rest.defaultValue,
  };
  return (
    <div className={styles.field}>
      <label htmlFor={id}>
        {label}
        {rest.required || as === 'select' || rest.defaultValue !== undefined ? null : (
          <span className={styles.optional}> (may stay empty)</span>
        )}
      </label>
      {hint ? (
        <p id={`${id}-hint`} className={styles.hint}>
          {hint}
        </p>
      ) : null}
      <div className={styles.line}>
        {as === 'select' ? (
          <select {...common}>
            {options.map((o) => (
              <option key={o.value} value={o.value}>
                {o.label}
              </option>
            ))}
          </select>
        ) : as === 'textarea' ? (
          <textarea {...common} rows={3} />
        ) : (
          <input autoComplete="off" {...rest} {...common} />
        )}
        {unit ? <span className={styles.unit}>{unit}</span> : null}
      </div>
      {error ? (
        <p id={`${id}-error`} className={styles.error}>
          <svg viewBox="0 0 20 20" aria-hidden="true">
            <path d="M10 2 19 18H1z" />
          </svg>
          <span>{error}</span>
        </p>
      ) : null}
    </div>
  );
}
