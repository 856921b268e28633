import { kilograms } from '#lib/units/format.ts';
import { Button } from './button.tsx';
import { EmptyState } from './empty-state.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import { LinkButton } from './link-button.tsx';
import { Problem } from './problem.tsx';
import styles from './set-aside-card.module.css';
import { Tick } from './tick.tsx';
import { Tray } from './tray.tsx';

export type CutFruitProps = {
  fruit: readonly { id: string; code: string; label: string; grade: string; grams: number }[];
  typed: Readonly<Record<string, string | undefined>>;
  cut: FormAction;
  id: string;
  refused: string | null;
};

/** Apples peeled, cored and cut to rings for the dryer; the peel and core are a set-aside of their own. */
export function CutFruit({ fruit, typed, cut, id, refused }: CutFruitProps) {
  if (fruit.length === 0)
    return (
      <EmptyState
        title="No apples are waiting."
        first="Rings are cut from apples that were weighed in."
        action={<LinkButton href="/harvest">Weigh in a picking</LinkButton>}
      />
    );
  return (
    <Tray title="Rings for the dryer">
      {refused ? <Problem title="Not cut">{refused}</Problem> : null}
      <form action={cut} className={styles.form}>
        <input type="hidden" name="id" value={id} />
        <Field
          as="select"
          name="lot"
          label="Apples"
          options={fruit.map((f) => ({
            value: f.id,
            label: `${f.label}, ${f.grade}, ${kilograms(f.grams)} (${f.code})`,
          }))}
          defaultValue={typed.lot}
        />
        <Field
          name="raw"
          label="Apples, as weighed"
          unit="kg"
          inputMode="decimal"
          required
          defaultValue={typed.raw ?? ''}
        />
        <Field name="cut" label="Peeled rings" unit="kg" inputMode="decimal" required defaultValue={typed.cut ?? ''} />
        <Tick name="keepPeel" label="Keep the peel and cores" on />
        <Button size="large">Cut</Button>
      </form>
    </Tray>
  );
}
