import { mass } from '#lib/units/format.ts';
import { Button } from './button.tsx';
import { Caution } from './caution.tsx';
import { DryIt, type DryingWays } from './dry-it.tsx';
import { DryingCurve } from './drying-curve.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import { PartOf } from './part-of.tsx';
import styles from './set-aside-card.module.css';
import { type Shown, ShownFigure } from './shown-figure.tsx';
import { SweetenIt } from './sweeten-it.tsx';
import { Tick } from './tick.tsx';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

export type SetAsideCardProps = {
  view: {
    code: string;
    amount: number;
    state: string;
    grade: string | null;
    seedsOut: boolean;
    material: { name: string; seeds: boolean; rind: boolean } | null;
    drying: {
      startG: number;
      targetG: number;
      targetBand: { low: number; high: number } | null;
      lastG: number;
      toGoG: number;
      where: string;
      roomAir: boolean;
      weighings: readonly { hours: number; grams: number }[];
      end: { p10: number; p50: number; p90: number } | null;
      formula: string;
      done: string;
    } | null;
    conditioning: { days: number; least: number; usual: number; shakenToday: boolean } | null;
    ways: readonly {
      id: string;
      title: string;
      gives: string;
      food: boolean;
      figures?: readonly { label: string; figure: Shown }[];
    }[];
    dryings: readonly DryingWays['dryings'][number][];
    room: DryingWays['room'];
    traysAsked: number;
    dryerC: number;
    pasteurise: readonly string[];
    mayPack: boolean;
  };
  actions: {
    dry: FormAction;
    move: FormAction;
    weigh: FormAction;
    shake: FormAction;
    ready: FormAction;
    way: FormAction;
    sweeten: FormAction;
    vinegar: FormAction;
    strain: FormAction;
    pack: FormAction;
  };
  ids: readonly string[];
};

/** One set-aside: what to do with it now, and nothing else. */
export function SetAsideCard(p: SetAsideCardProps) {
  const { view: v } = p;
  return (
    <>
      {v.ways.length > 0 ? <WaysOut {...p} /> : null}
      {v.drying ? <OnTheTrays {...p} drying={v.drying} /> : null}
      {v.conditioning ? <InTheJar {...p} jar={v.conditioning} /> : null}
      {v.state === 'working' ? (
        <Tray title="Strain it">
          <Caution title="Its acid is not known: for the table, never for canning or pickling." />
          <form action={p.actions.strain} className={styles.form}>
            <Hidden id={p.ids[0]} code={v.code} />
            <Field name="packs" label="Bottles" inputMode="numeric" required defaultValue="1" />
            <Field name="gramsEach" label="In each" unit="g" inputMode="numeric" required />
            <Button>Strained and bottled</Button>
          </form>
        </Tray>
      ) : null}
      {v.mayPack ? <PackIt {...p} /> : null}
      <p>
        {v.grade ? `Grade ${v.grade}: the worst of what went into it. ` : ''}
        <a href={`/trace/${v.code}`}>Where it comes from and where it went</a>
      </p>
    </>
  );
}

const Hidden = ({ id, code }: { id: string | undefined; code: string }) => (
  <>
    <input type="hidden" name="id" value={id} />
    <input type="hidden" name="code" value={code} />
  </>
);

function WaysOut({ view: v, actions, ids }: SetAsideCardProps) {
  return (
    <TrayTable columns="equal">
      {v.ways.map((w, i) => (
        <Tray key={w.id} title={w.title}>
          <p>{w.gives}</p>
          {w.figures?.map((f) => (
            <ShownFigure key={f.label} {...f} />
          ))}
          {w.id === 'dry' ? (
            <DryIt view={v} dry={actions.dry} id={ids[i]} />
          ) : w.id === 'candy' || w.id === 'peel-sugar' ? (
            <SweetenIt way={w} code={v.code} action={actions.sweeten} id={ids[i]} />
          ) : w.id === 'vinegar' ? (
            <form action={actions.vinegar} className={styles.form}>
              <Hidden id={ids[i]} code={v.code} />
              <PartOf />
              <Field name="waterG" label="Water" unit="kg" inputMode="decimal" required />
              <Field name="sugarG" label="Sugar" unit="kg" inputMode="decimal" />
              <Button kind="quiet">Set it up</Button>
            </form>
          ) : (
            <form action={actions.way} className={styles.form}>
              <Hidden id={ids[i]} code={v.code} />
              <input type="hidden" name="way" value={w.id} />
              <PartOf />
              {w.id === 'stock' ? (
                <>
                  <Caution title="A boiling pot of pulp spits: long spoon, lid ajar." />
                  <Field name="waterG" label="Water put in" unit="kg" inputMode="decimal" />
                  <Field name="stockG" label="Stock strained off" unit="kg" inputMode="decimal" />
                </>
              ) : null}
              <Button kind="quiet">{w.title}</Button>
            </form>
          )}
        </Tray>
      ))}
    </TrayTable>
  );
}

function OnTheTrays({
  view: v,
  drying: d,
  actions,
  ids,
}: SetAsideCardProps & { drying: NonNullable<SetAsideCardProps['view']['drying']> }) {
  return (
    <TrayTable columns="equal">
      <Tray title="How far is it?">
        <DryingCurve {...d} sentence={`${mass(d.startG)} ${d.where}: dry at ${mass(d.targetG)}, ${d.done}.`} />
        <details>
          <summary>Why {mass(d.targetG)}</summary>
          <p>
            The dry matter stays: {d.formula}.{' '}
            {d.targetBand
              ? `Fresh moisture differs: ${(d.targetBand.low / 1000).toFixed(2)} to ${(d.targetBand.high / 1000).toFixed(2)} kg. `
              : ''}
            The hours are learnt from the weighings (Page’s drying law, first guess from printed hours of household
            dryers); the shaded band holds four cases of five.
          </p>
        </details>
      </Tray>
      <Tray title="Weigh it">
        <p>{d.toGoG > 0 ? `${mass(d.toGoG)} of water to go since the last weighing.` : 'It is light enough.'}</p>
        <form action={actions.weigh} className={styles.form}>
          <Hidden id={ids[0]} code={v.code} />
          <Field name="grams" label="All of it weighs" unit="kg" inputMode="decimal" required />
          <Tick name="out" label="Take it off the trays" />
          <Button>Note it</Button>
        </form>
      </Tray>
      {d.roomAir ? (
        <Tray title="Finish it in the heat">
          <form action={actions.move} className={styles.form}>
            <Hidden id={ids[1]} code={v.code} />
            <Field
              as="select"
              name="way"
              label="Into"
              options={[
                { value: 'dryer', label: 'the dryer' },
                { value: 'oven', label: 'the oven, door ajar' },
              ]}
            />
            <Field name="trays" label="Trays" inputMode="numeric" required defaultValue={String(v.traysAsked)} />
            <Field
              name="centiC"
              label="Set to"
              unit="°C"
              inputMode="decimal"
              required
              defaultValue={String(v.dryerC)}
            />
            <Button kind="quiet">Move it</Button>
          </form>
        </Tray>
      ) : null}
    </TrayTable>
  );
}

function PackIt({ view: v, actions, ids }: SetAsideCardProps) {
  return (
    <TrayTable columns="equal">
      <Tray title="Pack it for the pantry">
        <form action={actions.pack} className={styles.form}>
          <Hidden id={ids[0]} code={v.code} />
          <Field name="packs" label="Packs" inputMode="numeric" required defaultValue="1" />
          <Field
            name="gramsEach"
            label="Weight of each"
            unit="g"
            inputMode="numeric"
            required
            defaultValue={String(v.amount)}
          />
          <Button kind="quiet">Pack it</Button>
        </form>
        <p>
          <a href="/set-asides/blend">Blend it with others</a>
        </p>
      </Tray>
    </TrayTable>
  );
}

function InTheJar({
  view: v,
  jar,
  actions,
  ids,
}: SetAsideCardProps & { jar: NonNullable<SetAsideCardProps['view']['conditioning']> }) {
  return (
    <TrayTable columns="equal">
      <Tray title={`Conditioning, day ${jar.days} of ${jar.usual}`}>
        <p>
          In a jar, two thirds full, in the warm. Shake it every day and look for drops on the glass: they mean it was
          not dry. Its best-before date begins only when this ends.
        </p>
        <form action={actions.shake} className={styles.form}>
          <Hidden id={ids[0]} code={v.code} />
          <Tick name="drops" label="Drops on the glass" />
          <Button>{jar.shakenToday ? 'Shaken again' : 'Shaken today'}</Button>
        </form>
      </Tray>
      {jar.days >= jar.least ? (
        <Tray title="Is it dry?">
          {v.pasteurise.length > 0 ? (
            <p>Dried in room air: first against insects: {v.pasteurise.join(', or ')}.</p>
          ) : null}
          <form action={actions.ready} className={styles.form}>
            <Hidden id={ids[1]} code={v.code} />
            <Button>No drops: to the cupboard</Button>
          </form>
        </Tray>
      ) : null}
    </TrayTable>
  );
}
