/**
 * The house field kit: text from a form to whole numbers in the smallest unit, with messages that carry the figures.
 * Used instead of coercion, which reads a blank as 0 and '0x1F' as 31.
 */
import { z } from 'zod';
import { fromPounds } from '#lib/units/convert.ts';
import { type Measure, type MeasureUnit, parseMeasure } from '#lib/units/measure.ts';
import { parseNumber } from '#lib/units/parse-number.ts';
import { isPlainDate, type PlainDate } from '#lib/units/plain-date.ts';

const text = z.string().trim();
const say = (ctx: z.RefinementCtx, message: string) => {
  ctx.addIssue({ code: 'custom', message });
  return z.NEVER;
};

export interface Bounds {
  what: string;
  min: number;
  max: number;
}

/** A number as people write it, within bounds, as it was meant (not rounded). A sign is read where the bounds reach below zero. */
export const number = ({ what, min, max }: Bounds) =>
  text.transform((raw, ctx): number => {
    const below = min < 0 && /^[-−]/.test(raw);
    const parsed = parseNumber(below ? raw.slice(1) : raw);
    if (!parsed.ok) return say(ctx, raw === '' ? `${what} is missing` : `${what}: ${parsed.reason}`);
    const value = below ? -parsed.value : parsed.value;
    if (value < min || value > max) return say(ctx, `${what} is ${raw}; it must lie between ${min} and ${max}`);
    return value;
  });

/** Kilograms typed, whole grams out. */
export const massKg = (b: Bounds) => number(b).transform((kg) => Math.round(kg * 1000));
/** Whole grams typed. */
export const massG = (b: Bounds) => number(b).transform((g) => Math.round(g));
/** A mass in kg or lb by its unit key, whole grams out. */
export const toGrams = (value: number, unit: 'kg' | 'lb'): number =>
  Math.round(unit === 'kg' ? value * 1000 : fromPounds(value));
/** A whole count. */
export const count = (b: Bounds) =>
  number(b).transform((n, ctx): number =>
    Number.isInteger(n) ? n : say(ctx, `${b.what} is ${n}; it must be a whole number`),
  );
/** °C typed, hundredths of a degree out. */
export const temperature = (b: Bounds) => number(b).transform((c) => Math.round(c * 100));

/** An amount with its unit, "0.87", "870 g", "4 cups", "2 tbsp"; a bare number is in `bare`. */
export const measure = (what: string, bare: MeasureUnit) =>
  text.transform((raw, ctx): Measure => {
    const parsed = parseMeasure(raw, bare);
    return parsed.ok ? parsed.value : say(ctx, `${what}: ${parsed.reason}`);
  });

/** May stay empty: null then. */
export const optional = <T>(field: z.ZodType<T>) =>
  z
    .preprocess((v) => (typeof v === 'string' && v.trim() === '' ? undefined : v), field.optional())
    .transform((v) => v ?? null);

export const plainDay = text.transform(
  (raw, ctx): PlainDate => (isPlainDate(raw) ? raw : say(ctx, `"${raw}" is not a day of the calendar`)),
);
/** An id made where the act happened. */
export const actId = text.regex(/^[A-Za-z0-9:._|#-]{8,120}$/, 'the form has lost its id; open it again');
export const word = (what: string, longest = 120) =>
  text.min(1, `${what} is missing`).max(longest, `${what} is longer than ${longest} letters`);
export const tick = z.preprocess((v) => v === 'on' || v === 'true' || v === true, z.boolean());
