/** What the label pages are asked, and what is said about a lot or the rule card. */
import { z } from 'zod';
import { isPlainDate } from '#lib/units/plain-date.ts';
import { actId, word } from './fields.ts';

const within = (min: number, max: number, otherwise: number) =>
  z
    .string()
    .optional()
    .transform((raw) => {
      const n = Number(raw);
      return raw && Number.isInteger(n) && n >= min && n <= max ? n : otherwise;
    });

const millimetres = z
  .string()
  .optional()
  .transform((raw) => {
    const n = Number((raw ?? '').replace(',', '.'));
    return Number.isFinite(n) && Math.abs(n) <= 10 ? n : 0;
  });

/** From an address: what does not fit is taken as the usual. */
export const labelQuery = z.object({
  lot: z.string().trim().max(60).default('').catch(''),
  purpose: z.enum(['sale', 'home', 'gift']).default('home').catch('home'),
  paper: z.enum(['a4', 'letter', 'single']).default('a4').catch('a4'),
  /** Labels to print; 0 for all the jars on hand. */
  count: within(0, 200, 0),
  /** Labels already gone from the first sheet. */
  used: within(0, 60, 0),
  /** Millimetres the print is moved by. */
  right: millimetres,
  down: millimetres,
});

export const ingredientForm = z.object({ id: actId, lot: word('the lot', 60), what: word('what went in', 40) });

const line = z.string().trim().max(120, 'longer than 120 letters').default('');
const tick = z.preprocess((v) => v === 'on', z.boolean());

export const ruleCardForm = z
  .object({
    id: actId,
    maker: line,
    address: line,
    contact: line,
    permit: line,
    homeKitchen: line,
    juice: line,
    checkedWith: line,
    checkedOn: line.refine((d) => d === '' || isPlainDate(d), 'checked on: not a day of the calendar'),
    askContact: tick,
    askPermit: tick,
    askHomeKitchen: tick,
  })
  .transform(({ askContact, askPermit, askHomeKitchen, ...card }) => ({
    ...card,
    asks: [askContact ? 'contact' : '', askPermit ? 'permit' : '', askHomeKitchen ? 'homeKitchen' : '']
      .filter((a) => a !== '')
      .join(','),
  }));
