import { kilograms } from '#lib/units/format.ts';
import { Button } from './button.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import styles from './set-aside-card.module.css';
import { Tray } from './tray.tsx';

export type BringInProps = {
  citrus: readonly { id: string; code: string; label: string; grams: number }[];
  typed: Readonly<Record<string, string | undefined>>;
  actions: { herbs: FormAction; zest: FormAction };
  ids: { herbs: string; zest: string };
};

/** What comes to the dryer without a knife: herbs from the garden, zest off citrus. */
export function BringIn({ citrus, typed, actions, ids }: BringInProps) {
  return (
    <>
      <Tray title="Herbs from the garden">
        <form action={actions.herbs} className={styles.form}>
          <input type="hidden" name="id" value={ids.herbs} />
          <Field name="name" label="Herb" required defaultValue={typed.name ?? ''} maxLength={40} />
          <Field
            name="grams"
            label="Leaves, fresh"
            unit="g"
            inputMode="numeric"
            required
            defaultValue={typed.grams ?? ''}
          />
          <Button kind="quiet">Bring them in</Button>
        </form>
      </Tray>
      {citrus.length > 0 ? (
        <Tray title="Zest">
          <form action={actions.zest} className={styles.form}>
            <input type="hidden" name="id" value={ids.zest} />
            <Field
              as="select"
              name="lot"
              label="Citrus"
              options={citrus.map((f) => ({ value: f.id, label: `${f.label}, ${kilograms(f.grams)} (${f.code})` }))}
              defaultValue={typed.lot}
            />
            <Field
              name="raw"
              label="Fruit zested"
              unit="kg"
              inputMode="decimal"
              required
              defaultValue={typed.raw ?? ''}
            />
            <Field
              name="zest"
              label="Zest"
              hint="3 to 6 % of the fruit by a fine grater: estimate"
              unit="g"
              inputMode="numeric"
              required
              defaultValue={typed.zest ?? ''}
            />
            <Button kind="quiet">Zested</Button>
          </form>
        </Tray>
      ) : null}
    </>
  );
}
