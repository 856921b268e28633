import { Button } from './button.tsx';
import { Field } from './field.tsx';
import styles from './fitting-form.module.css';
import type { FormAction } from './form-action.ts';
import { LinkButton } from './link-button.tsx';
import { Problem } from './problem.tsx';
import { Tray } from './tray.tsx';

export type FruitElsewhereFormProps = {
  action: FormAction;
  id: string;
  fruits: readonly { value: string; label: string }[];
  /** What was typed before a refusal, by field. */
  typed: Readonly<Record<string, string | undefined>>;
  today: string;
  refused: string | null;
  /** What came in just now, and the lot it is. */
  done: { said: string; lotId: string; code: string } | null;
};

const GRADES = ['perfect', 'blemished', 'soft'].map((g) => ({ value: g, label: g }));
const UNITS = ['kg', 'lb'].map((u) => ({ value: u, label: u }));

/** Fruit that was bought or given, as one receipt. */
export function FruitElsewhereForm(p: FruitElsewhereFormProps) {
  const was = (name: string) => (p.typed[name] ? { defaultValue: p.typed[name] } : {});
  return (
    <>
      {p.refused ? <Problem title="Not recorded">{p.refused}</Problem> : null}
      {p.done ? (
        <Tray title="It is in the store">
          <p role="status">{p.done.said}</p>
          <p>
            <LinkButton href={`/batches/new?lot=${encodeURIComponent(p.done.lotId)}`}>What can it become?</LinkButton>{' '}
            <LinkButton kind="quiet" href={`/trace/${p.done.code}`}>
              Its trace
            </LinkButton>
          </p>
        </Tray>
      ) : null}
      <Tray title={p.done ? 'More from elsewhere' : 'What came in'}>
        <form action={p.action} className={styles.form}>
          <input type="hidden" name="id" value={p.id} />
          <Field as="select" name="foodId" label="Fruit" options={p.fruits} required {...was('foodId')} />
          <Field name="supplier" label="From whom" maxLength={80} required {...was('supplier')} />
          <Field name="weight" label="Weight" inputMode="decimal" required {...was('weight')} />
          <Field as="select" name="unit" label="In" options={UNITS} {...was('unit')} />
          <Field as="select" name="grade" label="Grade" options={GRADES} {...was('grade')} />
          <label className={styles.tick}>
            <input type="checkbox" name="groundFall" defaultChecked={p.typed.groundFall === 'on'} />
            <span>Some of it was picked up from the ground: that is not cooked, pressed or dried</span>
          </label>
          <Field type="date" name="day" label="Day" required defaultValue={p.typed.day ?? p.today} />
          <Field name="boxLot" label="Lot on the box" maxLength={60} {...was('boxLot')} />
          <Button>Bring it in</Button>
        </form>
      </Tray>
    </>
  );
}
