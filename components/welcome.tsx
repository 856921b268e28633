import { Button } from './button.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import { Problem } from './problem.tsx';
import { TimeZoneField } from './time-zone-field.tsx';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';
import styles from './welcome.module.css';

export type WelcomeProps = {
  places: readonly { id: string; name: string; demo: boolean }[];
  startDemo: FormAction;
  startOwn: FormAction;
  openChosen: FormAction;
  problem: string | null;
  typed: { name: string; altitude: string };
};

/** First start: the demonstration, or an empty place of one's own. The two never share a record. */
export function Welcome({ places, startDemo, startOwn, openChosen, problem, typed }: WelcomeProps) {
  const own = places.filter((p) => !p.demo);
  return (
    <main className={styles.page}>
      <p className={styles.brand}>Stillroom</p>
      <h1>From bucket to jar, and the season ahead</h1>
      <p className={styles.sub}>
        Record what is picked, see what turns first, plan what to make of it, compute each batch, and know every jar.
      </p>
      {problem ? <Problem title="Not opened">{problem}</Problem> : null}
      <TrayTable columns="equal">
        <Tray title="Look round the demonstration">
          <p>
            Wrenlatch, an invented orchard and nursery: 85 trees, nine soft-fruit rows, two kitchens and the whole of
            2025. It opens on 12 September 2025, with the damsons coming in; you can move its day.
          </p>
          <form action={startDemo}>
            <Button size="large" block>
              Open Wrenlatch
            </Button>
          </form>
        </Tray>
        <Tray title="Start a place of your own">
          <form action={startOwn}>
            <PlaceId />
            <Field name="name" label="What is it called?" required defaultValue={typed.name} maxLength={60} />
            <Field
              name="altitude"
              label="How high does the kitchen lie?"
              hint="Process minutes and setting points hang on it; a map or your phone knows."
              inputMode="decimal"
              required
              defaultValue={typed.altitude}
            />
            <Field
              as="select"
              name="altitudeUnit"
              label="In"
              required
              options={[
                { value: 'm', label: 'metres' },
                { value: 'ft', label: 'feet' },
              ]}
            />
            <TimeZoneField />
            <Button kind="quiet" size="large" block>
              Start empty
            </Button>
          </form>
        </Tray>
      </TrayTable>
      {own.length > 0 ? (
        <Tray title="Already here">
          <form action={openChosen} className={styles.own}>
            {own.map((p) => (
              <Button key={p.id} name="place" value={p.id} kind="quiet">
                {p.name}
              </Button>
            ))}
          </form>
        </Tray>
      ) : null}
    </main>
  );
}

/** The new place's id is made with the form, so that sending it twice makes one place. */
const PlaceId = () => <input type="hidden" name="id" value={`place-${crypto.randomUUID()}`} />;
