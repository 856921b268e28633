import Link from 'next/link';
import { monthName, type PlainDate } from '#lib/units/plain-date.ts';
import styles from './runout-strip.module.css';

export type RunoutRow = {
  id: string;
  label: string;
  href?: string;
  /** Share of years, week by week, in which none is left: 0 to 1. */
  gone: readonly number[];
  /** Weeks (index) in which jars pass their best-before day. */
  bestBy?: readonly number[];
  /** "7 in 10 gone by May". */
  words: string;
};
export type RunoutStripProps = { weeks: readonly PlainDate[]; rows: readonly RunoutRow[]; caption: string };

/** Products by weeks: the darker, the more years have none left. Ticks are best-before days. The words on the right say it. */
export function RunoutStrip({ weeks, rows, caption }: RunoutStripProps) {
  const months = weeks.flatMap((w, i) =>
    i === 0 || w.slice(0, 7) !== weeks[i - 1]?.slice(0, 7) ? [{ i, name: monthName(w).slice(0, 3) }] : [],
  );
  const share = 100 / Math.max(1, weeks.length);
  return (
    <figure className={styles.strip}>
      <figcaption className="quiet">{caption}</figcaption>
      <div className={styles.months} aria-hidden="true">
        {months.map((m, n) => (
          <span key={m.i} data-narrow={n % 2 === 1 || undefined} style={{ left: `${m.i * share}%` }}>
            {m.name}
          </span>
        ))}
      </div>
      <ul className={styles.rows}>
        {rows.map((r) => (
          <li key={r.id}>
            <span className={styles.name}>
              {r.href ? (
                <Link href={r.href} prefetch={false}>
                  {r.label}
                </Link>
              ) : (
                r.label
              )}
            </span>
            <svg
              viewBox={`0 0 ${weeks.length} 10`}
              preserveAspectRatio="none"
              className={`${styles.weeks} keeps-colour`}
              aria-hidden="true"
            >
              <rect width={weeks.length} height={10} fill="var(--well)" />
              {r.gone.map((g, i) =>
                g > 0.005 ? (
                  <rect
                    key={i}
                    x={i}
                    width={1.1}
                    height={10}
                    style={{ fill: `color-mix(in srgb, var(--ink) ${Math.round(Math.min(1, g) * 100)}%, var(--well))` }}
                  />
                ) : null,
              )}
              {r.bestBy?.map((w) => (
                <path key={`t${w}`} d={`M${w + 0.5} 0V10`} className={styles.tick} />
              ))}
            </svg>
            <span className={styles.words}>{r.words}</span>
          </li>
        ))}
      </ul>
      <p className={styles.key}>
        <span>
          <i data-key="left" /> some left in every year
        </span>
        <span>
          <i data-key="half" /> none left in half of the years
        </span>
        <span>
          <i data-key="gone" /> none left in any year
        </span>
        <span>
          <i data-key="tick" /> best-before day
        </span>
      </p>
    </figure>
  );
}
