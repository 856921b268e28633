import { counted } from '#lib/units/format.ts';
import { type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import { Button } from './button.tsx';
import { EmptyState } from './empty-state.tsx';
import type { FormAction } from './form-action.ts';
import { fruitColour } from './fruit-colour.ts';
import styles from './jar-row.module.css';
import { JarShape } from './jar-shape.tsx';
import { LinkButton } from './link-button.tsx';
import list from './pantry-lines.module.css';
import { StatusMark } from './status-mark.tsx';

export type PantryLinesProps = {
  lines: readonly {
    line: string;
    slug: string;
    foodId: string;
    kinds: readonly { code: string; label: string; count: number }[];
    oldest: PlainDate;
    lots: readonly { code: string; address: string | null; seal: string | null }[];
    onHand: number;
  }[];
  takeOne: FormAction;
  /** Fresh ids, one for each line, so that a second tap changes nothing. */
  ids: readonly string[];
};

/** Every line with what is left of it; the oldest jar leaves first. */
export function PantryLines({ lines, takeOne, ids }: PantryLinesProps) {
  if (lines.length === 0)
    return (
      <EmptyState
        title="No jar stands here yet."
        first="Make a batch, and its jars come to the shelf once their seals are checked."
        action={<LinkButton href="/batches/new">Start a batch</LinkButton>}
      />
    );
  return (
    <div className={list.lines}>
      {lines.map((l, i) => (
        <div key={l.slug} className={styles.row}>
          <svg viewBox="0 0 60 78" className={`${styles.jar} keeps-colour`} aria-hidden="true">
            <JarShape x={0} y={1} width={60} height={76} colour={fruitColour(l.foodId)} />
          </svg>
          <div className={styles.what}>
            <a href={`/pantry/${l.slug}`} className={styles.name}>
              {l.line}
            </a>
            <span className={styles.facts}>
              oldest from {shortDate(l.oldest)} {l.oldest.slice(0, 4)} ·{' '}
              {[...new Set(l.lots.map((x) => x.address).filter(Boolean))].join(', ') || 'not on a shelf'}
            </span>
            {l.lots.some((x) => x.seal === 'waiting') ? <StatusMark state="due" word="seals to be checked" /> : null}
          </div>
          <b className={styles.count}>{l.kinds.map((k) => counted(k.count, k.label)).join(', ')}</b>
          <div className={styles.out}>
            <form action={takeOne}>
              <input type="hidden" name="slug" value={l.slug} />
              <input type="hidden" name="id" value={ids[i]} />
              <Button>
                Take one<span className="heard"> {l.line}</span>
              </Button>
            </form>
            <LinkButton kind="quiet" href={`/pantry/${l.slug}`}>
              Give, sell<span className="heard"> {l.line}</span>
            </LinkButton>
          </div>
        </div>
      ))}
    </div>
  );
}
