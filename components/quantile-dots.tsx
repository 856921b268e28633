import { daysBetween, type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import { NO_FRUIT } from './fruit-colour.ts';
import styles from './quantile-dots.module.css';
import { dotStacks } from './quantile-dots-layout.ts';

export type QuantileDotsProps = {
  /** "Half the time it is gone by mid-March." */
  sentence: string;
  /** Twenty quantiles of the day it runs out; null where it lasts to the harvest. */
  days: readonly (PlainDate | null)[];
  from: PlainDate;
  /** The next harvest. */
  to: PlainDate;
  colour?: string;
};

/** One dot is one year in twenty: count the dots. Hollow dots last to the harvest. */
export function QuantileDots({ sentence, days, from, to, colour = NO_FRUIT }: QuantileDotsProps) {
  const ended = days.filter((d): d is PlainDate => d !== null);
  const lasting = days.length - ended.length;
  const span = Math.max(1, daysBetween(from, to));
  const stacks = dotStacks(ended.map((d) => daysBetween(from, d) / span));
  const months = monthStarts(from, to).map((d) => ({ label: shortDate(d).slice(-3), at: daysBetween(from, d) / span }));
  return (
    <figure className={styles.dots}>
      <figcaption>{sentence}</figcaption>
      <div
        role="img"
        aria-label={`Of ${days.length} years, ${ended.length} run out before the harvest and ${lasting} last. ${sentence}`}
        className={styles.line}
      >
        <div
          className={styles.field}
          style={{ height: `${Math.max(2, ...stacks.map((s) => s.level + 1), Math.ceil(lasting / 2)) * 1.125}rem` }}
        >
          {stacks.map((s, i) => (
            <i
              key={i}
              className="keeps-colour"
              style={{ left: `${s.at * 100}%`, bottom: `${s.level * 1.125}rem`, background: colour }}
            />
          ))}
        </div>
        <div className={styles.lasting}>
          {Array.from({ length: lasting }, (_, i) => (
            <i key={i} style={{ borderColor: colour }} />
          ))}
        </div>
        <div className={styles.months}>
          {months.map((m) => (
            <span key={m.at} style={{ left: `${m.at * 100}%` }}>
              {m.label}
            </span>
          ))}
        </div>
        <span className={styles.word}>{lasting > 0 ? 'lasts' : ''}</span>
      </div>
      <p className="quiet">Each dot is 1 year in {days.length}. Hollow: lasts to the harvest.</p>
    </figure>
  );
}

function monthStarts(from: PlainDate, to: PlainDate): PlainDate[] {
  const starts: PlainDate[] = [];
  let [year, month] = [Number(from.slice(0, 4)), Number(from.slice(5, 7))];
  for (;;) {
    month += 1;
    if (month > 12) [year, month] = [year + 1, 1];
    const day = `${year}-${String(month).padStart(2, '0')}-01` as PlainDate;
    if (day > to) return starts;
    starts.push(day);
  }
}
