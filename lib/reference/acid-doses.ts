/**
 * Acid that must go into each jar of a borderline food, tested doses only. The agents are alternatives of one food, not
 * equal amounts of acid (1/4 tsp citric acid holds about 1.25 g acid, 15 mL bottled lemon juice about 0.76 g): one is
 * never converted into another, nor scaled to a jar without a printed dose. Bottled, not fresh, lemon juice.
 * Sources: Penn State and Missouri GH1456 (tomato), MSU sheet 01600838 (fig), NCHFP (Asian pear).
 */
import { type JarSize, jarSizeOf, tableSizeFor } from './jar-sizes.ts';
import type { Cited } from './source.ts';

export interface AcidDose extends Cited {
  readonly foodId: 'tomato' | 'fig' | 'pear-asian';
  readonly jar: 'pint' | 'quart';
  readonly agent: 'bottled lemon juice' | 'citric acid' | 'vinegar of 5 %';
  readonly amount: number;
  readonly unit: 'mL' | 'tsp';
  readonly text: string;
}

const tomato = { foodId: 'tomato', source: 'TOMACID', status: 'verified' } as const;
const fig = { foodId: 'fig', source: 'MSU_FIG', status: 'verified' } as const;
const asianPear = { foodId: 'pear-asian', source: 'NCHFP_ASIANPEAR', status: 'verified' } as const;
const juicePint = {
  jar: 'pint',
  agent: 'bottled lemon juice',
  amount: 15,
  unit: 'mL',
  text: '1 tbsp (15 mL)',
} as const;
const juiceQuart = {
  jar: 'quart',
  agent: 'bottled lemon juice',
  amount: 30,
  unit: 'mL',
  text: '2 tbsp (30 mL)',
} as const;
const citricPint = { jar: 'pint', agent: 'citric acid', amount: 0.25, unit: 'tsp', text: '1/4 tsp' } as const;
const citricQuart = { jar: 'quart', agent: 'citric acid', amount: 0.5, unit: 'tsp', text: '1/2 tsp' } as const;
const vinegarPint = { jar: 'pint', agent: 'vinegar of 5 %', amount: 30, unit: 'mL', text: '2 tbsp (30 mL)' } as const;
const vinegarQuart = { jar: 'quart', agent: 'vinegar of 5 %', amount: 60, unit: 'mL', text: '4 tbsp (60 mL)' } as const;

export const ACID_DOSES = [
  { ...tomato, ...juicePint },
  { ...tomato, ...juiceQuart },
  { ...tomato, ...citricPint },
  { ...tomato, ...citricQuart },
  { ...tomato, ...vinegarPint },
  { ...tomato, ...vinegarQuart },
  { ...fig, ...juicePint },
  { ...fig, ...juiceQuart },
  { ...fig, ...citricPint },
  { ...fig, ...citricQuart },
  { ...asianPear, ...juicePint },
  { ...asianPear, ...juiceQuart },
] as const satisfies readonly AcidDose[];

export type AcidDoseLookup = { ok: true; doses: readonly AcidDose[] } | { ok: false; reason: string };

/**
 * The alternative doses of one jar. Refuses a food without a tested dose and a jar without a printed one (doses were
 * printed for pints and quarts; a 12 oz jar takes the pint dose, as it takes the pint time).
 */
export function acidDoses(foodId: string, jar: JarSize): AcidDoseLookup {
  const ofFood = ACID_DOSES.filter((d) => d.foodId === foodId);
  if (ofFood.length === 0) return { ok: false, reason: `no acid dose was tested for "${foodId}"` };
  const size = tableSizeFor(jar);
  const doses = ofFood.filter((d) => d.jar === size);
  if (doses.length > 0) return { ok: true, doses };
  return { ok: false, reason: `acid doses were printed for pints and quarts, not for a ${jarSizeOf(jar).name} jar` };
}
