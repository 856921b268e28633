'use client';
import Link from 'next/link';
import { usePathname } from 'next/navigation';
import { classNames } from './class-names.ts';
import styles from './main-nav.module.css';
import { NAV_PLACES, type NavPlace, phonePlaces, placeOfPath } from './nav-places.ts';

function PlaceLink({ place, current, withIcon }: { place: NavPlace; current: string | null; withIcon?: boolean }) {
  const here = place.id === current;
  return (
    <Link href={place.href} prefetch={false} aria-current={here ? 'page' : undefined} className={styles.link}>
      {withIcon && (
        <svg viewBox="0 0 24 24" className={styles.icon} aria-hidden="true">
          <path d={place.icon} />
        </svg>
      )}
      <span>{place.label}</span>
    </Link>
  );
}

/**
 * The nine places: a bar on top of the desk page, five of them and "More" along the bottom of the phone. Only the one that fits
 * the screen is in the accessibility tree (the other is `display: none`).
 * `current` overrides what the address says (used where a page belongs to another place).
 */
export function MainNav({ current }: { current?: string }) {
  const path = usePathname();
  const here = current ?? placeOfPath(path ?? '');
  const { bar, more } = phonePlaces();
  return (
    <>
      <nav aria-label="Places" className={styles.desk}>
        {NAV_PLACES.map((p) => (
          <PlaceLink key={p.id} place={p} current={here} />
        ))}
      </nav>
      <nav aria-label="Places" className={classNames(styles.phone, 'no-print')}>
        {bar.map((p) => (
          <PlaceLink key={p.id} place={p} current={here} withIcon />
        ))}
        {/* The key closes the list when another page has opened. */}
        <details key={path} className={styles.more}>
          <summary className={styles.link} data-current={more.some((p) => p.id === here) || undefined}>
            <svg viewBox="0 0 24 24" className={styles.icon} aria-hidden="true">
              <path d="M5 7h14M5 12h14M5 17h14" />
            </svg>
            <span>More</span>
          </summary>
          <div className={styles.sheet}>
            {more.map((p) => (
              <PlaceLink key={p.id} place={p} current={here} withIcon />
            ))}
          </div>
        </details>
      </nav>
    </>
  );
}
