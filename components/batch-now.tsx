import styles from './batch-card.module.css';
import { BatchOut } from './batch-out.tsx';
import { BatchPh } from './batch-ph.tsx';
import type { BatchCardProps } from './batch-shown.ts';
import { BigTimer } from './big-timer.tsx';
import { BoilTray } from './boil-tray.tsx';
import { Button } from './button.tsx';
import { Caution } from './caution.tsx';
import { DEVIATIONS, Deviation } from './deviation.tsx';
import { Field } from './field.tsx';
import { FillRest } from './fill-rest.tsx';
import { NumberStepper } from './number-stepper.tsx';
import { Tray } from './tray.tsx';
import { WakeLock } from './wake-lock.tsx';

/** The step that is due: one question, its cautions where the act happens; with it the pH, where a reading is wanted. */
export function BatchNow(props: BatchCardProps) {
  return (
    <>
      {props.view.ph.tooHigh ? <BatchPh {...props} /> : null}
      <DueNow {...props} />
      {props.view.out && props.view.out.why !== 'unsealed' ? <BatchOut {...props} /> : null}
      {props.view.out?.why === 'process' ? null : <Deviation {...props} />}
      {props.view.ph.may && !props.view.ph.tooHigh ? <BatchPh {...props} /> : null}
    </>
  );
}

function DueNow(props: BatchCardProps) {
  const { state } = props.view;
  if (!props.view.sheet) return null;
  if (state === 'cooking') return <AtTheStove {...props} />;
  if (state === 'filled') return props.view.ph.tooHigh ? <CannedAlready {...props} /> : <AtTheCanner {...props} />;
  if (state === 'cooling') return <InTheMorning {...props} />;
  return null;
}

function AtTheStove({ view, actions, ids }: BatchCardProps) {
  const s = view.sheet as NonNullable<typeof view.sheet>;
  return (
    <>
      <WakeLock />
      <Tray title="At the stove">
        <ol className={styles.stove}>
          {s.steps.map((step) => (
            <li key={step.text}>
              {step.text}
              {step.caution ? <Caution title={step.caution} /> : null}
            </li>
          ))}
        </ol>
        <form action={actions.read} className={styles.line}>
          <input type="hidden" name="id" value={ids[0]} />
          <input type="hidden" name="code" value={view.code} />
          <Field
            as="select"
            name="kind"
            label="Log a reading"
            required
            options={[
              { value: 'weight', label: 'pan weight, kg' },
              { value: 'temperature', label: 'temperature, °C' },
              { value: 'brix', label: 'refractometer, °Bx' },
              { value: 'set-test', label: 'cold plate: 0 runs, 1 thickens, 2 set' },
            ]}
          />
          <Field name="value" label="It reads" inputMode="decimal" required />
          <Button kind="quiet" size="large">
            Log it
          </Button>
        </form>
      </Tray>
      {view.boil ? <BoilTray boil={view.boil} foodId={view.foodId} /> : null}
      <Tray title="Fill the jars">
        {s.sterile ? <Caution title="The process is under ten minutes: the empty jars are boiled first." /> : null}
        <Caution title="Hot jars on cold stone crack, and hot jam burns: wood or cloth under the jars, sleeves down." />
        <form action={actions.fill} className={styles.grid}>
          <input type="hidden" name="id" value={ids[1]} />
          <input type="hidden" name="code" value={view.code} />
          <NumberStepper name="jars" label={s.jarLabel ? `Full ${s.jarLabel} jars` : 'Packs'} defaultValue={s.jars} />
          <FillRest sheet={s} trim={view.trim} />
          <Button size="large">Filled</Button>
        </form>
        <p className={styles.quiet}>What is not named here went off as steam; the sum is kept to the gram.</p>
      </Tray>
    </>
  );
}

function AtTheCanner({ view, actions, ids, renderedAt }: BatchCardProps) {
  const s = view.sheet as NonNullable<typeof view.sheet>;
  const running = view.processEndsInMs !== null;
  const codes = [view.code, ...view.sharing.map((b) => b.code)];
  return (
    <Tray title="In the canner">
      <WakeLock />
      <p>
        {s.processMin} minutes from a full boil with the jars covered; then heat off, lid off, five minutes, out.{' '}
        {view.sharing.length > 0 ? `In the same load: ${view.sharing.map((b) => b.code).join(', ')}.` : ''}
      </p>
      <Caution title="Lift the lid away from you: steam burns before it is seen." />
      {running ? (
        <BigTimer
          label="At a full boil"
          endsAt={renderedAt + (view.processEndsInMs as number)}
          note={`${s.processMin} min from the table`}
        />
      ) : null}
      <div className={styles.line}>
        {running || view.ph.tooHigh ? null : (
          <form action={actions.process}>
            <ProcessFields id={ids[0] as string} codes={codes} back={view.code} step="boiling" />
            <Button size="large">Boiling again: start the clock</Button>
          </form>
        )}
        <form action={actions.process} className={styles.line}>
          <ProcessFields id={ids[1] as string} codes={codes} back={view.code} step="out" />
          <Field
            name="minutes"
            label="Minutes kept at a full boil"
            inputMode="numeric"
            hint={running ? 'Left empty: by the clock' : undefined}
            {...(running ? {} : { required: true })}
          />
          <Field
            as="select"
            name="deviation"
            label="Anything different?"
            options={[
              { value: '', label: 'no, as the table says' },
              ...DEVIATIONS.map((d) => ({ value: d, label: d })),
            ]}
          />
          <Button size="large" kind={running ? 'primary' : 'quiet'}>
            Out of the canner
          </Button>
        </form>
      </div>
    </Tray>
  );
}

/** A boil does not put right a pH that is too high: the canner is not offered, only its record for jars that were in it. */
const CannedAlready = (props: BatchCardProps) => (
  <details>
    <summary>The jars were in the canner already</summary>
    <AtTheCanner {...props} />
  </details>
);

const ProcessFields = ({
  id,
  codes,
  back,
  step,
}: {
  id: string;
  codes: readonly string[];
  back: string;
  step: 'boiling' | 'out';
}) => (
  <>
    <input type="hidden" name="id" value={id} />
    <input type="hidden" name="back" value={back} />
    <input type="hidden" name="step" value={step} />
    {codes.map((c) => (
      <input key={c} type="hidden" name="codes" value={c} />
    ))}
  </>
);

function InTheMorning(props: BatchCardProps) {
  const { view } = props;
  const jars = view.jars.find((j) => j.kind === 'jars');
  if (!jars || view.out?.why !== 'unsealed') return null;
  return (
    <>
      {view.sealState === 'early' ? (
        <Tray title="Cooling">
          <p>
            Out {(view.hoursOut ?? 0).toFixed(1)} h ago. Leave the jars where they stand; the seals are tried after 12
            h, and answered before 24.
          </p>
        </Tray>
      ) : (
        <Sealed {...props} left={jars.onHand} />
      )}
      <BatchOut {...props} />
    </>
  );
}

function Sealed({ view, actions, ids, left }: BatchCardProps & { left: number }) {
  const late = view.sealState === 'locked';
  return (
    <Tray title="Seals">
      {view.sealState === 'red' ? <Caution title="Twenty hours are past: answer the seals before 24." /> : null}
      {late ? (
        <Caution title="Nobody checked within 24 hours: these jars are unverified. Each may be opened and looked at; one whose lid gives goes out, whole. The closed ones stay for the household, with a note." />
      ) : null}
      <form action={actions.seal} className={styles.grid}>
        <input type="hidden" name="id" value={ids[0]} />
        <input type="hidden" name="code" value={view.code} />
        <p>Rings off. Press each lid at its middle: one that gives is open.</p>
        <Field
          as="select"
          name="address"
          label="Shelf for them"
          required
          options={(view.address?.addresses ?? ['floor']).map((a) => ({
            value: a,
            label: a === view.address?.suggested ? `${a} (room here)` : a,
          }))}
          defaultValue={view.address?.suggested ?? 'floor'}
        />
        <Button size="large">{late ? `All ${left} closed: shelve as unverified` : `All ${left} sealed`}</Button>
      </form>
    </Tray>
  );
}
