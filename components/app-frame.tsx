import Link from 'next/link';
import type { ReactNode } from 'react';
import { longDate, type PlainDate, shortDate, weekdayName } from '#lib/units/plain-date.ts';
import styles from './app-frame.module.css';
import { MainNav } from './main-nav.tsx';

export type AppFrameProps = {
  /** Short name of the place: "Wrenlatch". */
  placeName: string;
  today: PlainDate;
  /** Opens under the day; a DayMover, where the day can be moved. */
  dayMover?: ReactNode;
  /** Overrides the place read from the address. */
  current?: string;
  children: ReactNode;
};

/** The page around every page: skip link, places, where and when we are, the one <main>, and what the figures rest on. */
export function AppFrame({ placeName, today, dayMover, current, children }: AppFrameProps) {
  const when = `${weekdayName(today).slice(0, 3)} ${longDate(today)}`;
  const here = (
    <>
      {placeName} ·{' '}
      <time dateTime={today}>
        <span className={styles.long}>{when}</span>
        <span className={styles.short}>{shortDate(today)}</span>
      </time>
    </>
  );
  return (
    <div className={styles.frame}>
      <a href="#content" className={styles.skip}>
        Skip to the page
      </a>
      <header className={styles.header}>
        <Link href="/" prefetch={false} className={styles.brand}>
          Stillroom
        </Link>
        <MainNav {...(current === undefined ? {} : { current })} />
        {dayMover ? (
          <details className={styles.here}>
            <summary>
              {here}
              <span className="heard">, move the day</span>
            </summary>
            <div className={styles.mover}>{dayMover}</div>
          </details>
        ) : (
          <p className={styles.here}>{here}</p>
        )}
      </header>
      <main id="content" tabIndex={-1} className={styles.main}>
        {children}
      </main>
      <footer className={styles.footer}>
        <Link href="/trust" prefetch={false}>
          How far to trust the numbers
        </Link>
      </footer>
    </div>
  );
}
