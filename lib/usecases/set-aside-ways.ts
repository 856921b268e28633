/** What a fresh set-aside would give by each way out, so that the person can choose: estimates with their band, and where no figure is printed, that. */
import type { HeldLot } from '#lib/ledger/lot.ts';
import { POWDER_STRENGTH } from '#lib/reference/pectin-sources.ts';
import { setAsideMaterial } from '#lib/reference/set-aside-materials.ts';
import { driedMass } from '#lib/science/drying-target.ts';
import { mass } from '#lib/units/format.ts';
import { driedBand } from './drying-of.ts';

export interface WayShown {
  id: 'dry' | 'stock' | 'freeze' | 'hens' | 'compost';
  title: string;
  gives: string;
  food: boolean;
}

/** Grams of sugar in a half-pint of full-sugar jam: 65 % of 311 g, less the fruit's own; a round figure for comparing. */
const SUGAR_PER_HALF_PINT_G = 180;

export function waysOf(lot: HeldLot): WayShown[] {
  const food = !lot.groundFall && lot.grade !== 'cull';
  const material = typeof lot.details.material === 'string' ? setAsideMaterial(lot.details.material) : null;
  const away: WayShown[] = [
    { id: 'hens', title: 'To the hens', gives: 'Feed. No figure is printed for its worth.', food: false },
    { id: 'compost', title: 'To the compost', gives: `${mass(lot.onHand)} for the heap.`, food: false },
  ];
  if (!food || !material) return away;
  const dryG = driedMass({ freshG: lot.onHand, w0: material.w0, wt: material.wt });
  const band = driedBand(material, lot.onHand);
  const powder = POWDER_STRENGTH.find((r) => r.id === (material.rind ? 'lemon-peel-powder' : 'apple-powder'));
  const jars = (gPerG: number) => Math.floor((dryG * gPerG) / SUGAR_PER_HALF_PINT_G);
  const carries =
    powder && material.wt < 0.1
      ? ` It could help set ${jars(powder.sugarPerG.low)} to ${jars(powder.sugarPerG.high)} half-pints of a medium fruit, untested.`
      : '';
  return [
    {
      id: 'dry',
      title: 'Dry it',
      gives: `About ${mass(dryG)} dry (${mass(band.low)} to ${mass(band.high)}), from ${Math.round(100 * material.w0)} % to ${Math.round(100 * material.wt)} % water.${carries}`,
      food: true,
    },
    ...(material.wt < 0.1
      ? [
          {
            id: 'stock' as const,
            title: 'Boil it for pectin stock now',
            gives:
              'Cover with water, simmer, strain. 150 to 300 mL of stock to a kilogram of fruit is a common dose; its strength is untested.',
            food: true,
          },
        ]
      : []),
    { id: 'freeze', title: 'Freeze it', gives: `${mass(lot.onHand)} for a later stock, 8 months.`, food: true },
    ...away,
  ];
}
