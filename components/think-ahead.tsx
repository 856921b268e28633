import { counted, mass } from '#lib/units/format.ts';
import { Button } from './button.tsx';
import { Caution } from './caution.tsx';
import { CookCurve } from './cook-curve.tsx';
import { DataTable } from './data-table.tsx';
import { Field } from './field.tsx';
import { Problem } from './problem.tsx';
import { SetChart } from './set-chart.tsx';
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
    doses: readonly { name: string; figure: Shown }[];
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

/** McGee, On Food and Cooking (read): firm pectin gels at 60 to 65 % solids and pH 2.8 to 3.5. */
const FIRM = { solids: [60, 65], ph: [2.8, 3.5] } as const;

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
  const asWritten: Option = { value: '', label: 'as written' };
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
                <Field
                  as="select"
                  name="pectin"
                  label="Pectin"
                  options={[asWritten, ...pectins]}
                  defaultValue={typed.pectin ?? ''}
                />
                <Field
                  name="pectinG"
                  label="Grams of it a kilogram"
                  inputMode="decimal"
                  defaultValue={typed.pectinG ?? ''}
                />
              </div>
              <div className={styles.pair}>
                <Field
                  as="select"
                  name="acid"
                  label="Acid"
                  options={[asWritten, ...acids]}
                  defaultValue={typed.acid ?? ''}
                />
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
      {view?.point || (view && view.curve.length > 0) ? <Pictures view={view} colour={colour} /> : null}
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
        <ShownFigure key={d.name} label={d.name} figure={d.figure} />
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

function Pictures({ view: v, colour }: { view: View; colour: string }) {
  return (
    <TrayTable columns="equal">
      {v.point && v.set ? (
        <Tray
          title={`Will it set? ${v.set.outlook === 'open' ? 'The plate decides' : `A ${v.set.outlook} set, by the tables`}`}
        >
          <SetChart
            zone={FIRM}
            point={{ ...v.point, label: 'this batch' }}
            sentence={setSentence(v)}
            source="McGee, On Food and Cooking; the batch’s pH is the low end of the fruit’s published range"
          />
          {v.set.ratio ? <ShownFigure label="Pectin there over pectin needed" figure={v.set.ratio} /> : null}
          {v.set.reasons.map((r) => (
            <p key={r}>{r}</p>
          ))}
        </Tray>
      ) : null}
      {v.curve.length > 0 && v.stopKg !== null ? (
        <Tray title="The boil">
          <CookCurve
            expected={v.curve}
            stopKg={v.stopKg}
            colour={colour}
            sentence={`Stop at ${v.stopKg.toFixed(2)} kg, about ${Math.round(v.curve.at(-1)?.minute ?? 0)} minutes after it boils. Weigh the pan: the clock is the least sure.`}
          />
        </Tray>
      ) : null}
    </TrayTable>
  );
}

function setSentence({ point }: View): string {
  if (!point) return '';
  const solids = point.solids < FIRM.solids[0] ? 'thinner than a firm gel' : 'sweet enough for a firm gel';
  const acid =
    point.ph > FIRM.ph[1] ? 'not sharp enough' : point.ph < FIRM.ph[0] ? 'sharper than it needs' : 'sharp enough';
  return `${point.solids.toFixed(0)} °Bx at pH ${point.ph.toFixed(1)}: ${solids}, ${acid}. It says nothing about keeping.`;
}
