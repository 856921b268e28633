import { Caution } from './caution.tsx';
import { type Shown, ShownFigure } from './shown-figure.tsx';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

export type RecipePageProps = {
  standing: string;
  household: boolean;
  fruits: readonly string[];
  otherwise: readonly string[];
  doses: readonly { name: string; figure: Shown }[];
  per: string;
  acidByJar: string | null;
  minutesFrom: string | null;
  kitchens: readonly {
    label: string;
    jars: readonly { jar: string; text: string; refused: boolean }[];
  }[];
};

/** One recipe: its amounts by the kilogram, and the canner's minutes by jar in each kitchen. */
export function RecipePage(props: RecipePageProps) {
  const { standing, household, fruits, otherwise, doses, per, acidByJar, minutesFrom, kitchens } = props;
  return (
    <TrayTable columns="equal">
      <Tray title={`For each kilogram of ${per}`}>
        <p>{fruits.join('; with ')}</p>
        {otherwise.map((o) => (
          <Caution key={o} title={o} />
        ))}
        {doses.map((d) => (
          <ShownFigure key={d.name} label={d.name} figure={d.figure} />
        ))}
        {acidByJar ? <Caution title={acidByJar} /> : null}
        {household ? <p>For the household and gifts; not a tested recipe for sale.</p> : null}
        <p>{standing}</p>
      </Tray>
      {kitchens.map((k) => (
        <Tray key={k.label} title={`${k.label}: minutes in boiling water`}>
          {k.jars.length === 0 ? <p>No minutes: it does not go to the shelf.</p> : null}
          <ul>
            {k.jars.map((j) => (
              <li key={j.jar}>
                <b>{j.jar}</b>: {j.refused ? `refused, ${j.text}` : j.text}
              </li>
            ))}
          </ul>
          {minutesFrom ? <p className="quiet">Source: {minutesFrom}</p> : null}
        </Tray>
      ))}
    </TrayTable>
  );
}
