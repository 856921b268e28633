import Link from 'next/link';
import { counted, kilograms } from '#lib/units/format.ts';
import { type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import { Caution } from './caution.tsx';
import { fruitColour } from './fruit-colour.ts';
import { LinkButton } from './link-button.tsx';
import { clock } from './plan-board-layout.ts';
import styles from './plan-days.module.css';

export type PlanDayBatch = {
  id: string;
  title: string;
  kind: string;
  foodId: string;
  batches: number;
  kg: number;
  fruit: readonly { name: string; kg: number }[];
  jars: readonly { label: string; count: number }[];
  made: string;
  goes: 'shelf' | 'freezer' | 'fridge' | 'dry';
  notes: readonly string[];
  sugarKg: number;
  lots: readonly { code: string; kg: number }[];
  expectedKg: number;
  start: number | null;
  finish: number | null;
  weighHref: string | null;
  keepHref: string | null;
  withoutHref: string;
  swaps: readonly { title: string; href: string }[];
  kept: boolean;
};
export type PlanDay = {
  day: PlainDate;
  today: boolean;
  hours: number;
  freeHours: number;
  batches: readonly PlanDayBatch[];
  also: readonly string[];
  noTime: readonly string[];
};

const GOES = {
  shelf: 'to the shelf',
  freezer: 'to the freezer',
  fridge: 'to the fridge',
  dry: 'to the dryer, then the dry cupboard',
} as const;

/** Each day: what to make of which fruit, in which jars, from when to when; then what is given, sold, dried and bought. */
export function PlanDays({ days }: { days: readonly PlanDay[] }) {
  return (
    <div className={styles.days}>
      {days.map((d) => (
        <section key={d.day} className={styles.day} aria-label={shortDate(d.day)}>
          <h3>
            {d.today ? 'Today, ' : ''}
            {shortDate(d.day)}{' '}
            <span className={styles.quiet}>
              {d.batches.length > 0 ? hoursText(d) : d.freeHours > 0 ? 'nothing to make' : 'nobody has kitchen time'}
            </span>
          </h3>
          {d.batches.length > 0 ? (
            <ul className={styles.batches}>
              {d.batches.map((b, i) => (
                <Batch key={b.id} batch={b} first={i === 0} />
              ))}
            </ul>
          ) : null}
          {d.also.map((line) => (
            <p key={line}>{line}</p>
          ))}
          {d.noTime.length > 0 ? (
            <Caution
              title={`By the clock one after the other, no time was found for ${d.noTime.join(', ')}: start earlier or let it go.`}
            />
          ) : null}
        </section>
      ))}
    </div>
  );
}

function hoursText({ hours, freeHours }: PlanDay): string {
  const over = hours - freeHours;
  return `${hours.toFixed(1)} of ${Number(freeHours.toFixed(2))} hours${over >= 0.05 ? `, ${over.toFixed(1)} over` : ''}`;
}

function Batch({ batch: b, first }: { batch: PlanDayBatch; first: boolean }) {
  return (
    <li className={styles.batch}>
      <p className={styles.name}>
        <i className={`${styles.chip} keeps-colour`} style={{ background: fruitColour(b.foodId, b.kind) }} />
        <b>{b.title}</b>
        {b.batches > 1 ? ` · ${counted(b.batches, 'batch', 'batches')}` : ''}
        {b.start !== null && b.finish !== null ? (
          <span className={styles.quiet}>
            {clock(b.start)} to {clock(b.finish)}
          </span>
        ) : null}
      </p>
      <p>
        {b.fruit.map((f) => `${kilograms(f.kg * 1000)} ${f.name.toLowerCase()}`).join(', ')}
        {b.sugarKg >= 0.005 ? `, ${kilograms(b.sugarKg * 1000)} sugar` : ''}:{' '}
        {b.jars.length > 0 ? b.jars.map((j) => counted(j.count, `${j.label} jar`)).join(', ') : b.made}, {GOES[b.goes]}.
        {b.notes.length > 0 ? ` ${b.notes.join(' ')}` : ''}
      </p>
      <p className={styles.quiet}>
        {b.lots.length > 0
          ? `From ${b.lots
              .slice(0, 4)
              .map((l) => l.code)
              .join(', ')}${b.lots.length > 4 ? ` and ${b.lots.length - 4} more` : ''}`
          : ''}
        {b.expectedKg >= 0.05
          ? `${b.lots.length > 0 ? '; ' : ''}${b.expectedKg.toFixed(1)} kg of it is still on the tree`
          : ''}
      </p>
      <p className={styles.links}>
        {b.weighHref ? (
          <LinkButton href={b.weighHref} kind={first ? 'primary' : 'quiet'}>
            Weigh for this batch
          </LinkButton>
        ) : null}
        {b.keepHref ? (
          <Link href={b.keepHref} prefetch={false}>
            {b.kept ? 'Let it go' : 'Keep this batch'}
          </Link>
        ) : null}
        <Link href={b.withoutHref} prefetch={false}>
          Not this one
        </Link>
      </p>
      {b.swaps.length > 0 ? (
        <details>
          <summary>Swap it</summary>
          <ul className={styles.swaps} aria-label={`In place of ${b.title.toLowerCase()}`}>
            {b.swaps.map((x) => (
              <li key={x.href}>
                <Link href={x.href} prefetch={false}>
                  {x.title}
                </Link>
              </li>
            ))}
          </ul>
        </details>
      ) : null}
    </li>
  );
}
