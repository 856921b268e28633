import Link from 'next/link';
import { counted, kilograms } from '#lib/units/format.ts';
import type { PlainDate } from '#lib/units/plain-date.ts';
import { Button } from './button.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import { LinkButton } from './link-button.tsx';
import { type PlanBlock, PlanBoard, type PlanTrack } from './plan-board.tsx';
import { PlanCard } from './plan-card.tsx';
import { type PlanDay, PlanDays } from './plan-days.tsx';
import { PlanSearch, type SearchReport } from './plan-search.tsx';
import styles from './plan-view.module.css';
import { Problem } from './problem.tsx';
import { type Shown, ShownFigure } from './shown-figure.tsx';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

type Facts = {
  worth: number;
  keptKg: number;
  cookedKg: number;
  outKg: number;
  freshKg: number;
  lost: readonly { name: string; kg: number }[];
  lostKg: number;
  jars: readonly { id: string; label: string; count: number }[];
  batches: number;
  minutes: number;
  lidsLeft: number;
  lidsBought: number;
  spent: number;
  sugarLeftKg: number;
  shelfFreeL: number;
  freezerFreeL: number;
  powder: { madeG: number; usedG: number; leftG: number };
  limit: { words: string; days: number } | null;
  early: boolean;
};

export type PlanViewProps = {
  view: {
    hash: string;
    query: string;
    asked: {
      hours: string;
      from: string;
      lids: string;
      keep: readonly { label: string; href: string }[];
      without: readonly { label: string; href: string }[];
    };
    usualHoursToday: number;
    lidsInBook: number;
    more: readonly { what: string; gain: number; savedKg: number }[];
    firm: { shortKg: number; heavyKg: number; stay: readonly string[]; change: readonly string[] } | null;
    tightest: string | null;
    wrong: string | null;
    spoilt: string | null;
    clashes: readonly string[];
    unmade: readonly { id: string; title: string }[];
    cards: readonly {
      which: string;
      title: string;
      also: readonly string[];
      supply: readonly { name: string; weeks: number }[];
      facts: Facts;
      gap: number | null;
      gain: number | null;
      chosen: boolean;
      shown: boolean;
      href: string;
    }[];
    shownTitle: string;
    figures: readonly { label: string; figure: Shown }[];
    days: readonly (PlanDay & { day: PlainDate; blocks: readonly Omit<PlanBlock, 'day'>[] })[];
    tracks: readonly PlanTrack[];
    job: SearchReport;
    firstSeconds: number;
    searched: { seconds: number; solver: string; status: string } | null;
    earlier: string | null;
  };
  choose: FormAction;
  said: string | null;
  refused: string | null;
};

/** Fields of the form itself; the rest of the query goes along unseen. */
const TYPED = ['hours', 'from', 'lids'];
/** Litres in a half-pint, for saying room in jars. */
const HALF_PINT_L = 0.2366;
/** The solver's own measure of equal. */
const PROVEN_GAP = 1e-6;

/** The plans side by side with the search beside them, then one of them day by day. */
export function PlanView({ view, choose, said, refused }: PlanViewProps) {
  const found = view.cards.find((c) => c.which === 'found');
  const plain = found ? view.cards.find((c) => c.which === 'by-hand') : undefined;
  const offered = view.cards.filter((c) => c !== plain);
  return (
    <>
      {refused ? <Problem title="Not chosen">{refused}</Problem> : null}
      {view.wrong ? <Problem title="Not read">{view.wrong}</Problem> : null}
      {view.spoilt ? <Problem title="Plain plan shown">{view.spoilt}</Problem> : null}
      {view.clashes.length > 0 ? (
        <Problem title="This does not fit together">
          {view.clashes.join('; ')}. Let go of one of the kept batches, or give it more hours.
        </Problem>
      ) : null}
      {said ? <p role="status">{said}</p> : null}
      {view.earlier ? <p>{view.earlier}</p> : null}
      <TrayTable columns="one">
        <Tray title="Better plans">
          <div className={styles.search}>
            <PlanSearch
              key={`${view.hash} ${view.searched?.seconds ?? 0}`}
              query={view.query}
              job={view.job}
              firstSeconds={view.firstSeconds}
              searchedSeconds={view.searched?.seconds ?? null}
              proven={found?.gap !== null && found !== undefined && (found.gap as number) <= PROVEN_GAP}
            />
            <form className={styles.hours} action="/plan">
              {[...new URLSearchParams(view.query)]
                .filter(([key]) => !TYPED.includes(key))
                .map(([key, value]) => (
                  <input key={`${key} ${value}`} type="hidden" name={key} value={value} />
                ))}
              <Field
                name="hours"
                label="Hours free today"
                unit="h"
                inputMode="decimal"
                defaultValue={view.asked.hours}
                placeholder={String(view.usualHoursToday)}
                hint={
                  view.asked.hours === ''
                    ? `As the week says: ${view.usualHoursToday} h, all people together.`
                    : 'As you said; clear it to go by the week.'
                }
              />
              <Field name="from" type="time" label="Begin today at" defaultValue={view.asked.from} />
              <Field
                name="lids"
                label="Lids at hand"
                inputMode="numeric"
                defaultValue={view.asked.lids}
                placeholder={String(view.lidsInBook)}
                hint={`The book says ${view.lidsInBook}.`}
              />
              <Button kind="quiet">Plan with these</Button>
            </form>
          </div>
          <p>
            <Link href="/plan/wants">What this house wants in a year</Link>
          </p>
          <Asked title="Kept" links={view.asked.keep} undo="let go" />
          <Asked title="Left out" links={view.asked.without} undo="bring back" />
        </Tray>
      </TrayTable>
      <TrayTable columns="equal">
        {offered.map((c) => (
          <Card key={c.which} card={c} view={view} choose={choose} first={c === view.cards[0]} />
        ))}
      </TrayTable>
      {plain ? (
        <details>
          <summary>The plain plan, to compare</summary>
          <Card card={plain} view={view} choose={choose} first={false} />
        </details>
      ) : null}
      <TrayTable columns="one">
        {view.more.length > 0 ? <WhatWouldHelp more={view.more} tightest={view.tightest} /> : null}
        <Tray title={`Day by day: ${view.shownTitle.charAt(0).toLowerCase()}${view.shownTitle.slice(1)}`}>
          <PlanDays days={view.days} />
        </Tray>
        {view.firm ? <HowFirm firm={view.firm} /> : null}
        <HourByHour days={view.days} tracks={view.tracks} />
        <Tray title={`What its figures rest on: ${view.shownTitle.charAt(0).toLowerCase()}${view.shownTitle.slice(1)}`}>
          {view.figures.map((f) => (
            <ShownFigure key={f.label} {...f} />
          ))}
        </Tray>
        {view.unmade.length > 0 ? <WhyNotThis query={view.query} recipes={view.unmade} /> : null}
      </TrayTable>
    </>
  );
}

type CardView = PlanViewProps['view']['cards'][number];

function Card({
  card: c,
  view,
  choose,
  first,
}: {
  card: CardView;
  view: PlanViewProps['view'];
  choose: FormAction;
  first: boolean;
}) {
  return (
    <PlanCard
      title={c.title}
      gramsKept={c.facts.keptKg * 1000}
      gramsLost={c.facts.lostKg * 1000}
      jars={c.facts.jars.map((j) => ({ label: j.label, count: j.count }))}
      lidsLeft={c.facts.lidsLeft}
      minutes={c.facts.minutes}
      bindingLimit={stopText(c.facts) ?? (c.which === 'found' ? view.tightest : null)}
      gap={c.gap}
      chosen={c.chosen}
      action={
        <form action={choose} className={styles.choose}>
          <input type="hidden" name="hash" value={view.hash} />
          <input type="hidden" name="query" value={view.query} />
          <input type="hidden" name="which" value={c.which} />
          {c.chosen ? null : <Button kind={first ? 'primary' : 'quiet'}>Go by this plan</Button>}
          {c.shown ? null : (
            <LinkButton kind="quiet" href={c.href}>
              See it day by day
            </LinkButton>
          )}
        </form>
      }
    >
      <CardFacts card={c} />
    </PlanCard>
  );
}

/** What one more of each limit would bring, each planned again. */
function WhatWouldHelp({ more, tightest }: Pick<PlanViewProps['view'], 'more' | 'tightest'>) {
  const useless = more.filter((m) => m.gain === 0);
  const saved = (kg: number) =>
    kg >= 0.05 ? `, ${kg.toFixed(1)} kg more kept` : kg <= -0.05 ? `, though ${(-kg).toFixed(1)} kg more is lost` : '';
  return (
    <Tray title="What would help">
      <p>
        {tightest ? (
          <>
            The limit is <b>{tightest}</b>.
          </>
        ) : (
          'Planned again, no single one of these brought more.'
        )}
      </p>
      <ul className={styles.facts}>
        {more
          .filter((m) => m.gain > 0)
          .map((m) => (
            <li key={m.what}>
              {m.what}: worth about {m.gain.toFixed(1)} more{saved(m.savedKg)}.
            </li>
          ))}
        {useless.length > 0 ? (
          <li>
            No more would come of: {useless.map((m) => m.what.charAt(0).toLowerCase() + m.what.slice(1)).join(', ')}.
          </li>
        ) : null}
      </ul>
      <p className="quiet">
        Each was planned again with it for a moment, the next three days free to change; more may be in it.
      </p>
    </Tray>
  );
}

/** Which batches of the next three days stay whichever way the harvest comes. */
function HowFirm({ firm }: { firm: NonNullable<PlanViewProps['view']['firm']> }) {
  return (
    <Tray title="If the harvest comes short or heavy">
      <p>
        The next three days, planned again with {firm.shortKg.toFixed(1)} kg still to come (more than that nine times in
        ten) and with {firm.heavyKg.toFixed(1)} kg (more than that once in ten), all crops alike.
      </p>
      <ul className={styles.facts}>
        <li>
          {firm.stay.length > 0 ? `The same both ways: ${firm.stay.join('; ')}.` : 'No batch stays the same both ways.'}
        </li>
        {firm.change.map((line) => (
          <li key={line}>{line}.</li>
        ))}
      </ul>
    </Tray>
  );
}

/** Asks after a recipe that is not in the plan. */
function WhyNotThis({ query, recipes }: { query: string; recipes: PlanViewProps['view']['unmade'] }) {
  return (
    <Tray title="Why not this recipe?">
      <form className={styles.hours} action="/plan/why">
        {[...new URLSearchParams(query)].map(([key, value]) => (
          <input key={`${key} ${value}`} type="hidden" name={key} value={value} />
        ))}
        <Field
          as="select"
          name="recipe"
          label="Recipe"
          required
          options={recipes.map((r) => ({ value: r.id, label: r.title }))}
        />
        <Button kind="quiet">What stops it?</Button>
      </form>
    </Tray>
  );
}

function stopText(f: Facts): string | null {
  if (f.limit) return `${f.limit.words}, on ${counted(f.limit.days, 'day')}`;
  if (f.early) return 'kitchen time, most of the rest turns before anybody has any';
  return f.lostKg >= 0.05 ? 'the work, the rest would bring less than it takes' : null;
}

/** The next day with work in it drawn out; the others on asking. */
function HourByHour({ days, tracks }: Pick<PlanViewProps['view'], 'days' | 'tracks'>) {
  const busy = days.filter((d) => d.blocks.length > 0);
  const board = (some: typeof busy) => (
    <PlanBoard
      days={some.map((d) => d.day)}
      tracks={tracks}
      blocks={some.flatMap((d) => d.blocks.map((b) => ({ ...b, day: d.day })))}
    />
  );
  if (busy.length === 0) return null;
  return (
    <Tray title="Hour by hour">
      <p className="quiet">
        Working days from 18:00, weekends from 10:00; today from now on. Hours are estimates of the book.
      </p>
      {board(busy.slice(0, 1))}
      {busy.length > 1 ? (
        <details>
          <summary>The days after it</summary>
          {board(busy.slice(1))}
        </details>
      ) : null}
    </Tray>
  );
}

function CardFacts({ card: { facts, gain, also, supply } }: { card: CardView }) {
  const lost = facts.lost.slice(0, 4).map((l) => `${l.kg.toFixed(2)} kg ${l.name.toLowerCase()}`);
  const more = facts.lost.length - lost.length;
  return (
    <ul className={styles.facts}>
      <li>
        {counted(facts.batches, 'batch', 'batches')}: {facts.cookedKg.toFixed(1)} kg put up
        {facts.outKg >= 0.05 ? `, ${facts.outKg.toFixed(1)} kg given or sold` : ''}, {facts.freshKg.toFixed(1)} kg keeps
        fresh past the two weeks.
      </li>
      {lost.length > 0 ? (
        <li>
          Lost: {lost.join(', ')}
          {more > 0 ? `, and ${counted(more, 'other')}` : ''}.
        </li>
      ) : null}
      <li>
        After it: {kilograms(facts.sugarLeftKg * 1000)} sugar, room for {Math.floor(facts.shelfFreeL / HALF_PINT_L)}{' '}
        half-pints on the shelf, {Math.floor(facts.freezerFreeL)} L in the freezers
        {facts.lidsBought > 0 ? `; ${counted(facts.lidsBought, 'lid')} bought` : ''}
        {facts.spent >= 0.005 ? `; ${facts.spent.toFixed(2)} spent on what is bought` : '; nothing bought'}.
      </li>
      {supply.length > 0 ? (
        <li>
          Will last:{' '}
          {supply
            .slice(0, 4)
            .map((x) => `${x.name.toLowerCase()} ${counted(Math.round(x.weeks), 'week')}`)
            .join(', ')}
          {supply.length > 4 ? `, and ${counted(supply.length - 4, 'other line')} longer` : ''}.
        </li>
      ) : null}
      {facts.powder.madeG >= 1 || facts.powder.usedG >= 1 ? (
        <li>
          Apple powder: {Math.round(facts.powder.madeG)} g made, {Math.round(facts.powder.usedG)} g used,{' '}
          {Math.round(facts.powder.leftG)} g dry at the end.
        </li>
      ) : null}
      <li>
        Worth {facts.worth.toFixed(1)}
        {gain === null
          ? ''
          : gain >= 0.05
            ? `, ${gain.toFixed(1)} more than the careful rule`
            : ', no more than the careful rule'}
        , by the starting worths.
      </li>
      {also.length > 0 ? <li>Of the plans found it also {also.join(' and ')}.</li> : null}
    </ul>
  );
}

function Asked({
  title,
  links,
  undo,
}: {
  title: string;
  links: readonly { label: string; href: string }[];
  undo: string;
}) {
  if (links.length === 0) return null;
  return (
    <p className={styles.asked}>
      <b>{title}:</b>{' '}
      {links.map((l) => (
        <span key={l.href}>
          {l.label} (
          <Link href={l.href} prefetch={false}>
            {undo}
          </Link>
          ){' '}
        </span>
      ))}
    </p>
  );
}
