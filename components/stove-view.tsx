import { fahrenheit } from '#lib/units/convert.ts';
import { celsius } from '#lib/units/quantity.ts';
import { AnswerHeading } from './answer-heading.tsx';
import type { BatchShown } from './batch-shown.ts';
import { BigTimer } from './big-timer.tsx';
import { BoilTray } from './boil-tray.tsx';
import { Button } from './button.tsx';
import { Caution } from './caution.tsx';
import { Field } from './field.tsx';
import { FillRest } from './fill-rest.tsx';
import type { FormAction } from './form-action.ts';
import { LinkButton } from './link-button.tsx';
import { NumberStepper } from './number-stepper.tsx';
import { PanStrip } from './pan-strip.tsx';
import { Problem } from './problem.tsx';
import { RunningTime } from './running-time.tsx';
import type { PanShown, StoveProps } from './stove-shown.ts';
import styles from './stove-view.module.css';
import { WakeLock } from './wake-lock.tsx';

const NEXT = 'stove-next';

/** One pan at arm's length: what to do, its clock, and the one button of the next step across the bottom. */
export function StoveView({ view, actions, ids, renderedAt, said, refused }: StoveProps) {
  const { pan } = view;
  const part = { view, actions, ids, renderedAt };
  return (
    <div className={styles.stove}>
      <div className={styles.top}>
        <LinkButton kind="quiet" href={`/batches/${encodeURIComponent(pan.code)}`}>
          The whole batch
        </LinkButton>
        <PanStrip pans={view.others} renderedAt={renderedAt} />
        <WakeLock />
      </div>
      <AnswerHeading answer={answerOf(view)} sub={`${pan.label}, ${pan.code}`} />
      {refused ? <Problem title="Not taken">{refused}</Problem> : null}
      {said ? <p role="status">{said}</p> : null}
      <div className={styles.work} data-boil={pan.phase === 'boil' || undefined}>
        <Clock pan={pan} processMin={view.sheet.processMin} renderedAt={renderedAt} />
        {pan.phase === 'boil' ? <Readings {...part} /> : null}
        <ol className={styles.steps}>
          {view.steps.map((s) => (
            <li key={s.text}>
              {s.text}
              {s.caution ? <Caution title={s.caution} /> : null}
            </li>
          ))}
        </ol>
      </div>
      {pan.phase === 'boil' && view.batch.boil ? <BoilTray boil={view.batch.boil} foodId={view.batch.foodId} /> : null}
      <NextStep {...part} />
    </div>
  );
}

function answerOf({ pan, sheet }: StoveProps['view']): string {
  if (pan.phase === 'heat') return 'Bring it to a hard boil';
  if (pan.phase === 'boil')
    return sheet.finalG ? `Boil to ${(sheet.finalG / 1000).toFixed(2)} kg in the pan` : 'Boil hard, as the steps say';
  if (pan.phase === 'fill') return `Fill ${sheet.jars} ${sheet.jarLabel ? `${sheet.jarLabel} jars` : 'packs'}, hot`;
  if (pan.phase === 'canner') return `Into the canner: ${sheet.processMin} min at a full boil`;
  if (pan.phase === 'processing') return `In the canner: ${sheet.processMin} min at a full boil`;
  return 'Nothing to do at the stove';
}

function Clock({ pan, processMin, renderedAt }: { pan: PanShown; processMin: number | null; renderedAt: number }) {
  if (pan.phase === 'boil' && pan.boiledMs !== null)
    return (
      <div className={styles.clocks}>
        {pan.endsInMs === null ? null : (
          <BigTimer label="Left of the boil, about" endsAt={renderedAt + pan.endsInMs} note="the weight decides" />
        )}
        <p>
          Boiling for <RunningTime label="Boiling for" since={renderedAt - pan.boiledMs} />
        </p>
      </div>
    );
  if (pan.phase === 'processing' && pan.endsInMs !== null)
    return (
      <BigTimer label="At a full boil" endsAt={renderedAt + pan.endsInMs} note={`${processMin} min from the table`} />
    );
  return null;
}

type Part = Pick<StoveProps, 'view' | 'actions' | 'ids' | 'renderedAt'>;

const Hidden = ({ id, code }: { id: string | undefined; code: string }) => (
  <>
    <input type="hidden" name="id" value={id} />
    <input type="hidden" name="code" value={code} />
    <input type="hidden" name="page" value="stove" />
  </>
);

/** The cold plate by one tap, with the thermometer where it was looked at; and the pan's weight. */
function Readings({ view, actions, ids }: Part) {
  const stop = view.sheet.stopC;
  return (
    <div className={styles.readings}>
      <form action={actions.setTest}>
        <Hidden id={ids[0]} code={view.pan.code} />
        <Field
          name="tempC"
          label="Thermometer"
          unit="°C"
          inputMode="decimal"
          {...(stop ? { hint: `A guide: ${stop.toFixed(1)} °C · ${fahrenheit(celsius(stop)).toFixed(1)} °F` } : {})}
        />
        <fieldset className={styles.plate}>
          <legend>Set test, off the heat</legend>
          {['Runs', 'Thickens', 'Set'].map((word, i) => (
            <Button key={word} name="result" value={i} size="large" kind="quiet">
              {word}
            </Button>
          ))}
        </fieldset>
      </form>
      <form action={actions.read}>
        <Hidden id={ids[1]} code={view.pan.code} />
        <input type="hidden" name="kind" value="weight" />
        <div className={styles.weigh}>
          <Field name="value" label="What is in the pan weighs" unit="kg" inputMode="decimal" required />
          <Button size="large" kind="quiet">
            Log the weight
          </Button>
        </div>
      </form>
      <LastReadings readings={view.batch.readings} />
    </div>
  );
}

const PLATE = ['runs', 'thickens', 'set'];

/** The last three, newest first. */
function LastReadings({ readings }: { readings: BatchShown['readings'] }) {
  if (readings.length === 0) return null;
  const words = (r: BatchShown['readings'][number]) =>
    r.kind === 'set-test' ? `plate: ${PLATE[r.value]}` : `${r.value} ${r.unit}`;
  return (
    <p className={styles.logged}>
      Logged:{' '}
      {readings
        .slice(-3)
        .reverse()
        .map((r) => words(r))
        .join(', ')}
    </p>
  );
}

/** The one step that comes next. */
function NextStep(part: Part) {
  const { view, actions, ids } = part;
  const { phase, code } = view.pan;
  if (phase === 'heat') return <Bottom action={actions.boils} id={ids[2]} code={code} word="It boils" />;
  if (phase === 'boil') return <Bottom action={actions.stop} id={ids[2]} code={code} word="Stop: off the heat" />;
  if (phase === 'fill') return <Fill {...part} />;
  if (phase === 'canner')
    return (
      <Bottom action={actions.process} id={ids[2]} code={code} word="Boiling again">
        <LoadFields {...part} step="boiling" />
      </Bottom>
    );
  if (phase === 'processing')
    return (
      <Bottom action={actions.process} id={ids[2]} code={code} word="Out of the canner">
        <LoadFields {...part} step="out" />
      </Bottom>
    );
  return null;
}

const LoadFields = ({ view, step }: Part & { step: 'boiling' | 'out' }) => (
  <>
    <input type="hidden" name="back" value={view.pan.code} />
    <input type="hidden" name="step" value={step} />
    <input type="hidden" name="whole" value="on" />
    {[view.pan.code, ...view.batch.sharing.map((b) => b.code)].map((c) => (
      <input key={c} type="hidden" name="codes" value={c} />
    ))}
  </>
);

function Bottom({
  action,
  id,
  code,
  word,
  children,
}: {
  action: FormAction;
  id: string | undefined;
  code: string;
  word: string;
  children?: React.ReactNode;
}) {
  return (
    <form action={action} className={styles.next}>
      <Hidden id={id} code={code} />
      {children}
      <Button size="large" block>
        {word}
      </Button>
    </form>
  );
}

function Fill({ view, actions, ids }: Part) {
  const { sheet } = view;
  return (
    <>
      <form id={NEXT} action={actions.fill} className={styles.fill}>
        <Hidden id={ids[2]} code={view.pan.code} />
        <NumberStepper
          name="jars"
          label={sheet.jarLabel ? `Full ${sheet.jarLabel} jars` : 'Packs'}
          defaultValue={sheet.jars}
        />
        <details>
          <summary>The partial jar, skimmings, trim</summary>
          <FillRest sheet={sheet} trim={view.batch.trim} />
        </details>
      </form>
      <div className={styles.next}>
        <Button size="large" block form={NEXT}>
          Filled
        </Button>
      </div>
    </>
  );
}
