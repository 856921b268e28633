import { counted } from '#lib/units/format.ts';
import styles from './batch-draft.module.css';
import { Button } from './button.tsx';
import { Caution } from './caution.tsx';
import { CookPictures } from './cook-pictures.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import { Problem } from './problem.tsx';
import { type Shown, ShownFigure } from './shown-figure.tsx';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

type Draft = {
  title: string;
  standing: string;
  batches: number;
  splitReason: string | null;
  cupsEach: Shown | null;
  unsplitCups: number | null;
  prepared: Shown;
  doses: readonly { label: string; figure: Shown }[];
  mix: Shown | null;
  final: Shown | null;
  boilOff: Shown | null;
  boilMin: Shown | null;
  brix: Shown | null;
  water: Shown | null;
  stop: Shown | null;
  jars: Shown;
  jarsEach: number;
  partialEach: Shown | null;
  jarLabel: string | null;
  lids: Shown;
  process: Shown | null;
  headspaceIn: Shown | null;
  sterilise: Shown | null;
  loads: Shown | null;
  cannerMin: Shown | null;
  shelf: boolean;
  needs: readonly string[];
  ways: readonly string[];
  reasons: readonly string[];
  cautions: readonly string[];
  warnings: readonly string[];
  short: readonly string[];
  set: {
    outlook: string;
    ratio: Shown | null;
    carried: Shown | null;
    reasons: readonly string[];
    offers: readonly string[];
    softSet: string | null;
  } | null;
  names: { allowed: readonly string[]; ratio: Shown | null; reasons: readonly string[] } | null;
  household: boolean;
  steps: readonly { text: string; caution: string | null }[];
  acidByJar: readonly string[];
  pictures: {
    point: { solids: number; ph: number } | null;
    curve: readonly { minute: number; kg: number }[];
    stopKg: number | null;
  };
  learnt: readonly string[];
  setAsides: readonly { material: string; use: string; fresh: Shown; dried: Shown | null }[];
};

export type BatchDraftProps = {
  draft: Draft;
  /** What stands in the address, for asking again and for starting. */
  typed: {
    recipe: string;
    lots: readonly { id: string; label: string; code: string; onHandKg: string; packs: string | null; kg: string }[];
    trim: string;
    brix: string;
    water: string;
    pan: string;
    kitchen: string;
    jar: string;
    batches: string;
    sugar: string;
    addwater: string;
    pectin: string;
    acid: string;
    stock: string;
    pectinFrom: string;
    acidFrom: string;
  };
  colour: string;
  pans: readonly { value: string; label: string }[];
  kitchens: readonly { value: string; label: string }[];
  jars: readonly { value: string; label: string }[];
  pectins: readonly { value: string; label: string }[];
  acids: readonly { value: string; label: string }[];
  start: FormAction;
  id: string;
  refused: string | null;
};

/** What the cook may set otherwise than the recipe. */
const OWN_FIELDS = [
  'batches',
  'sugar',
  'addwater',
  'pectinFrom',
  'pectin',
  'stock',
  'acidFrom',
  'acid',
] as const satisfies readonly (keyof BatchDraftProps['typed'])[];
const WEIGHED_FIELDS = ['trim', 'brix', 'water', 'pan', 'kitchen', 'jar'] as const;

/** The sheet: on the left what was weighed, on the right what follows from it, and the button that lights the burner. */
export function BatchDraft(p: BatchDraftProps) {
  const { draft: d, typed } = p;
  return (
    <>
      {p.refused ? <Problem title="Not worked with">{p.refused}</Problem> : null}
      <TrayTable columns="equal">
        <Tray title="What was weighed">
          <form className={styles.form}>
            <input type="hidden" name="recipe" value={typed.recipe} />
            {typed.lots.map((l) => (
              <div key={l.id}>
                <input type="hidden" name="lot" value={l.id} />
                <Field
                  name="kg"
                  label={`${l.label} (${l.code})`}
                  unit="kg"
                  inputMode="decimal"
                  hint={`${l.onHandKg} kg there${l.packs ? `; that is ${l.packs}` : ''}`}
                  defaultValue={l.kg}
                  required
                />
              </div>
            ))}
            <Field
              name="trim"
              label="Trim weighed: stones, cores, stalks"
              unit="kg"
              inputMode="decimal"
              defaultValue={typed.trim}
              hint="The table’s share stands in until you weigh it"
            />
            <Field name="brix" label="Refractometer" unit="°Bx" inputMode="decimal" defaultValue={typed.brix} />
            <Field name="water" label="Water boils today at" unit="°C" inputMode="decimal" defaultValue={typed.water} />
            <div className={styles.pair}>
              <Field
                as="select"
                name="kitchen"
                label="Kitchen"
                required
                options={p.kitchens}
                defaultValue={typed.kitchen}
              />
              <Field as="select" name="pan" label="Pan" required options={p.pans} defaultValue={typed.pan} />
              {p.jars.length > 0 ? (
                <Field as="select" name="jar" label="Jars" required options={p.jars} defaultValue={typed.jar} />
              ) : null}
            </div>
            <details className={styles.own} open={OWN_FIELDS.some((k) => typed[k])}>
              <summary>Set the amounts myself</summary>
              <Field name="batches" label="Batches" inputMode="numeric" defaultValue={typed.batches} />
              <Field
                name="sugar"
                label="Sugar in each batch"
                unit="kg"
                hint="Or as your recipe says it: 870 g, 4 1/3 cups"
                defaultValue={typed.sugar}
              />
              <Field
                name="addwater"
                label="Water in each batch"
                unit="kg"
                inputMode="decimal"
                defaultValue={typed.addwater}
              />
              <Field as="select" name="pectinFrom" label="Pectin" options={p.pectins} defaultValue={typed.pectinFrom} />
              <Field name="pectin" label="Pectin in each batch" unit="g" hint="Or 2 tbsp" defaultValue={typed.pectin} />
              <Field
                name="stock"
                label="Home pectin stock in each batch"
                unit="g"
                inputMode="numeric"
                hint="Beside the recipe’s own pectin; packs are opened by weight"
                defaultValue={typed.stock}
              />
              <Field as="select" name="acidFrom" label="Acid" options={p.acids} defaultValue={typed.acidFrom} />
              <Field name="acid" label="Acid in each batch" unit="g" hint="Or 2 tbsp" defaultValue={typed.acid} />
            </details>
            <Button kind="quiet">Work it out again</Button>
          </form>
        </Tray>
        <div className={styles.side}>
          <Tray title={d.batches > 1 ? `Into each of ${d.batches} pans` : 'Into the pan'}>
            {d.batches > 1 && d.unsplitCups !== null ? (
              <p>
                {d.unsplitCups.toFixed(1)} cups in one pan would be over its ceiling: {d.splitReason}.
              </p>
            ) : null}
            <ShownFigure label={d.batches > 1 ? 'Prepared fruit, all' : 'Prepared fruit'} figure={d.prepared} />
            {d.cupsEach ? <ShownFigure label="Crushed, each" figure={d.cupsEach} /> : null}
            {d.doses.map((x) => (
              <ShownFigure key={x.label} {...x} />
            ))}
            {d.mix ? <ShownFigure label="Mix" figure={d.mix} /> : null}
            {d.acidByJar.map((a) => (
              <p key={a}>{a}</p>
            ))}
          </Tray>
          {d.final ? (
            <Tray title="When to stop, surest first">
              <ShownFigure label="Pan weight" figure={d.final} />
              {d.brix ? <ShownFigure label="Refractometer" figure={d.brix} /> : null}
              {d.stop ? <ShownFigure label="Temperature" figure={d.stop} /> : null}
              {d.water ? <ShownFigure label="Water boils at" figure={d.water} /> : null}
              {d.boilOff ? <ShownFigure label="Boil off" figure={d.boilOff} /> : null}
              {d.boilMin ? <ShownFigure label="Clock, at full boil" figure={d.boilMin} /> : null}
            </Tray>
          ) : null}
        </div>
      </TrayTable>
      <TrayTable columns="equal">
        <Tray title="Jars and canner">
          <ShownFigure
            label={d.jarLabel ? `Jars, ${d.jarLabel}` : 'Packs'}
            figure={d.jars}
            text={d.batches > 1 ? `${d.jarsEach} from each pan, ${d.jars.value} in all` : undefined}
          />
          {d.partialEach ? <ShownFigure label="Partial jar, to the fridge" figure={d.partialEach} /> : null}
          <ShownFigure label="Lids" figure={d.lids} />
          {d.process ? <ShownFigure label="Process at a full boil" figure={d.process} /> : null}
          {d.headspaceIn ? <ShownFigure label="Headspace" figure={d.headspaceIn} /> : null}
          {d.sterilise ? <ShownFigure label="Boil the empty jars" figure={d.sterilise} /> : null}
          {d.loads ? <ShownFigure label="Canner loads" figure={d.loads} /> : null}
          {d.cannerMin ? <ShownFigure label="Canner time" figure={d.cannerMin} /> : null}
          <p className={styles.goes}>
            {d.shelf
              ? 'Goes to the shelf once its process and seals are answered.'
              : d.needs.length > 0
                ? `Goes to the shelf only with ${d.needs.join(' and ')}.`
                : `Not for the shelf: ${d.ways.join(' or ') || 'no published way'}.`}
            {d.household ? ' For the household and gifts; not a tested recipe for sale.' : ''}
          </p>
          {d.reasons.map((r) => (
            <p key={r}>{r}</p>
          ))}
        </Tray>
        <Tray title="What it is, and what is left over">
          {d.set?.carried ? <ShownFigure label="Home pectin carries" figure={d.set.carried} /> : null}
          {d.set && d.set.offers.length > 0 ? (
            <>
              <p className={styles.outlook}>
                By the tables: <b>{d.set.outlook} set</b>
              </p>
              <ul>
                {d.set.offers.map((o) => (
                  <li key={o}>{o}</li>
                ))}
              </ul>
            </>
          ) : null}
          {d.names ? (
            <p>
              {d.names.allowed.length > 0
                ? `May be called: ${d.names.allowed.join(', ')}.`
                : 'No reserved name fits it: call it a fruit spread.'}
            </p>
          ) : null}
          {d.setAsides.map((a) => (
            <ShownFigure key={a.material} label={`${a.material}, for ${a.use}`} figure={a.fresh} />
          ))}
          {d.learnt.length > 0 ? <p>Learnt from your own batches: {d.learnt.join(', ')}.</p> : null}
          <p className={styles.standing}>{d.standing}</p>
        </Tray>
      </TrayTable>
      <CookPictures set={d.set} {...d.pictures} colour={p.colour} />
      {[...d.warnings, ...d.cautions].map((w) => (
        <Caution key={w} title={w} />
      ))}
      {d.short.length > 0 ? <Problem title="Not enough on hand">{d.short.join('; ')}</Problem> : null}
      <Tray title="How it goes">
        <ol className={styles.steps}>
          {d.steps.map((s) => (
            <li key={s.text}>
              {s.text}
              {s.caution ? <Caution title={s.caution} /> : null}
            </li>
          ))}
        </ol>
        <form action={p.start} className={styles.start}>
          <input type="hidden" name="id" value={p.id} />
          <input type="hidden" name="recipe" value={typed.recipe} />
          {typed.lots.map((l) => (
            <span key={l.id}>
              <input type="hidden" name="lot" value={l.id} />
              <input type="hidden" name="kg" value={l.kg} />
            </span>
          ))}
          {[...WEIGHED_FIELDS, ...OWN_FIELDS].map((k) => (
            <input key={k} type="hidden" name={k} value={typed[k]} />
          ))}
          {d.set?.softSet ? <SoftSet text={d.set.softSet} offers={d.set.offers} /> : null}
          <Button size="large">
            {d.batches > 1 ? `Start ${counted(d.batches, 'batch', 'batches')}` : 'Start the batch'}
          </Button>
        </form>
      </Tray>
    </>
  );
}

/** Said before the burner is lit; the cook changes the dose above, or goes on knowing it. */
const SoftSet = ({ text, offers }: { text: string; offers: readonly string[] }) => (
  <>
    <Caution title={text} />
    <p>Or: {offers.join('; ')}. More powder or stock is set under “Set the amounts myself”.</p>
    <Field
      as="select"
      name="softset"
      label="Go on all the same?"
      options={[
        { value: '', label: 'not yet' },
        { value: 'accept', label: 'yes, a soft set will do' },
        { value: 'sauce', label: 'yes, and it is called a sauce' },
      ]}
      defaultValue=""
    />
  </>
);
