import Link from 'next/link';
import { bothMasses, counted } from '#lib/units/format.ts';
import { longDate, type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import { Button } from './button.tsx';
import { DataTable } from './data-table.tsx';
import { EmptyState } from './empty-state.tsx';
import { Field } from './field.tsx';
import { FigureWithSource } from './figure-with-source.tsx';
import { LinkButton } from './link-button.tsx';
import styles from './season-lists.module.css';
import { Tray } from './tray.tsx';

type Standing = 'none' | 'short' | 'course' | 'much';
type Line = {
  id: string;
  line: string;
  slug: string;
  itemLabel: string;
  unit: string;
  onHand: number;
  standing: Standing;
  usedYear: number;
  use: { perYear: number; sold: number; stallWeeks: number };
  on: PlainDate;
  weeks: number;
  stallWeeks: number;
  used: number;
  left: number;
  band: { p10: number; p50: number; p90: number };
  lastYear: { batches: number; jars: number };
  jarsPerBatch: number;
  odds: readonly { made: string; lasts: string }[];
  make: { batches: number; jars: number; why: 'enough' | 'pace' | 'none' | 'unknown' };
  makeSays: string;
  couldGo: number;
};
export type SeasonListsProps = {
  view: {
    today: PlainDate;
    on: PlainDate | null;
    lines: readonly Line[];
    openFirst: readonly {
      code: string;
      line: string;
      slug: string;
      jars: number;
      madeOn: PlainDate;
      bestBefore: PlainDate;
      past: boolean;
      leftThen: number;
    }[];
    freezer: readonly {
      id: string;
      from: string;
      packs: number;
      needed: number;
      spare: number;
      into: string;
      recipeId: string;
      batches: number;
      jars: number;
      takesPacks: number;
      sugarG: number;
      itemLabel: string;
    }[];
  };
};

const LISTS: readonly { standing: Standing; title: string; says: string }[] = [
  { standing: 'short', title: 'Will run short', says: 'Gone before the next harvest in 5 seasons in 10 or more.' },
  { standing: 'none', title: 'None on hand', says: 'Nothing of these is left now.' },
  {
    standing: 'much',
    title: 'Too much',
    says: 'More than half a year’s use is left at the next harvest, even where more is used than usual.',
  },
  { standing: 'course', title: 'On course', says: 'Lasts to the next harvest more often than not.' },
];

/** Three lists, what to open first, and what the freezer can become; each figure opens to how it was reckoned. */
export function SeasonLists({ view }: SeasonListsProps) {
  if (view.lines.length === 0)
    return (
      <Tray title="The lists">
        <EmptyState
          title="No jar is on record."
          first="Make a batch, and its jars are followed from here."
          action={<LinkButton href="/batches">Batches</LinkButton>}
        />
      </Tray>
    );
  return (
    <div className={styles.trays}>
      <form method="get" className={styles.ask}>
        <Field name="on" type="date" label="Left on another day" defaultValue={view.on ?? ''} />
        <Button type="submit" kind="quiet">
          Show
        </Button>
      </form>
      {LISTS.map((list) => {
        const lines = view.lines.filter((l) => l.standing === list.standing);
        if (lines.length === 0) return null;
        const shown = [...lines].sort((a, b) =>
          list.standing === 'much' ? b.left - a.left : a.on < b.on ? -1 : a.on > b.on ? 1 : a.id < b.id ? -1 : 1,
        );
        return (
          <Tray key={list.standing} title={`${list.title}: ${lines.length}`}>
            <p className="quiet">{list.says}</p>
            {list.standing === 'course' ? (
              <details>
                <summary className={styles.more}>{lines.map((l) => l.line).join(', ')}</summary>
                <Lines lines={shown} />
              </details>
            ) : (
              <Lines lines={shown} />
            )}
          </Tray>
        );
      })}
      <Tray title="Open first" id="open-first">
        <OpenFirst rows={view.openFirst} />
      </Tray>
      <Tray title="Make from the freezer" id="from-freezer">
        <FromFreezer rows={view.freezer} />
      </Tray>
    </div>
  );
}

function Lines({ lines }: { lines: readonly Line[] }) {
  return (
    <div className={styles.lines}>
      {lines.map((l) => (
        <LineFigures key={l.id} line={l} />
      ))}
    </div>
  );
}

const rounded = (x: number): number => Math.round(x * 10) / 10;

function LineFigures({ line: l }: { line: Line }) {
  const pace =
    l.use.stallWeeks > 0
      ? `${l.onHand} - ${l.use.perYear} × ${rounded(l.weeks)} ÷ 52 - ${l.use.sold} ÷ ${l.use.stallWeeks} × ${l.stallWeeks} stall weeks`
      : `${l.onHand} - ${l.use.perYear} × ${rounded(l.weeks)} ÷ 52`;
  return (
    <section className={styles.line} aria-label={l.line}>
      <h3>
        <Link href={`/pantry/${l.slug}`} prefetch={false}>
          {l.line}
        </Link>
        <span className="quiet"> {l.itemLabel}</span>
      </h3>
      <FigureWithSource
        label={`${l.onHand} on hand, ${l.usedYear} a year. On ${longDate(l.on)}`}
        value={`${l.left} left`}
        formula={`${pace} = ${rounded(Math.max(0, l.onHand - l.used))}: about ${Math.round(l.used)} used by then. 8 seasons in 10 leave ${l.band.p10} to ${l.band.p90}.`}
        inputs={[
          { label: 'Eaten and given in the last year', value: String(l.use.perYear), from: 'the ledger' },
          ...(l.use.stallWeeks > 0
            ? [{ label: 'Sold', value: String(l.use.sold), from: `${l.use.stallWeeks} stall weeks` }]
            : []),
        ]}
        source="what left this shelf in the last 52 weeks; range from the learnt rate and how lumpy use is"
        status="measured here"
        changes="every jar taken, and a stock-take"
      />
      {l.make.why === 'unknown' ? null : (
        <FigureWithSource
          label="Make"
          value={l.makeSays}
          formula="Chance that it lasts from its next harvest to the one after, by what is made:"
          inputs={l.odds.map((o) => ({ label: o.made, value: o.lasts }))}
          source={`learnt use; batches of ${l.jarsPerBatch} as last year (${l.lastYear.jars} in ${counted(l.lastYear.batches, 'batch', 'batches')})`}
          status="computed"
          changes="the harvest: fruit, hours and shelf are under Season"
        />
      )}
      {l.couldGo > 0 ? (
        <p className="quiet">
          Up to {counted(l.couldGo, l.unit)} could be given away, and half a year’s use would still be there.
        </p>
      ) : null}
    </section>
  );
}

function OpenFirst({ rows }: { rows: SeasonListsProps['view']['openFirst'] }) {
  return (
    <>
      <p className="quiet">
        Past its day, or some will still be there on it at this pace. Best-before is about quality; the seal, the smell
        and the look are checked at every jar. When in doubt, throw it out.
      </p>
      <DataTable
        caption="Open first"
        hideCaption
        none="Everything is used before its best-before day at this pace."
        columns={[
          { key: 'what', label: 'Line' },
          { key: 'lot', label: 'Lot' },
          { key: 'made', label: 'Made' },
          { key: 'until', label: 'Best before' },
          { key: 'there', label: 'On hand', numeric: true },
          { key: 'left', label: 'Left on that day', numeric: true },
        ]}
        rows={rows.map((r) => ({
          id: r.code,
          cells: {
            what: (
              <Link href={`/pantry/${r.slug}`} prefetch={false}>
                {r.line}
              </Link>
            ),
            lot: r.code,
            made: dayOf(r.madeOn),
            until: r.past ? `${dayOf(r.bestBefore)}, past` : dayOf(r.bestBefore),
            there: r.jars,
            left: r.leftThen,
          },
        }))}
      />
    </>
  );
}

const dayOf = (day: PlainDate): string => `${shortDate(day).slice(4)} ${day.slice(0, 4)}`;

function FromFreezer({ rows }: { rows: SeasonListsProps['view']['freezer'] }) {
  return (
    <>
      <p className="quiet">
        Short lines that the spare packs can become on a free day. Weigh the thawed fruit with its juice; the batch
        sheet and its process stay as they are.
      </p>
      <DataTable
        caption="Make from the freezer"
        hideCaption
        none="No short line can be made from packs that are spare."
        columns={[
          { key: 'into', label: 'Make' },
          { key: 'from', label: 'From' },
          { key: 'packs', label: 'Packs', numeric: true },
          { key: 'sugar', label: 'Sugar', numeric: true },
          { key: 'spare', label: 'Spare of them', numeric: true },
        ]}
        rows={rows.map((r) => ({
          id: r.id,
          cells: {
            into: (
              <>
                <Link href={`/recipes/${r.recipeId}`} prefetch={false}>
                  {r.into}
                </Link>
                : {counted(r.batches, 'batch', 'batches')}, {r.jars} × {r.itemLabel}
              </>
            ),
            from: r.from,
            packs: r.takesPacks,
            sugar: bothMasses(r.sugarG),
            spare: `${r.spare} of ${r.packs}`,
          },
        }))}
      />
    </>
  );
}
