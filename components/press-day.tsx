import { counted, kilograms } from '#lib/units/format.ts';
import { Button } from './button.tsx';
import { Caution } from './caution.tsx';
import { EmptyState } from './empty-state.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import { LinkButton } from './link-button.tsx';
import { Problem } from './problem.tsx';
import styles from './set-aside-card.module.css';
import { type Shown, ShownFigure } from './shown-figure.tsx';
import { Tick } from './tick.tsx';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

type Fruit = { id: string; code: string; label: string; grade: string; grams: number; refused: string | null };
export type PressDayProps = {
  fruit: readonly Fruit[];
  expected: {
    kg: number;
    juiceKg: { low: number; typ: number; high: number };
    litres: number;
    brix: number;
    quarts: { low: number; typ: number; high: number };
    pomaceKg: number;
    process: { minutes: number; loads: number; canner: string } | null;
    figures: readonly { label: string; figure: Shown }[];
  } | null;
  mayKeepPomace: boolean;
  typed: Readonly<Record<string, string | undefined>>;
  press: FormAction;
  id: string;
  refused: string | null;
};

/** Pressing day: the fruit, what it should give, what it gave. */
export function PressDay({ fruit, expected: e, mayKeepPomace, typed, press, id, refused }: PressDayProps) {
  const fit = fruit.filter((f) => f.refused === null);
  if (fruit.length === 0)
    return (
      <EmptyState
        title="No fruit is waiting."
        first="A pressing begins with fruit that was weighed in."
        action={<LinkButton href="/harvest">Weigh in a picking</LinkButton>}
      />
    );
  return (
    <>
      {refused ? <Problem title="Not pressed">{refused}</Problem> : null}
      {fruit.flatMap((f) =>
        f.refused ? [<Caution key={f.id} title={`${f.label}, ${kilograms(f.grams)}: ${f.refused}.`} />] : [],
      )}
      <TrayTable columns="equal">
        <Tray title="What goes into the press?">
          <form className={styles.form}>
            <Field
              as="select"
              name="lot"
              label="Fruit"
              options={fit.map((f) => ({
                value: f.id,
                label: `${f.label}, ${f.grade}, ${kilograms(f.grams)} (${f.code})`,
              }))}
              defaultValue={typed.lot}
            />
            <Field
              name="kg"
              label="Weighed into the cheeses"
              unit="kg"
              inputMode="decimal"
              required
              defaultValue={typed.kg ?? ''}
            />
            <Button kind={e ? 'quiet' : 'primary'}>What will it give?</Button>
          </form>
        </Tray>
        {e ? (
          <Tray title={`From ${e.kg} kg, well pressed`}>
            <p>
              Juice {e.juiceKg.typ.toFixed(0)} kg, about {e.litres.toFixed(1)} L at {e.brix} °Bx:{' '}
              <b>{counted(e.quarts.typ, 'quart')}</b> ({e.quarts.low} to {e.quarts.high} for 55 to 67 % of the weight).
              Pomace about {e.pomaceKg.toFixed(0)} kg.
            </p>
            <p>Heat the juice to 71 °C before it is filled.</p>
            {e.process === null ? <p>No printed time for cans of it: drink it fresh or freeze it.</p> : null}
            {e.process ? (
              <p>
                In quarts: {e.process.minutes} minutes here, {counted(e.process.loads, 'load')} of the{' '}
                {e.process.canner.toLowerCase()}.
              </p>
            ) : null}
            {e.figures.map((f) => (
              <ShownFigure key={f.label} {...f} />
            ))}
            <p className="quiet">
              Not for sale until the juice rule of your place is answered on the <a href="/labels">rule card</a>: a
              warning label or a treatment that takes five logs off.
            </p>
          </Tray>
        ) : null}
      </TrayTable>
      {e ? (
        <Tray title="What did it give?">
          <form action={press} className={styles.form}>
            <input type="hidden" name="id" value={id} />
            <input type="hidden" name="lot" value={typed.lot} />
            <input type="hidden" name="kg" value={typed.kg} />
            <Field
              name="juice"
              label="Juice"
              unit="kg"
              inputMode="decimal"
              required
              defaultValue={typed.juice ?? e.juiceKg.typ.toFixed(2)}
            />
            <Field
              name="pomace"
              label="Pomace"
              unit="kg"
              inputMode="decimal"
              required
              defaultValue={typed.pomace ?? e.pomaceKg.toFixed(2)}
            />
            {mayKeepPomace ? (
              <Tick name="keepPomace" label="Keep the pomace" on />
            ) : (
              <p>Its pomace goes to the compost: only that of apples is a material that is known.</p>
            )}
            <Button size="large">Pressed</Button>
          </form>
        </Tray>
      ) : null}
    </>
  );
}
