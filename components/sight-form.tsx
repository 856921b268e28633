import { Button } from './button.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import styles from './sight-form.module.css';

/** One question under a crop's curve: about how much hangs there now? */
export function SightForm({
  action,
  id,
  cropId,
  label,
}: {
  action: FormAction;
  id: string;
  cropId: string;
  label: string;
}) {
  return (
    <form action={action} className={styles.form}>
      <input type="hidden" name="id" value={id} />
      <input type="hidden" name="cropId" value={cropId} />
      <Field
        name="kg"
        type="text"
        inputMode="decimal"
        required
        unit="kg"
        label={
          <>
            About how much hangs there now?<span className="heard"> {label}</span>
          </>
        }
      />
      <Button type="submit" kind="quiet">
        Count it in
      </Button>
    </form>
  );
}
