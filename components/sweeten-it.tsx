import { Button } from './button.tsx';
import { Caution } from './caution.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import { PartOf } from './part-of.tsx';
import styles from './set-aside-card.module.css';
import { Tick } from './tick.tsx';

export type SweetenItProps = {
  way: { id: string; title: string };
  code: string;
  action: FormAction;
  id: string | undefined;
};

/** Rind or zest candied, or rubbed into sugar: what went in and the packs that came of it. */
export function SweetenIt({ way, code, action, id }: SweetenItProps) {
  const candy = way.id === 'candy';
  return (
    <form action={action} className={styles.form}>
      <input type="hidden" name="id" value={id} />
      <input type="hidden" name="code" value={code} />
      <input type="hidden" name="way" value={way.id} />
      {candy ? <Caution title="Boiling syrup burns: dry hands, long spoon, nobody small near." /> : null}
      <PartOf />
      <Field name="sugarG" label="Sugar" unit="kg" inputMode="decimal" required />
      {candy ? <Field name="waterG" label="Water" unit="kg" inputMode="decimal" /> : null}
      <Field name="packs" label="Packs" inputMode="numeric" required />
      <Field name="gramsEach" label="Weight of each" unit="g" inputMode="numeric" required />
      <Tick name="waxed" label="The rind was waxed or treated" />
      <Button kind="quiet">{way.title}</Button>
    </form>
  );
}
