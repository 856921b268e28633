import { counted } from '#lib/units/format.ts';
import type { BatchShown } from './batch-shown.ts';
import { CookCurve } from './cook-curve.tsx';
import { fruitColour } from './fruit-colour.ts';
import { Tray } from './tray.tsx';

type Boil = NonNullable<BatchShown['boil']>;

/** The boil as it goes: expected, weighed, and the rest at the rate seen. */
export function BoilTray({ boil, foodId }: { boil: Boil; foodId: string }) {
  return (
    <Tray title="The boil">
      <CookCurve
        expected={boil.curve}
        readings={boil.weighings}
        guides={boil.byTemperature}
        rest={boil.rest}
        stopKg={boil.stopKg}
        colour={fruitColour(foodId)}
        sentence={boilSentence(boil)}
      />
    </Tray>
  );
}

export function boilSentence({ stopKg, weighings, ahead }: Boil): string {
  const stop = `Stop at ${stopKg.toFixed(2)} kg`;
  if (ahead)
    return `${stop}: at ${Math.round(ahead.gPerMin)} g a minute, about ${counted(Math.round(ahead.minutesLeft), 'minute')} from the last ${ahead.by === 'weight' ? 'weighing' : 'temperature, a guide: weigh the pan'}.`;
  return weighings.length > 0
    ? `${stop}. Weigh again in a few minutes to see how fast it goes.`
    : `${stop}. Log the pan’s weight when it boils, and again some minutes later.`;
}
