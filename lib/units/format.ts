/** How quantities are shown to people: rounded for reading only, never re-converted from a rounded figure. */
import { fahrenheit, pounds } from './convert.ts';
import type { Celsius } from './quantity.ts';

/** Kilograms to 10 g at the scale, trailing zeros kept: "5.00 kg". */
export const kilograms = (g: number): string => `${(g / 1000).toFixed(2)} kg`;
/** Pounds to a tenth: "11.0 lb". */
export const poundsText = (g: number): string => `${pounds(g).toFixed(1)} lb`;
/** Both at once, the kilogram first: "5.00 kg · 11.0 lb". */
export const bothMasses = (g: number): string => `${kilograms(g)} · ${poundsText(g)}`;
/** A mass for reading: grams below a kilogram, else kilograms with two decimals. */
export const mass = (g: number): string => (Math.abs(g) < 1000 ? `${Math.round(g)} g` : kilograms(g));
/** "103.0 °C". */
export const celsiusText = (t: Celsius): string => `${t.toFixed(1)} °C`;
/** "217.5 °F". */
export const fahrenheitText = (t: Celsius): string => `${fahrenheit(t).toFixed(1)} °F`;
export const bothTemperatures = (t: Celsius): string => `${celsiusText(t)} · ${fahrenheitText(t)}`;
/** "13 min", "1 h 25 min". */
export function duration(minutes: number): string {
  const m = Math.round(minutes);
  return m < 60 ? `${m} min` : `${Math.floor(m / 60)} h${m % 60 ? ` ${m % 60} min` : ''}`;
}
/** "1 jar", "6 jars". */
export const counted = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;
/** Hours below two days, whole days above: "11 h", "3 days". */
export function timeLeft(hours: number): string {
  if (hours <= 0) return 'past its time';
  if (hours < 48) return `${Math.max(1, Math.floor(hours))} h`;
  return `${Math.floor(hours / 24)} days`;
}
