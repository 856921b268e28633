/** What a fresh set-aside would give by each way out, so that the person can choose: estimates with their band, and where no figure is printed, that. */
import { type Figure, figure, input } from '#lib/batch/figure.ts';
import type { HeldLot } from '#lib/ledger/lot.ts';
import { POWDER_STRENGTH } from '#lib/reference/pectin-sources.ts';
import { type SetAsideMaterial, setAsideMaterial } from '#lib/reference/set-aside-materials.ts';
import { driedMass } from '#lib/science/drying-target.ts';
import { mass } from '#lib/units/format.ts';
import { driedBand } from './drying-of.ts';
import { type LabelledFigure, shown } from './shown-figure.ts';

export interface WayShown {
  id: 'dry' | 'stock' | 'freeze' | 'candy' | 'peel-sugar' | 'vinegar' | 'hens' | 'compost';
  title: string;
  gives: string;
  food: boolean;
  /** What the sentence rests on. */
  figures?: LabelledFigure[];
}

/** Grams of sugar in a half-pint of full-sugar jam: 65 % of 311 g, less the fruit's own; a round figure for comparing. */
const SUGAR_PER_HALF_PINT_G = 180;

/** Materials that carry a known strength as powder, and those that give a stock. */
const PECTIN: readonly string[] = ['apple-peel-core', 'apple-pomace', 'citrus-rind'];
const STOCK: readonly string[] = [...PECTIN, 'quince-peel-core'];

const SWEET_WAYS: readonly WayShown[] = [
  {
    id: 'candy',
    title: 'Candy it',
    gives:
      'Boil soft in two waters, then simmer in syrup till clear: 900 g of sugar and 500 g of water to a kilogram, the household’s own.',
    food: true,
  },
  {
    id: 'peel-sugar',
    title: 'Rub it into sugar',
    gives: 'Spread it to dry before it is jarred. Common practice; no figure is printed.',
    food: true,
  },
];
const VINEGAR_WAY: WayShown = {
  id: 'vinegar',
  title: 'Leave it to turn to vinegar',
  gives:
    'Under water with a little sugar, for weeks. Its acid is not known: for the table, never for canning or pickling.',
  food: true,
};

export function waysOf(lot: HeldLot): WayShown[] {
  const food = !lot.groundFall && lot.grade !== 'cull';
  const material = typeof lot.details.material === 'string' ? setAsideMaterial(lot.details.material) : null;
  const away: WayShown[] = [
    { id: 'hens', title: 'To the hens', gives: 'Feed. No figure is printed for its worth.', food: false },
    { id: 'compost', title: 'To the compost', gives: `${mass(lot.onHand)} for the heap.`, food: false },
  ];
  if (!food || !material) return away;
  const pectin = STOCK.includes(material.id);
  const dryG = driedMass({ freshG: lot.onHand, w0: material.w0, wt: material.wt });
  const dry = dryFigure(material, { freshG: lot.onHand, dryG });
  const powder = POWDER_STRENGTH.find((r) => r.id === (material.rind ? 'lemon-peel-powder' : 'apple-powder'));
  const helps = powder && PECTIN.includes(material.id) ? helpsFigure(powder, dryG) : null;
  const carries = helps
    ? ` It could help set ${helps.band?.low} to ${helps.band?.high} half-pints of a medium fruit, untested.`
    : '';
  return [
    {
      id: 'dry',
      title: 'Dry it',
      gives: `About ${mass(dryG)} dry (${mass(dry.band?.low ?? dryG)} to ${mass(dry.band?.high ?? dryG)}), from ${Math.round(100 * material.w0)} % to ${Math.round(100 * material.wt)} % water.${carries}`,
      food: true,
      figures: [
        { label: 'Dry', figure: shown(dry) },
        ...(helps ? [{ label: 'Half-pints of a medium fruit it could help set', figure: shown(helps) }] : []),
      ],
    },
    ...(pectin
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
    {
      id: 'freeze',
      title: 'Freeze it',
      gives: `${mass(lot.onHand)}${pectin ? ' for a later stock' : ''}, 8 months.`,
      food: true,
    },
    ...(material.rind ? SWEET_WAYS : []),
    ...(pectin && !material.rind ? [VINEGAR_WAY] : []),
    ...away,
  ];
}

function dryFigure(material: SetAsideMaterial, { freshG, dryG }: { freshG: number; dryG: number }): Figure {
  const { w0, wt, source, status } = material;
  return figure({
    value: dryG,
    unit: 'g',
    band: driedBand(material, freshG),
    formula: 'fresh weight × (1 - water now) ÷ (1 - water when dry); shares of the wet weight',
    inputs: [
      input('fresh', freshG, 'g'),
      input('water now', w0, `(${material.w0Range.join(' to ')})`),
      input('water when dry', wt),
    ],
    source,
    status,
  });
}

function helpsFigure({ sugarPerG, source, status }: (typeof POWDER_STRENGTH)[number], dryG: number): Figure {
  const jars = (gPerG: number) => Math.floor((dryG * gPerG) / SUGAR_PER_HALF_PINT_G);
  return figure({
    value: jars(sugarPerG.typ),
    unit: '',
    band: { low: jars(sugarPerG.low), high: jars(sugarPerG.high) },
    formula: 'dry powder × sugar it carries a gram ÷ sugar in a half-pint, whole jars',
    inputs: [
      input('dry powder', Math.round(dryG), 'g'),
      input('sugar carried', sugarPerG.typ, `g a gram (${sugarPerG.low} to ${sugarPerG.high})`),
      input('sugar in a half-pint, a round figure', SUGAR_PER_HALF_PINT_G, 'g'),
    ],
    source,
    status,
  });
}
