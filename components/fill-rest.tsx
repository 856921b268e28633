import styles from './batch-card.module.css';
import type { BatchSheetShown } from './batch-shown.ts';
import { Field } from './field.tsx';

/** What is named of a pan beside its full jars: the partial one, skimmings, what stuck, the trim. */
export function FillRest({ sheet: s, trim }: { sheet: BatchSheetShown; trim: string | null }) {
  return (
    <>
      <Field
        name="partialG"
        label="Partial jar, to the fridge"
        unit="g"
        inputMode="numeric"
        defaultValue={String(s.partialG)}
        required
      />
      <Field name="skimmingsG" label="Skimmed off" unit="g" inputMode="numeric" defaultValue="0" required />
      <Field name="panLossG" label="Stuck to pan and tools" unit="g" inputMode="numeric" defaultValue="0" required />
      <Field
        name="trimG"
        label="Trim: stones, cores, stalks"
        hint={trim}
        unit="g"
        inputMode="numeric"
        defaultValue={String(s.trimG)}
      />
      <label className={styles.tick}>
        <input type="checkbox" name="keepTrim" /> Keep the trim as a set-aside
      </label>
      <label className={styles.tick}>
        <input type="checkbox" name="seedsOut" /> The seeds are out of it
      </label>
      <label className={styles.tick}>
        <input type="checkbox" name="brownCore" /> Ground-fall fruit or brown cores in it
      </label>
    </>
  );
}
