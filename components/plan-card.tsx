import type { ReactNode } from 'react';
import { counted, duration } from '#lib/units/format.ts';
import { BothUnits } from './both-units.tsx';
import styles from './plan-card.module.css';
import { StatusMark } from './status-mark.tsx';

export type PlanCardProps = {
  /** "Plan A: jam tonight, freeze the rest". */
  title: string;
  gramsKept: number;
  gramsLost: number;
  /** "half-pints" 12, "pints" 4. */
  jars: readonly { label: string; count: number }[];
  lidsLeft: number;
  /** Hands-on and waiting time in the kitchen. */
  minutes: number;
  /** What stops more from being made: "lids". Null when nothing does. */
  bindingLimit: string | null;
  /** Share the plan may lie under the proven bound, 0 to 1; null when no bound was proven. */
  gap: number | null;
  chosen?: boolean;
  /** 2 (the default) straight on the page, 3 inside a titled tray. */
  level?: 2 | 3;
  /** One line a batch. */
  batches?: readonly string[];
  /** Anything that is lost, and other things worth knowing. */
  children?: ReactNode;
  /** The button that chooses it. */
  action?: ReactNode;
};

/** The solver's own measure of equal. */
const PROVEN = 1e-6;

const gapText = (gap: number | null): string => {
  if (gap === null) return 'No bound proven: a plain plan, better ones may exist.';
  if (gap <= PROVEN) return 'Proven: no other plan does better.';
  // Rounded up: a gap is never said smaller than it is.
  return `Within ${(Math.ceil(gap * 1000 - 1e-9) / 10).toFixed(1)} % of the proven bound.`;
};

/** One plan of the short list: what it keeps, what it still loses, what it takes, and the limit it runs into. */
export function PlanCard(props: PlanCardProps) {
  const Heading = props.level === 3 ? 'h3' : 'h2';
  const jars = props.jars.reduce((sum, j) => sum + j.count, 0);
  return (
    <article className={styles.card} data-chosen={props.chosen || undefined}>
      <header className={styles.head}>
        <Heading className={styles.title}>{props.title}</Heading>
        {props.chosen ? <StatusMark state="done" word="chosen" /> : null}
      </header>
      <dl className={styles.figures}>
        <div className={styles.kept}>
          <dt>Kept</dt>
          <dd>
            <BothUnits grams={props.gramsKept} />
          </dd>
        </div>
        <div>
          <dt>Still lost</dt>
          <dd>
            <BothUnits grams={props.gramsLost} />
          </dd>
        </div>
        <div>
          <dt>Jars</dt>
          <dd>
            <b>{jars}</b>
            <span className={styles.small}>{props.jars.map((j) => `${j.count} ${j.label}`).join(', ')}</span>
          </dd>
        </div>
        <div>
          <dt>Lids left</dt>
          <dd>
            <b>{props.lidsLeft}</b>
          </dd>
        </div>
        <div>
          <dt>Kitchen time</dt>
          <dd>
            <b>{duration(props.minutes)}</b>
          </dd>
        </div>
      </dl>
      <p className={styles.limit}>
        {props.bindingLimit ? (
          <>
            What stops more: <b>{props.bindingLimit}</b>.
          </>
        ) : (
          'Nothing stops more: all the fruit has a place.'
        )}{' '}
        <span className={styles.gap}>{gapText(props.gap)}</span>
      </p>
      {props.batches?.length ? (
        <ol className={styles.batches} aria-label={counted(props.batches.length, 'batch', 'batches')}>
          {props.batches.map((b) => (
            <li key={b}>{b}</li>
          ))}
        </ol>
      ) : null}
      {props.children}
      {props.action ? <div className={styles.action}>{props.action}</div> : null}
    </article>
  );
}
