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
  /** What comes off an apple. */
  trim: string;
  refused: string | null;
};

/** Apples cut to rings, pears to slices, for drying; an apple’s peel and core are a set-aside of their own. */
export function CutFruit({ fruit, typed, cut, id, trim, refused }: CutFruitProps) {
  if (fruit.length === 0)
    return (
      <EmptyState
        title="No apples or pears are waiting."
        first="They are cut from what was weighed in."
        action={<LinkButton href="/harvest">Weigh in a picking</LinkButton>}
      />
    );
  return (
    <Tray title="Rings and slices">
      {refused ? <Problem title="Not cut">{refused}</Problem> : null}
      <form action={cut} className={styles.form}>
        <input type="hidden" name="id" value={id} />
        <Field
          as="select"
          name="lot"
          label="Fruit"
          options={fruit.map((f) => ({
            value: f.id,
            label: `${f.label}, ${f.grade}, ${kilograms(f.grams)} (${f.code})`,
          }))}
          defaultValue={typed.lot}
        />
        <Field
          name="raw"
          label="Fruit, as weighed"
          unit="kg"
          inputMode="decimal"
          required
          defaultValue={typed.raw ?? ''}
        />
        <Field
          name="cut"
          label="Rings or slices"
          unit="kg"
          inputMode="decimal"
          required
          defaultValue={typed.cut ?? ''}
        />
        <p className="quiet">Peel and core of apples: {trim}.</p>
        <Tick name="keepPeel" label="Keep an apple’s peel and cores" on />
        <Button size="large">Cut</Button>
      </form>
    </Tray>
  );
}
