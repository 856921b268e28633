import { Button } from './button.tsx';
import { Caution } from './caution.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import styles from './own-recipe-form.module.css';
import { Problem } from './problem.tsx';
import { type Shown, ShownFigure } from './shown-figure.tsx';
import { Tick } from './tick.tsx';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

type Option = { value: string; label: string };
export type OwnRecipeFormProps = {
  typed: Readonly<Record<string, string>>;
  kinds: readonly Option[];
  fruits: readonly Option[];
  acids: readonly Option[];
  pectins: readonly Option[];
  extras: readonly Option[];
  fruitLines: readonly number[];
  extraLines: readonly number[];
  /** What 1.5 kg of it would be; null until the form has been worked out. */
  preview: {
    goes: string;
    ph: string;
    reasons: readonly string[];
    doubts: readonly string[];
    finish: readonly { label: string; figure: Shown }[];
    jars: readonly { label: string; figure: Shown }[];
    set: { outlook: string } | null;
    names: readonly string[];
  } | null;
  refused: string | null;
  /** Code of the recipe that is changed, empty for a new one. */
  change: string;
  keep: FormAction;
  id: string;
};

const NOT: Option = { value: '', label: 'none' };

/** A recipe of one's own: written on the left, answered on the right, kept when the answer pleases. */
export function OwnRecipeForm(p: OwnRecipeFormProps) {
  const t = (name: string) => p.typed[name] ?? '';
  const more = p.fruitLines.slice(2).some((n) => t(`fruit${n}`)) || p.extraLines.some((n) => t(`extra${n}`));
  return (
    <TrayTable columns="equal">
      <Tray title="What goes in, by the kilogram of prepared fruit">
        {p.refused ? <Problem title="Not yet">{p.refused}</Problem> : null}
        <form className={styles.form}>
          <input type="hidden" name="change" value={p.change} />
          <input type="hidden" name="asked" value="yes" />
          <Field name="title" label="What you call it" required maxLength={60} defaultValue={t('title')} />
          <Field as="select" name="kind" label="What it is" options={p.kinds} defaultValue={t('kind') || 'jam'} />
          {p.fruitLines.slice(0, 2).map((n) => (
            <FruitLine key={n} n={n} t={t} fruits={p.fruits} />
          ))}
          <Field name="sugar" label="Sugar" unit="g" inputMode="decimal" required defaultValue={t('sugar')} />
          <Field name="water" label="Water" unit="g" inputMode="decimal" defaultValue={t('water')} />
          <Amount n="acid" label="Acid" options={p.acids} t={t} />
          <Amount n="pectin" label="Pectin" options={p.pectins} t={t} />
          <details className={styles.more} open={more}>
            <summary>More fruit, nuts and spices</summary>
            {p.fruitLines.slice(2).map((n) => (
              <FruitLine key={n} n={n} t={t} fruits={p.fruits} />
            ))}
            {p.extraLines.map((n) => (
              <Amount key={n} n={`extra${n}`} amount={`extraG${n}`} label={`Addition ${n}`} options={p.extras} t={t} />
            ))}
          </details>
          <Field
            name="brix"
            label="Boiled down to"
            unit="°Bx"
            hint="Empty for the usual: 65 for jam, 43 for butter, 75 for paste"
            inputMode="decimal"
            defaultValue={t('brix')}
          />
          <Tick name="softToo" label="Soft fruit will do" on={t('softToo') === 'on'} />
          <Button kind={p.preview ? 'quiet' : 'primary'}>Work it out</Button>
        </form>
      </Tray>
      {p.preview ? (
        <Tray title="What that makes of 1.5 kg of fruit">
          <p>
            <b>Goes to:</b> {p.preview.goes}.
          </p>
          <p>{p.preview.ph}</p>
          {p.preview.reasons.map((r) => (
            <Caution key={r} title={r} />
          ))}
          {[...p.preview.finish, ...p.preview.jars].map((f) => (
            <ShownFigure key={f.label} label={f.label} figure={f.figure} />
          ))}
          {p.preview.set ? (
            <p>
              Set by the tables: <b>{p.preview.set.outlook}</b>. The cold plate decides.
            </p>
          ) : null}
          <p>
            {p.preview.names.length > 0
              ? `May be called: ${p.preview.names.join(', ')}.`
              : 'No reserved name fits it: call it a fruit spread.'}
          </p>
          <p>For the household and gifts: it is your own, no tested recipe.</p>
          {p.preview.doubts.map((d) => (
            <Caution key={d} title={d} />
          ))}
          <form action={p.keep}>
            <input type="hidden" name="id" value={p.id} />
            <input type="hidden" name="change" value={p.change} />
            {Object.entries(p.typed).map(([k, v]) => (
              <input key={k} type="hidden" name={k} value={v} />
            ))}
            <Button size="large">{p.change ? 'Keep the new version' : 'Put it in my book'}</Button>
          </form>
        </Tray>
      ) : null}
    </TrayTable>
  );
}

type Line = { t: (name: string) => string };

const FruitLine = ({ n, t, fruits }: Line & { n: number; fruits: readonly Option[] }) => (
  <div className={styles.line}>
    <Field
      as="select"
      name={`fruit${n}`}
      label={`Fruit ${n}`}
      options={n === 1 ? fruits : [NOT, ...fruits]}
      defaultValue={t(`fruit${n}`)}
    />
    <Field name={`share${n}`} label="Share" unit="%" inputMode="decimal" defaultValue={t(`share${n}`)} />
  </div>
);

const Amount = ({
  n,
  amount = `${n}G`,
  label,
  options,
  t,
}: Line & { n: string; amount?: string; label: string; options: readonly Option[] }) => (
  <div className={styles.line}>
    <Field as="select" name={n} label={label} options={[NOT, ...options]} defaultValue={t(n)} />
    <Field name={amount} label={`${label}, grams`} unit="g" inputMode="decimal" defaultValue={t(amount)} />
  </div>
);
