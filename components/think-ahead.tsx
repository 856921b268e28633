import { counted, mass } from '#lib/units/format.ts';
import { Button } from './button.tsx';
import { Caution } from './caution.tsx';
import { CookPictures } from './cook-pictures.tsx';
import { DataTable } from './data-table.tsx';
import { Field } from './field.tsx';
import { Problem } from './problem.tsx';
import { type Shown, ShownFigure } from './shown-figure.tsx';
import styles from './think-ahead.module.css';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

type Option = { value: string; label: string };
type Labelled = { label: string; figure: Shown };
export type ThinkAheadProps = {
  view: {
    fruit: readonly { name: string; grams: number }[];
    pans: number;
    pansBecause: string | null;
    doses: readonly { label: string; figure: Shown }[];
    finish: readonly Labelled[];
    jars: readonly Labelled[];
    goes: string;
    reasons: readonly string[];
    ph: string;
    phAfter: Shown | null;
    set: { outlook: string; ratio: Shown | null; reasons: readonly string[] } | null;
    cost: { total: string; perJar: string | null; unpriced: readonly string[] } | null;
    changes: readonly { what: string; was: string; now: string }[];
    point: { solids: number; ph: number } | null;
    curve: readonly { minute: number; kg: number }[];
    stopKg: number | null;
  } | null;
  refused: string | null;
  typed: Readonly<Record<string, string | undefined>>;
  chosen: { kitchen: string; pan: string; jar: string };
  kitchens: readonly Option[];
  pans: readonly Option[];
  jars: readonly Option[];
  pectins: readonly Option[];
  acids: readonly Option[];
  colour: string;
};

/** The recipe for this much fruit, these jars or this pan; with another pectin or acid, what changes. */
export function ThinkAhead({
  view,
  refused,
  typed,
  chosen,
  kitchens,
  pans,
  jars,
  pectins,
  acids,
  colour,
}: ThinkAheadProps) {
  return (
    <section aria-labelledby="think-ahead" className={styles.section}>
      <h2 id="think-ahead">Think it through</h2>
      {refused ? <Problem title="Not worked out">{refused}</Problem> : null}
      <TrayTable columns="equal">
        <Tray title="For how much?">
          <form className={styles.form} action="#think-ahead">
            <div className={styles.pair}>
              <Field
                as="select"
                name="by"
                label="So many"
                options={[
                  { value: 'kg', label: 'kilograms of fruit' },
                  { value: 'jars', label: 'jars' },
                  { value: 'pan', label: 'fill one pan' },
                ]}
                defaultValue={typed.by ?? 'kg'}
              />
              <Field name="amount" label="Amount" inputMode="decimal" defaultValue={typed.amount ?? '1.5'} />
            </div>
            <Field as="select" name="kitchen" label="Kitchen" options={kitchens} defaultValue={chosen.kitchen} />
            <div className={styles.pair}>
              <Field as="select" name="pan" label="Pan" options={pans} defaultValue={chosen.pan} />
              {jars.length > 0 ? (
                <Field as="select" name="jar" label="Jars" options={jars} defaultValue={chosen.jar} />
              ) : null}
            </div>
            <details className={styles.swap} open={Boolean(typed.pectin || typed.acid || typed.measuredPh)}>
              <summary>Exchange the pectin or the acid</summary>
              <div className={styles.pair}>
                <Field as="select" name="pectin" label="Pectin" options={pectins} defaultValue={typed.pectin ?? ''} />
                <Field
                  name="pectinG"
                  label="Grams of it a kilogram"
                  inputMode="decimal"
                  defaultValue={typed.pectinG ?? ''}
                />
              </div>
              <div className={styles.pair}>
                <Field as="select" name="acid" label="Acid" options={acids} defaultValue={typed.acid ?? ''} />
                <Field
                  name="acidG"
                  label="Grams of it a kilogram"
                  inputMode="decimal"
                  defaultValue={typed.acidG ?? ''}
                />
              </div>
              <Field
                name="measuredPh"
                label="pH of the raw fruit, by the meter"
                hint="For advice on taste and set only"
                inputMode="decimal"
                defaultValue={typed.measuredPh ?? ''}
              />
            </details>
            <Button>Work it out</Button>
          </form>
        </Tray>
        {view ? <WhatItTakes view={view} /> : null}
      </TrayTable>
      {view && view.changes.length > 0 ? (
        <Tray title="What the exchange changes">
          <DataTable
            caption="As written and as exchanged"
            hideCaption
            columns={[
              { key: 'what', label: 'What' },
              { key: 'was', label: 'As written' },
              { key: 'now', label: 'As exchanged' },
            ]}
            rows={view.changes.map((c) => ({ id: c.what, cells: { what: c.what, was: c.was, now: c.now } }))}
          />
        </Tray>
      ) : null}
      {view ? <CookPictures {...view} colour={colour} /> : null}
    </section>
  );
}

type View = NonNullable<ThinkAheadProps['view']>;

function WhatItTakes({ view: v }: { view: View }) {
  return (
    <Tray title={v.pans > 1 ? `Into each of ${v.pans} pans` : 'What it takes'}>
      <p>
        {v.fruit.map((f) => `${mass(f.grams)} ${f.name.toLowerCase()}`).join(' and ')}, as weighed
        {v.pans > 1 && v.pansBecause ? `, in ${counted(v.pans, 'pan')}: ${v.pansBecause}` : ''}.
      </p>
      {v.doses.map((d) => (
        <ShownFigure key={d.label} {...d} />
      ))}
      {v.finish.map((f) => (
        <ShownFigure key={f.label} label={f.label} figure={f.figure} />
      ))}
      {v.jars.map((f) => (
        <ShownFigure key={f.label} label={f.label} figure={f.figure} />
      ))}
      <p>
        <b>Goes to:</b> {v.goes}.
      </p>
      <p>{v.ph}</p>
      {v.phAfter ? <ShownFigure label="pH with the acid, reckoned" figure={v.phAfter} /> : null}
      {v.reasons.map((r) => (
        <Caution key={r} title={r} />
      ))}
      {v.cost ? (
        <p>
          Bought goods: {v.cost.total}
          {v.cost.perJar ? `, ${v.cost.perJar} a jar` : ''}.
          {v.cost.unpriced.length > 0 ? ` Without ${v.cost.unpriced.join(', ')}: no price is noted.` : ''}
        </p>
      ) : (
        <p className="quiet">
          <a href="/place/house/prices">Note what sugar and lids cost</a> to see the cost of a jar.
        </p>
      )}
    </Tray>
  );
}
