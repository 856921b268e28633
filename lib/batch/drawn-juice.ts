/**
 * Juice drawn from fruit as weighed: by press 62 % (55 to 67), by jelly bag as the recipe says. Soluble solids are those of
 * the fruit spread over its water and the water added; a refractometer reading beats this. What is weighed beats both.
 */
import type { ExtractionRule } from '#lib/reference/recipes/recipe.ts';
import { type Figure, figure, input } from './figure.ts';
import type { PreparedLot } from './prepared-fruit.ts';

export interface DrawnJuice {
  readonly juiceG: Figure;
  readonly brix: Figure;
  readonly waterG: Figure;
}

export function drawnJuice(
  rule: ExtractionRule,
  lots: readonly PreparedLot[],
  measured: { readonly juiceG?: number | undefined; readonly juiceBrix?: number | undefined },
): DrawnJuice {
  const fruitG = lots.reduce((sum, l) => sum + l.lot.grams, 0);
  const solublesG = lots.reduce((sum, l) => sum + (l.lot.grams * l.brix.value) / 100, 0);
  const dissolvingG = lots.reduce((sum, l) => sum + l.lot.grams * (1 - l.insolublePct / 100), 0);
  const waterG = (fruitG * rule.waterGPerKg) / 1000;
  const at = (gPerKg: number) => (fruitG * gPerKg) / 1000;
  const { low, typ, high } = rule.juiceGPerKg;
  const pressed = rule.by === 'press';
  return {
    waterG: figure({
      value: Math.round(waterG / 10) * 10,
      unit: 'g',
      formula: 'water to simmer the fruit in, per kg of fruit',
      inputs: [input('per kg', rule.waterGPerKg, 'g')],
      source: rule.source,
      status: rule.status,
    }),
    juiceG:
      measured.juiceG === undefined
        ? figure({
            value: at(typ),
            unit: 'g',
            band: { low: at(low), high: at(high) },
            formula: pressed ? 'share of the fruit by weight when well pressed' : 'juice that drips, per kg of fruit',
            inputs: [input('fruit', fruitG, 'g'), input('share', typ / 10, '%')],
            source: rule.source,
            status: rule.status,
          })
        : figure({ value: measured.juiceG, unit: 'g', formula: 'as you weighed it', inputs: [] }),
    brix:
      measured.juiceBrix === undefined
        ? figure({
            value: pressed ? (100 * solublesG) / fruitG : (100 * solublesG) / (dissolvingG + waterG),
            unit: '°Bx',
            formula: pressed
              ? 'soluble solids of the fruit'
              : 'soluble solids of the fruit over its own and the added water',
            inputs: [input('soluble solids', solublesG, 'g')],
            status: 'estimate',
          })
        : figure({ value: measured.juiceBrix, unit: '°Bx', formula: 'your refractometer', inputs: [] }),
  };
}
