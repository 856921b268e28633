/** An amount as it stands in a recipe or on a scale: "870 g", "0.87", "4 1/3 cups", "2 tbsp". The weight of a spoon is not known here. */
import { parseNumber } from './parse-number.ts';

export const MEASURE_UNITS = ['kg', 'g', 'cup', 'tbsp', 'tsp'] as const;
export type MeasureUnit = (typeof MEASURE_UNITS)[number];
export interface Measure {
  readonly amount: number;
  readonly unit: MeasureUnit;
}
export type ParsedMeasure = { ok: true; value: Measure } | { ok: false; reason: string };

const WORDS: Readonly<Record<string, MeasureUnit>> = {
  kg: 'kg',
  g: 'g',
  cup: 'cup',
  cups: 'cup',
  tbsp: 'tbsp',
  tablespoon: 'tbsp',
  tablespoons: 'tbsp',
  tsp: 'tsp',
  teaspoon: 'tsp',
  teaspoons: 'tsp',
};

/** A number and its unit; a bare number is in `bare`. */
export function parseMeasure(raw: string, bare: MeasureUnit): ParsedMeasure {
  const text = raw.trim().toLowerCase();
  const word = /[a-z]+$/.exec(text)?.[0] ?? '';
  const unit = word === '' ? bare : WORDS[word];
  if (!unit) return { ok: false, reason: `"${word}" is not kg, g, cups, tbsp or tsp` };
  const number = parseNumber(text.slice(0, text.length - word.length).trim());
  return number.ok ? { ok: true, value: { amount: number.value, unit } } : number;
}
