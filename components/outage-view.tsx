import { counted, duration, kilograms } from '#lib/units/format.ts';
import { BigTimer } from './big-timer.tsx';
import { Button } from './button.tsx';
import { DataTable } from './data-table.tsx';
import { Field } from './field.tsx';
import { FigureWithSource } from './figure-with-source.tsx';
import type { FormAction } from './form-action.ts';
import { LinkButton } from './link-button.tsx';
import styles from './outage-view.module.css';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

type Item = {
  line: string;
  slug: string;
  packs: string;
  grams: number;
  mass: string;
  rule: string;
  becomes: string | null;
  left: string | null;
  weeks: number | null;
  fridgeUntil: string | null;
};
export type OutageShown = {
  id: string;
  room: string;
  kind: 'freezer' | 'fridge';
  load: string;
  roomLb: string | null;
  fullness: string | null;
  hours: number;
  source: string;
  status: string;
  until: string | null;
  endsInMs: number | null;
  items: readonly Item[];
  leftG: number;
  tonight: {
    batches: readonly {
      line: string;
      recipeId: string;
      title: string;
      batches: number;
      of: number;
      fruitG: number;
      sugarG: number;
      jars: number;
      jarLabel: string;
      when: string;
    }[];
    atOnce: number;
    hours: number;
    lids: { used: number; there: number };
    sugar: { usedG: number; thereG: number };
    limit: string | null;
  };
  burners: { free: number; all: number };
  rules: readonly { text: string; source: string }[];
  done: readonly { id: string; what: string; mass: string; how: string }[];
  /** What stands with others. */
  away: readonly { to: string; mass: string }[];
};

export type OutageViewProps = {
  view: OutageShown;
  /** Who may take some of it in. */
  people: readonly string[];
  typed: Readonly<Record<string, string | undefined>>;
  rescue: FormAction;
  ids: readonly string[];
  backIds: readonly string[];
  renderedAt: number;
};

/** A cold box that has stopped: the clock, what is in it by worth, tonight's batches, and what became of each thing. */
export function OutageView(props: OutageViewProps) {
  const { view } = props;
  return (
    <>
      {view.items.length > 0 ? (
        <TrayTable columns="equal">
          <TimeLeft {...props} />
          {view.kind === 'freezer' ? <Tonight view={view} /> : null}
        </TrayTable>
      ) : null}
      {view.items.length > 0 ? <Contents {...props} /> : null}
      <TrayTable columns="equal">
        {view.items.length > 0 ? <MoveSome {...props} /> : null}
        <Tray title="Done so far">
          <DataTable
            caption="What became of it"
            hideCaption
            none="Nothing yet."
            columns={[
              { key: 'what', label: 'What' },
              { key: 'how', label: 'How' },
              { key: 'mass', label: 'Weight', numeric: true },
            ]}
            rows={view.done.map((d) => ({ id: d.id, cells: { what: d.what, how: d.how, mass: d.mass } }))}
          />
          {view.away.map((a, n) => (
            <form key={a.to} action={props.rescue} className={styles.back}>
              <input type="hidden" name="id" value={props.backIds[n]} />
              <input type="hidden" name="outage" value={view.id} />
              <input type="hidden" name="lines" value="all" />
              <input type="hidden" name="to" value={a.to} />
              <span>
                With {a.to}: {a.mass}
              </span>
              <Button name="did" value="back" kind="quiet">
                It is back
              </Button>
            </form>
          ))}
        </Tray>
      </TrayTable>
    </>
  );
}

function TimeLeft({ view, renderedAt }: OutageViewProps) {
  return (
    <Tray title="Keep it shut">
      {view.endsInMs === null ? null : (
        <BigTimer
          label="Until it has thawed, about"
          endsAt={renderedAt + view.endsInMs}
          note={`roughly until ${view.until}`}
          alarm={false}
        />
      )}
      <FigureWithSource
        label="Stays cold for"
        value={`about ${view.hours} h`}
        formula={
          view.kind === 'freezer'
            ? 'Door shut: about 48 h when full, about 24 h when half full or less. Between the two, the shorter.'
            : 'Door shut, about 4 h.'
        }
        inputs={[
          { label: 'in it by the list', value: view.load },
          ...(view.roomLb ? [{ label: 'room', value: view.roomLb, from: '35 lb to the cubic foot' }] : []),
        ]}
        source={view.source}
        status={view.status}
      />
      <ul className={styles.rules}>
        {view.rules.map((r) => (
          <li key={r.text}>
            {r.text} <span className="quiet">{r.source}.</span>
          </li>
        ))}
      </ul>
    </Tray>
  );
}

function Tonight({ view }: { view: OutageShown }) {
  const { tonight } = view;
  const jars = tonight.batches.reduce((n, b) => n + b.jars, 0);
  return (
    <Tray title="What can be cooked before it thaws">
      {tonight.batches.length === 0 ? (
        <p>
          No whole batch{tonight.limit ? `: ${tonight.limit} are the limit` : ' of what is in it'}. Move it or freeze it
          again.
        </p>
      ) : (
        <>
          <p>
            <b>
              {counted(jars, 'jar')} from {kilograms(tonight.batches.reduce((g, b) => g + b.fruitG, 0))}, about{' '}
              {duration(Math.round((tonight.hours * 60) / 10) * 10)} with {counted(tonight.atOnce, 'pan')} at a time.
            </b>{' '}
            {tonight.limit ? `What stops it there: ${tonight.limit}.` : 'All of the fruit can be cooked.'}
          </p>
          <DataTable
            caption="Batches in order"
            hideCaption
            columns={[
              { key: 'what', label: 'What' },
              { key: 'when', label: 'When' },
              { key: 'batches', label: 'Batches' },
              { key: 'jars', label: 'Jars' },
              { key: 'sugar', label: 'Sugar', numeric: true },
            ]}
            rows={tonight.batches.map((b) => ({
              id: b.line,
              cells: {
                what: <a href={`/recipes/${b.recipeId}`}>{b.title}</a>,
                when: b.when,
                batches: `${b.batches === b.of ? b.batches : `${b.batches} of ${b.of}`}, ${kilograms(b.fruitG)}`,
                jars: counted(b.jars, b.jarLabel),
                sugar: kilograms(b.sugarG),
              },
            }))}
          />
          <p className="quiet">
            Lids {tonight.lids.used} of {tonight.lids.there}, sugar {kilograms(tonight.sugar.usedG)} of{' '}
            {kilograms(tonight.sugar.thereG)}; {view.burners.free} of {view.burners.all} burners free, one for the
            canner. Hours by the book’s estimate.
          </p>
        </>
      )}
    </Tray>
  );
}

function Contents({ view, rescue, ids }: OutageViewProps) {
  return (
    <Tray title={`What is in it, the most worth first: ${kilograms(view.leftG)}`}>
      <ul className={styles.items}>
        {view.items.map((i, n) => (
          <li key={i.slug}>
            <div>
              <b>{i.line}</b>
              <span>
                {i.packs ? `${i.packs}, ` : ''}
                {i.mass}
              </span>
              <span className="quiet">{worthText(i)}</span>
              <span>{view.kind === 'freezer' ? planText(i, view.tonight.batches) : ''}</span>
            </div>
            <form action={rescue} className={styles.ways}>
              <input type="hidden" name="id" value={ids[n]} />
              <input type="hidden" name="outage" value={view.id} />
              <input type="hidden" name="lines" value={i.slug} />
              {i.rule === 'fruit' ? (
                <Button name="did" value="thawed">
                  Thaw to cook
                </Button>
              ) : null}
              {i.fridgeUntil ? (
                <Button name="did" value="fridge">
                  To the fridge
                </Button>
              ) : null}
              <Button name="did" value="kept" kind="quiet">
                {view.kind === 'fridge' ? 'Stayed cold' : i.rule === 'fruit' ? 'Frozen again' : 'Still frozen hard'}
              </Button>
              <Button name="did" value="thrown" kind="refuse">
                Thrown
              </Button>
              <details>
                <summary>only part of it</summary>
                <Field name="kg" label="How much" unit="kg" hint="In whole packs" inputMode="decimal" />
              </details>
            </form>
          </li>
        ))}
      </ul>
    </Tray>
  );
}

function worthText(i: Item): string {
  if (i.fridgeUntil) return `to the fridge, to be used by ${i.fridgeUntil}`;
  if (i.becomes === null)
    return i.rule === 'fridge' ? 'look at it' : 'nothing for the shelf here without a pH reading first';
  return `${i.becomes}: ${i.left}${i.weeks === null ? '' : `, ${counted(i.weeks, 'week')} at last year’s use`}`;
}

/** What the evening holds for it. */
function planText(i: Item, batches: OutageShown['tonight']['batches']): string {
  if (i.fridgeUntil) return '';
  const b = batches.find((x) => x.line === i.line);
  if (!b) return 'Tonight: move it or freeze it again.';
  const rest = i.grams - b.fruitG;
  return `Tonight: ${b.batches === b.of ? 'cook it' : `cook ${kilograms(b.fruitG)}`}, ${b.when}${
    b.batches === b.of ? '.' : `; move ${kilograms(rest)} or freeze it again.`
  }`;
}

/** Some of it goes to another freezer: what cannot be cooked tonight first. */
function MoveSome({ view, people, typed, rescue, ids }: OutageViewProps) {
  const cooked = new Map(view.tonight.batches.map((b) => [b.line, b.fruitG]));
  const order = [...view.items]
    .filter((i) => i.fridgeUntil === null)
    .sort((a, b) => (cooked.get(a.line) ?? 0) / a.grams - (cooked.get(b.line) ?? 0) / b.grams);
  const lines = (order.length > 0 ? order : view.items).map((i) => i.slug).join(',');
  return (
    <Tray title="Move some of it">
      <form action={rescue} className={styles.move}>
        <input type="hidden" name="id" value={ids.at(-1)} />
        <input type="hidden" name="outage" value={view.id} />
        <input type="hidden" name="lines" value={lines} />
        <input type="hidden" name="did" value="moved" />
        <Field
          name="kg"
          label="How much was moved"
          unit="kg"
          inputMode="decimal"
          {...(typed.did === 'moved' && typed.kg ? { defaultValue: typed.kg } : {})}
          required
        />
        <Field
          name="to"
          label="To whom"
          hint={people.length > 0 ? people.slice(0, 3).join(', ') : 'A neighbour with room'}
          {...(typed.to ? { defaultValue: typed.to } : {})}
          maxLength={60}
          required
        />
        <Button kind="quiet">Moved</Button>
      </form>
      <p className="quiet">Whole packs; what cannot be cooked before it thaws goes first.</p>
      <LinkButton kind="quiet" href={`/print/outage?id=${encodeURIComponent(view.id)}`}>
        List for the neighbour
      </LinkButton>
    </Tray>
  );
}
