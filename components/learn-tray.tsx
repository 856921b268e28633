import { counted } from '#lib/units/format.ts';
import { Button } from './button.tsx';
import type { FormAction } from './form-action.ts';
import { Tray } from './tray.tsx';
import styles from './trust-view.module.css';

type Band = { n: number; middle: number; low: number; high: number; nextLow: number; nextHigh: number };
export type LearntTrayProps = {
  learnt: {
    since: string | null;
    rows: readonly {
      id: string;
      what: string;
      unit: string;
      digits: number;
      learnt: Band;
      before: Band;
      method: string;
      use: string;
      codes: readonly string[];
    }[];
  };
  forget: FormAction;
  id: string;
};

/** Figures learnt from own batches: how many batches, the middle, the band, how. One button forgets them. */
export function LearntTray({ learnt, forget, id }: LearntTrayProps) {
  const batches = learnt.rows.reduce((n, r) => n + r.learnt.n, 0);
  return (
    <Tray title="Learnt from your own batches" id="learnt">
      <p>
        Weights and temperatures logged at the stove, what was skimmed off and what stuck, pH and cold plates. The bands
        hold four cases of five. Log the first weight when the pan boils, and another some minutes later.
        {learnt.since ? ` Batches lit after ${learnt.since} count.` : ''}
      </p>
      {learnt.rows.map((r) => (
        <section key={r.id} className={styles.learnt}>
          <h3>{r.what}</h3>
          <p>
            <span className={styles.value}>
              {r.learnt.middle.toFixed(r.digits)} {r.unit}
            </span>{' '}
            {r.learnt.low.toFixed(r.digits)} to {r.learnt.high.toFixed(r.digits)}
            {r.learnt.n === 0
              ? ', before any batch of yours'
              : `, from ${counted(r.learnt.n, 'batch', 'batches')}; the next one ${r.learnt.nextLow.toFixed(r.digits)} to ${r.learnt.nextHigh.toFixed(r.digits)}`}
          </p>
          {r.learnt.n > 0 ? (
            <p className={styles.quiet}>
              It began at {r.before.middle.toFixed(r.digits)} ({r.before.low.toFixed(r.digits)} to{' '}
              {r.before.high.toFixed(r.digits)}). From{' '}
              {r.codes.map((c, i) => (
                <span key={c}>
                  {i > 0 ? ', ' : ''}
                  <a href={`/batches/${c}`}>{c}</a>
                </span>
              ))}
              .
            </p>
          ) : null}
          <details>
            <summary>How</summary>
            <p>{r.method}</p>
            <p className={styles.quiet}>Goes into: {r.use}.</p>
          </details>
        </section>
      ))}
      <p className={styles.quiet}>
        Each figure starts from its stated range and moves toward what your batches showed, by the logarithm, each batch
        with the weight its error leaves it.
      </p>
      {batches > 0 ? (
        <form action={forget}>
          <input type="hidden" name="id" value={id} />
          <Button kind="quiet" size="large">
            Forget what was learnt
          </Button>
        </form>
      ) : null}
    </Tray>
  );
}
