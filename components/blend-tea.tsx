import { mass } from '#lib/units/format.ts';
import { type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import { Button } from './button.tsx';
import { EmptyState } from './empty-state.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import { LinkButton } from './link-button.tsx';
import { Problem } from './problem.tsx';
import styles from './set-aside-card.module.css';
import { Tray } from './tray.tsx';

export type BlendTeaProps = {
  lots: readonly { code: string; label: string; grams: number; bestBefore: PlainDate | null }[];
  typed: Readonly<Record<string, string | undefined>>;
  blend: FormAction;
  id: string;
  refused: string | null;
};

/** Dried herbs and peel by weight into labelled packs. */
export function BlendTea({ lots, typed, blend, id, refused }: BlendTeaProps) {
  if (lots.length === 0)
    return (
      <EmptyState
        title="No herb, peel or fruit is dry."
        first="Lay some to dry; after its days in the jar it can be blended."
        action={<LinkButton href="/set-asides">Set-asides</LinkButton>}
      />
    );
  const parts = (typed.parts ?? '').split('\n');
  return (
    <Tray title="What goes in">
      {refused ? <Problem title="Not blended">{refused}</Problem> : null}
      <form action={blend} className={styles.form}>
        <input type="hidden" name="id" value={id} />
        {lots.map((l, i) => (
          <div key={l.code}>
            <input type="hidden" name="codes" value={l.code} />
            <Field
              name="parts"
              label={`${l.label} (${l.code})`}
              hint={`${mass(l.grams)} left${l.bestBefore ? `, best before ${shortDate(l.bestBefore)} ${l.bestBefore.slice(0, 4)}` : ''}`}
              unit="parts"
              inputMode="decimal"
              defaultValue={parts[i] ?? ''}
            />
          </div>
        ))}
        <Field name="name" label="Name on the label" required defaultValue={typed.name ?? ''} maxLength={60} />
        <Field name="packs" label="Packs" inputMode="numeric" required defaultValue={typed.packs ?? ''} />
        <Field
          name="gramsEach"
          label="Weight of each"
          unit="g"
          inputMode="numeric"
          required
          defaultValue={typed.gramsEach ?? ''}
        />
        <Button size="large">Blend and pack</Button>
      </form>
    </Tray>
  );
}
