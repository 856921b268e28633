import { Button } from './button.tsx';
import { Caution } from './caution.tsx';
import { Field } from './field.tsx';
import type { FormAction } from './form-action.ts';
import styles from './set-aside-card.module.css';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

export type SetAsideStrengthProps = {
  code: string;
  known: {
    word: string;
    perG: { low: number; typ: number; high: number };
    basis: string;
    batches: readonly string[];
    tests: readonly string[];
    testG: number | null;
    mayTest: boolean;
  };
  actions: { clot: FormAction; cup: FormAction };
  ids: readonly [string, string];
};

/** How strong is it? What is known, and the two ways to try it before a batch does. */
export function SetAsideStrength({ code, known: k, actions, ids }: SetAsideStrengthProps) {
  const digits = k.perG.high < 2 ? 2 : 1;
  const g = (x: number) => x.toFixed(digits);
  return (
    <TrayTable columns="equal">
      <Tray title={`Strength: ${k.word}`}>
        <p>
          A gram carries about <b>{g(k.perG.typ)} g of sugar</b>, four cases of five {g(k.perG.low)} to {g(k.perG.high)}
          , {k.basis}.
        </p>
        {k.tests.length > 0 || k.batches.length > 0 ? (
          <ul>
            {k.tests.map((t) => (
              <li key={t}>{t}</li>
            ))}
            {k.batches.map((b) => (
              <li key={b}>
                Batch <a href={`/batches/${b}`}>{b}</a>
              </li>
            ))}
          </ul>
        ) : null}
      </Tray>
      {k.mayTest ? (
        <Tray title="Alcohol test">
          <p>
            {k.testG === null
              ? 'Cool a little of the stock.'
              : `Simmer ${k.testG} g in water, strain it, make it up to one cup, cool it.`}{' '}
            One teaspoon into one tablespoon of rubbing alcohol in a closed jar; tilt it after a minute.
          </p>
          <Caution title="Rubbing alcohol is poison: never taste it, throw the sample away, no flame near it." />
          <form action={actions.clot} className={styles.form}>
            <input type="hidden" name="id" value={ids[0]} />
            <input type="hidden" name="code" value={code} />
            <Field
              as="select"
              name="result"
              label="In the alcohol"
              options={[
                { value: 'high', label: 'one lump that can be lifted' },
                { value: 'medium', label: 'several lumps' },
                { value: 'low', label: 'flakes or nothing' },
              ]}
            />
            <Button>Note the test</Button>
          </form>
        </Tray>
      ) : null}
      {k.mayTest && k.testG !== null ? (
        <Tray title="Cup trial">
          <p>
            Powder, sugar, water and a spoon of lemon juice, no fruit, boiled 5 minutes to a jam’s thickness, then a
            cold plate.
          </p>
          <Caution title="Boiling sugar burns: long spoon, small pan." />
          <form action={actions.cup} className={styles.form}>
            <input type="hidden" name="id" value={ids[1]} />
            <input type="hidden" name="code" value={code} />
            <Field name="powderG" label="Powder" unit="g" inputMode="numeric" required />
            <Field name="sugarG" label="Sugar" unit="g" inputMode="numeric" required />
            <Field
              as="select"
              name="set"
              label="On the plate"
              options={[
                { value: '2', label: 'set' },
                { value: '1', label: 'thickens' },
                { value: '0', label: 'runs' },
              ]}
            />
            <Button>Note the trial</Button>
          </form>
        </Tray>
      ) : null}
    </TrayTable>
  );
}
