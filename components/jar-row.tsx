import Link from 'next/link';
import { counted } from '#lib/units/format.ts';
import { Button } from './button.tsx';
import type { FormAction } from './form-action.ts';
import { fruitColour } from './fruit-colour.ts';
import styles from './jar-row.module.css';
import { JarShape } from './jar-shape.tsx';
import { LinkButton } from './link-button.tsx';
import { StatusMark, type StatusState } from './status-mark.tsx';

export type JarRowProps = {
  /** Lot code: "25256-DAM-A". */
  lot: string;
  label: string;
  foodId: string;
  product: string;
  count: number;
  /** "half-pint". */
  size: string;
  /** "made 13 Sep 2025". */
  made: string;
  /** "best before Mar 2027". */
  bestBefore: string;
  address: string;
  state?: StatusState;
  href: string;
  /** Posts `lot` and `act=take`; the oldest jar leaves first. Without it the row only shows. */
  takeOne?: FormAction;
  /** A fresh id for the act, so that a second tap changes nothing. */
  actId?: string;
  giveHref?: string;
  sellHref?: string;
};

/** One lot of jars: what, how many, from when, where, and the three ways out. Held jars have none. */
export function JarRow(p: JarRowProps) {
  const shut = p.count === 0 || p.state === 'hold';
  return (
    <div className={styles.row}>
      <svg viewBox="0 0 60 78" className={`${styles.jar} keeps-colour`} aria-hidden="true">
        <JarShape x={0} y={1} width={60} height={76} colour={fruitColour(p.foodId, p.product)} />
      </svg>
      <div className={styles.what}>
        <Link href={p.href} prefetch={false} className={styles.name}>
          {p.label}
        </Link>
        <span className={styles.facts}>
          {[p.lot, p.made, p.bestBefore, p.address].map((fact) => (
            <span key={fact} className={styles.fact}>
              {fact}
            </span>
          ))}
        </span>
        {p.state ? <StatusMark state={p.state} /> : null}
      </div>
      <b className={styles.count}>{counted(p.count, p.size)}</b>
      {shut ? null : (
        <div className={styles.out}>
          {p.takeOne ? (
            <form action={p.takeOne}>
              <input type="hidden" name="lot" value={p.lot} />
              <input type="hidden" name="act" value="take" />
              {p.actId ? <input type="hidden" name="id" value={p.actId} /> : null}
              <Button>
                Take one<span className="heard"> {p.label}</span>
              </Button>
            </form>
          ) : null}
          {p.giveHref ? (
            <LinkButton kind="quiet" href={p.giveHref}>
              Give<span className="heard"> {p.label}</span>
            </LinkButton>
          ) : null}
          {p.sellHref ? (
            <LinkButton kind="quiet" href={p.sellHref}>
              Sell<span className="heard"> {p.label}</span>
            </LinkButton>
          ) : null}
        </div>
      )}
    </div>
  );
}
