import type { ReactNode } from 'react';
import { fahrenheit } from '#lib/units/convert.ts';
import { celsius } from '#lib/units/quantity.ts';
import { FigureWithSource } from './figure-with-source.tsx';

export type Shown = {
  value: number;
  unit: string;
  band: { low: number; high: number } | null;
  formula: string;
  inputs: readonly { label: string; value: string }[];
  source: string;
  status: string;
};

/** Grams below a kilogram, kilograms above; everything else with the digits it deserves. */
export function figureText({ value, unit, band }: Pick<Shown, 'value' | 'unit' | 'band'>): string {
  if (unit === '°C') return `${value.toFixed(1)} °C · ${fahrenheit(celsius(value)).toFixed(1)} °F`;
  const text = unit === 'g' ? grams(value) : `${rounded(value, unit)}${unit ? ` ${unit}` : ''}`;
  if (!band || rounded(band.low, unit) === rounded(band.high, unit)) return text;
  return unit === 'g'
    ? `${text} (${grams(band.low)} to ${grams(band.high)})`
    : `${text} (${rounded(band.low, unit)} to ${rounded(band.high, unit)})`;
}
const grams = (g: number): string => (Math.abs(g) >= 1000 ? `${(g / 1000).toFixed(3)} kg` : `${Math.round(g)} g`);
const rounded = (v: number, unit: string): string => {
  if (unit === 'in') return v === 0.25 ? '¼' : v === 0.5 ? '½' : String(v);
  if (unit === 'min') return String(Math.round(v));
  if (unit === 'cups' || unit === '°Bx' || unit === '°C') return v.toFixed(1);
  return String(Math.round(v * 100) / 100 > 10 ? Math.round(v) : Math.round(v * 100) / 100);
};

/** A computed figure that opens to its formula, inputs, source and status. */
export function ShownFigure({ figure, label, text }: { figure: Shown; label: string; text?: ReactNode }) {
  return (
    <FigureWithSource
      label={label}
      value={text ?? figureText(figure)}
      formula={figure.formula}
      inputs={figure.inputs}
      source={figure.source}
      status={figure.status}
    />
  );
}
