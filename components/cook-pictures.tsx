import { CookCurve } from './cook-curve.tsx';
import { SetChart } from './set-chart.tsx';
import { type Shown, ShownFigure } from './shown-figure.tsx';
import { Tray } from './tray.tsx';
import { TrayTable } from './tray-table.tsx';

export type CookPicturesProps = {
  /** Null where nothing has to set. */
  set: { outlook: string; ratio: Shown | null; reasons: readonly string[] } | null;
  point: { solids: number; ph: number } | null;
  curve: readonly { minute: number; kg: number }[];
  readings?: readonly { minute: number; kg: number }[];
  stopKg: number | null;
  colour: string;
};

/** McGee, On Food and Cooking (read): firm pectin gels at 60 to 65 % solids and pH 2.8 to 3.5. */
const FIRM = { solids: [60, 65], ph: [2.8, 3.5] } as const;

/** Will it set, and how does it boil: two pictures with what they say in words. */
export function CookPictures({ set, point, curve, readings = [], stopKg, colour }: CookPicturesProps) {
  if (!(point && set) && (curve.length === 0 || stopKg === null)) return null;
  return (
    <TrayTable columns="equal">
      {point && set ? (
        <Tray
          title={
            set.outlook === 'open' ? 'Will it set? The plate decides' : `Will it set? By the tables, ${set.outlook}`
          }
        >
          <SetChart
            zone={FIRM}
            point={{ ...point, label: 'this batch' }}
            sentence={setSentence(point)}
            source="McGee, On Food and Cooking; the batch’s pH is the low end of the fruit’s published range"
          />
          {set.ratio ? <ShownFigure label="Pectin there over pectin needed" figure={set.ratio} /> : null}
          {set.reasons.map((r) => (
            <p key={r}>{r}</p>
          ))}
        </Tray>
      ) : null}
      {curve.length > 0 && stopKg !== null ? (
        <Tray title="The boil">
          <CookCurve
            expected={curve}
            readings={readings}
            stopKg={stopKg}
            colour={colour}
            sentence={`Stop at ${stopKg.toFixed(2)} kg, about ${Math.round(curve.at(-1)?.minute ?? 0)} minutes after it boils. Weigh the pan: the clock is the least sure.`}
          />
        </Tray>
      ) : null}
    </TrayTable>
  );
}

function setSentence(point: { solids: number; ph: number }): string {
  const solids = point.solids < FIRM.solids[0] ? 'thinner than a firm gel' : 'sweet enough for a firm gel';
  const acid =
    point.ph > FIRM.ph[1] ? 'not sharp enough' : point.ph < FIRM.ph[0] ? 'sharper than it needs' : 'sharp enough';
  return `${point.solids.toFixed(0)} °Bx at pH ${point.ph.toFixed(1)}: ${solids}, ${acid}. It says nothing about keeping.`;
}
