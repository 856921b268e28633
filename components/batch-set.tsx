import { counted } from '#lib/units/format.ts';
import styles from './batch-out.module.css';
import set from './batch-set.module.css';
import type { BatchCardProps } from './batch-shown.ts';
import { Button } from './button.tsx';
import { Caution } from './caution.tsx';
import { Tray } from './tray.tsx';

type Unset = NonNullable<BatchCardProps['view']['unset']>;

/** Reported thin or soft: why, and the ways on, each at its time. */
export function BatchSet(props: BatchCardProps) {
  const { unset, state, out } = props.view;
  if (!unset || state !== 'jarred' || out !== null || unset.said === null || unset.said === 2) return null;
  return (
    <Tray title="It did not set">
      <p>
        {unset.stage === 'judge'
          ? `Its time was up on ${unset.judgedOn}.`
          : `It may still set: judged on ${unset.judgedOn}. Do not shake or tilt it every hour.`}
      </p>
      <Unsettled {...props} unset={unset} />
    </Tray>
  );
}

function Unsettled({ view, actions, ids, unset }: BatchCardProps & { unset: Unset }) {
  return (
    <div className={set.unset}>
      <h3>Why, by its own log</h3>
      <ol>
        {unset.reasons.map((r) => (
          <li key={r}>{r}</li>
        ))}
      </ol>
      {unset.stage === 'judge' ? (
        <>
          <h3>Leave it, and call it a syrup</h3>
          <p>Sealed and as tested it is only soft: no work but new labels.</p>
          <form action={actions.syrup}>
            <input type="hidden" name="id" value={ids[6]} />
            <input type="hidden" name="code" value={view.code} />
            <Button kind="quiet" size="large">
              Call it a syrup
            </Button>
          </form>
          <h3>Or remake it, one cup first</h3>
          <p>
            For a trial cup: {unset.trial}. Boil hard 30 seconds, look at it cold on a plate. Where that cup stays thin
            the rest would too: it is a syrup then, {unset.syrupDays} days in the fridge.
          </p>
          <p>
            For 4 cups ({counted(unset.atOnce, 'jar')} of these), the most at once: {unset.remade}. Powdered and liquid
            pectin do not stand in for each other.
          </p>
          <form action={actions.again}>
            <input type="hidden" name="id" value={ids[7]} />
            <input type="hidden" name="code" value={view.code} />
            <fieldset className={styles.jars}>
              <legend>Which jars go into the pan?</legend>
              {unset.pieces.map((n, i) => (
                <label key={n} className={styles.jar}>
                  <input type="checkbox" name="pieces" value={n} defaultChecked={i < unset.atOnce} />
                  <span>Jar {n}</span>
                </label>
              ))}
            </fieldset>
            <Caution title="Boiling sugar sticks and burns. New lids, clean hot jars, and the full process again." />
            <div className={styles.ways}>
              <Button kind="quiet" size="large">
                Remake them as a batch of their own
              </Button>
            </div>
          </form>
        </>
      ) : (
        <p>Wait: a batch remade before its time is lost twice.</p>
      )}
    </div>
  );
}
