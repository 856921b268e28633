/** The forms of a set-aside: onto the trays, weighed, shaken, and its ways out; a pressing; fruit cut for the dryer. */
import { z } from 'zod';
import { actId, count, massG, massKg, number, optional, temperature, tick, word } from './fields.ts';

const on = { id: actId, code: word('the set-aside') };

const trays = count({ what: 'the trays', min: 1, max: 200 });
const heat = temperature({ what: 'the dryer', min: 30, max: 90 });

export const dryForm = z
  .object({
    ...on,
    way: z.enum(['dryer', 'oven', 'windowsill', 'hung'], { error: 'choose how it is dried' }).default('dryer'),
    trays,
    centiC: heat,
    roomC: optional(temperature({ what: 'the room', min: 5, max: 40 })),
    humidityPct: optional(number({ what: 'the room’s humidity', min: 5, max: 95 })),
    seedsOut: tick,
    waxed: tick,
  })
  .superRefine((f, ctx) => {
    if ((f.way === 'windowsill' || f.way === 'hung') && (f.roomC === null || f.humidityPct === null))
      ctx.addIssue({ code: 'custom', path: ['roomC'], message: 'say how warm and how humid the room is' });
  })
  .transform(({ roomC, centiC, humidityPct, ...f }) => ({
    ...f,
    ...(f.way === 'windowsill' || f.way === 'hung'
      ? { centiC: roomC ?? centiC, humidityPct: humidityPct ?? 0 }
      : { centiC }),
  }));
/** From room air to a dryer or oven. */
export const moveForm = z.object({
  ...on,
  way: z.enum(['dryer', 'oven'], { error: 'choose the dryer or the oven' }),
  trays,
  centiC: heat,
});
export const weighForm = z.object({
  ...on,
  grams: massKg({ what: 'the weight', min: 0.001, max: 500 }),
  out: tick,
});
export const shakeForm = z.object({ ...on, drops: tick });
export const readyForm = z.object(on);
export const clotForm = z.object({
  ...on,
  result: z.enum(['high', 'medium', 'low'], { error: 'say what was seen in the alcohol' }),
});
export const cupForm = z.object({
  ...on,
  powderG: massG({ what: 'the powder', min: 1, max: 200 }),
  sugarG: massG({ what: 'the sugar', min: 1, max: 500 }),
  set: z.enum(['0', '1', '2'], { error: 'say how it set' }).transform((v) => Number(v) as 0 | 1 | 2),
});
export const wayForm = z.object({
  ...on,
  way: z.enum(['freeze', 'hens', 'compost', 'stock'], { error: 'choose a way' }),
  waterG: optional(massKg({ what: 'the water', min: 0.05, max: 200 })),
  stockG: optional(massKg({ what: 'the stock', min: 0.05, max: 200 })),
});
export const pressForm = z
  .object({
    id: actId,
    lot: word('the fruit', 200),
    kg: massKg({ what: 'the fruit', min: 0.5, max: 5000 }),
    juice: massKg({ what: 'the juice', min: 0, max: 5000 }),
    pomace: massKg({ what: 'the pomace', min: 0, max: 5000 }),
    keepPomace: tick,
  })
  .transform(({ id, lot, kg, juice, pomace, keepPomace }) => ({
    id,
    draws: [{ lotId: lot, grams: kg }],
    juiceG: juice,
    pomaceG: pomace,
    keepPomace,
  }));
export const cutForm = z
  .object({
    id: actId,
    lot: word('the fruit', 200),
    raw: massKg({ what: 'the fruit', min: 0.1, max: 500 }),
    cut: massKg({ what: 'the rings', min: 0.05, max: 500 }),
    keepPeel: tick,
  })
  .transform(({ id, lot, raw, cut, keepPeel }) => ({ id, lotId: lot, rawG: raw, cutG: cut, keepPeel }));
