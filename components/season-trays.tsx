import type { PlainDate } from '#lib/units/plain-date.ts';
import { DataTable } from './data-table.tsx';
import { EmptyState } from './empty-state.tsx';
import { FanChart } from './fan-chart.tsx';
import { LinkButton } from './link-button.tsx';
import { RunoutStrip } from './runout-strip.tsx';
import { SeasonEnds, type SeasonEndsProps } from './season-ends.tsx';
import { SeasonPicking, type SeasonPickingProps } from './season-picking.tsx';
import styles from './season-trays.module.css';
import { Tray } from './tray.tsx';

type Quantiles = { p10: number; p25: number; p50: number; p75: number; p90: number };
export type SeasonTraysProps = {
  see: SeasonPickingProps['see'];
  view: {
    today: PlainDate;
    state: 'empty' | 'waiting' | 'ready';
    fit: readonly {
      id: string;
      title: string;
      sentence: string;
      unit: string;
      weeks: readonly ({ week: PlainDate } & Quantiles)[];
      samples: readonly (readonly number[])[];
      capacity: { value: number; label: string } | null;
      basis: string;
    }[];
    weeks: readonly PlainDate[];
    lines: readonly {
      id: string;
      label: string;
      href: string;
      gone: readonly number[];
      bestBy: readonly number[];
      words: string;
    }[];
    linesSay: string;
    ends: SeasonEndsProps['ends'];
    picking: SeasonPickingProps['rows'];
    reasons: readonly {
      id: string;
      label: string;
      onHand: number;
      perWeek: string;
      eaten: string;
      sold: string;
      given: string;
      made: string;
    }[];
    restsOn: readonly string[];
    first: readonly string[];
  };
};

/** Lines shown at once; the others open beneath them. */
const SHOWN = 12;

/** Will it fit, what runs out, what is still to be picked; and what all of it rests on. */
export function SeasonTrays({ view, see }: SeasonTraysProps) {
  if (view.state !== 'ready')
    return view.first.length > 0 ? (
      <Tray title="What to record first" action={<LinkButton href="/place">Your place</LinkButton>}>
        <First first={view.first} />
      </Tray>
    ) : null;
  return (
    <div className={styles.trays}>
      {view.first.length > 0 ? (
        <Tray title="What to record first">
          <First first={view.first} />
        </Tray>
      ) : null}
      <Tray title="What runs out, when?">
        <RunningOut view={view} />
      </Tray>
      <Tray title="Will it fit?">
        <Fit fit={view.fit} />
      </Tray>
      <Tray title="What is still to be picked?">
        {view.picking.length === 0 ? (
          <EmptyState
            title="No crop is on record."
            first="Add your crops with their plants and picking weeks."
            action={<LinkButton href="/place">Your place</LinkButton>}
          />
        ) : (
          <SeasonPicking rows={view.picking} see={see} />
        )}
      </Tray>
      <Tray title="What this rests on">
        <RestsOn view={view} />
      </Tray>
    </div>
  );
}

function First({ first }: { first: readonly string[] }) {
  return (
    <ul className={styles.list}>
      {first.map((f) => (
        <li key={f}>{f}</li>
      ))}
    </ul>
  );
}

function RunningOut({ view }: Pick<SeasonTraysProps, 'view'>) {
  if (view.lines.length === 0)
    return (
      <EmptyState
        title="No jar is on record."
        first="Make a batch, and its jars are followed from here."
        action={<LinkButton href="/batches">Batches</LinkButton>}
      />
    );
  const rows = view.lines.map((l) => ({
    id: l.id,
    label: l.label,
    href: l.href,
    gone: l.gone,
    bestBy: l.bestBy,
    words: l.words,
  }));
  const caption =
    'Week by week: the darker, the more seasons have none left. “Gone” is meant before the next harvest of that fruit.';
  return (
    <>
      <p className={styles.say}>{view.linesSay}</p>
      <RunoutStrip weeks={view.weeks} rows={rows.slice(0, SHOWN)} caption={caption} />
      {rows.length > SHOWN ? (
        <details className={styles.more}>
          <summary>
            {rows.length - SHOWN} more {rows.length - SHOWN === 1 ? 'line' : 'lines'}
          </summary>
          <RunoutStrip weeks={view.weeks} rows={rows.slice(SHOWN)} caption="The other lines." />
        </details>
      ) : null}
      <SeasonEnds ends={view.ends} from={view.today} />
    </>
  );
}

function Fit({ fit }: Pick<SeasonTraysProps['view'], 'fit'>) {
  const [first, ...others] = fit;
  if (!first)
    return (
      <EmptyState title="Nothing stands anywhere yet." first="Jars and packs are followed from their first batch." />
    );
  return (
    <>
      <FitPicture fit={first} />
      {others.length > 0 ? (
        <details className={styles.more}>
          <summary>{others.map((f) => f.title).join(', ')}</summary>
          {others.map((f) => (
            <FitPicture key={f.id} fit={f} />
          ))}
        </details>
      ) : null}
    </>
  );
}

function FitPicture({ fit }: { fit: SeasonTraysProps['view']['fit'][number] }) {
  return (
    <>
      <FanChart
        title={fit.title}
        sentence={fit.sentence}
        unit={fit.unit}
        weeks={fit.weeks}
        samples={fit.samples}
        {...(fit.capacity ? { capacity: fit.capacity } : {})}
      />
      <p className="quiet">
        Scale in {fit.unit}. Room: {fit.basis}.
      </p>
    </>
  );
}

function RestsOn({ view }: Pick<SeasonTraysProps, 'view'>) {
  return (
    <>
      <ul className={styles.list}>
        {view.restsOn.map((r) => (
          <li key={r}>{r}</li>
        ))}
      </ul>
      {view.reasons.length > 0 ? (
        <details className={styles.more}>
          <summary>Line by line: what was used, and what may be made</summary>
          <DataTable
            caption="What each line is reckoned from"
            hideCaption
            columns={[
              { key: 'line', label: 'Line' },
              { key: 'there', label: 'On hand', numeric: true },
              { key: 'eaten', label: 'Eaten' },
              { key: 'sold', label: 'Sold' },
              { key: 'given', label: 'Given' },
              { key: 'week', label: 'Taken together' },
              { key: 'made', label: 'May be made' },
            ]}
            rows={view.reasons.map((r) => ({
              id: r.id,
              cells: {
                line: r.label,
                there: r.onHand,
                eaten: r.eaten,
                sold: r.sold,
                given: r.given,
                week: r.perWeek,
                made: r.made,
              },
            }))}
          />
        </details>
      ) : null}
    </>
  );
}
