/** The forms of a set-aside: onto the trays, weighed, shaken, and its ways out; a pressing; fruit cut for the dryer. */
import { z } from 'zod';
import { actId, count, massG, massKg, number, optional, temperature, tick, word } from './fields.ts';

const on = { id: actId, code: word('the set-aside') };
/** Only a part of the lot; blank is all of it. */
const partG = optional(massKg({ what: 'the part', min: 0.001, max: 5000 }));

const trays = count({ what: 'the trays', min: 1, max: 200 });
const heat = temperature({ what: 'the dryer', min: 30, max: 90 });

export const dryForm = z
  .object({
    ...on,
    partG,
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
  partG,
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

const perPack = {
  packs: count({ what: 'the packs', min: 1, max: 500 }),
  gramsEach: massG({ what: 'a pack', min: 1, max: 5000 }),
};

/** Rind or zest in sugar: candied in syrup, or rubbed into it. */
export const sweetForm = z.object({
  ...on,
  partG,
  way: z.enum(['candy', 'peel-sugar'], { error: 'choose candied or in sugar' }),
  sugarG: massKg({ what: 'the sugar', min: 0.01, max: 100 }),
  waterG: optional(massKg({ what: 'the water', min: 0.01, max: 100 })),
  waxed: tick,
  ...perPack,
});
export const vinegarForm = z.object({
  ...on,
  partG,
  waterG: massKg({ what: 'the water', min: 0.1, max: 200 }),
  sugarG: optional(massKg({ what: 'the sugar', min: 0.01, max: 50 })),
});
export const strainForm = z.object({ ...on, ...perPack });
export const zestForm = z
  .object({
    id: actId,
    lot: word('the fruit', 200),
    raw: massKg({ what: 'the fruit', min: 0.05, max: 500 }),
    zest: massG({ what: 'the zest', min: 1, max: 20_000 }),
  })
  .transform(({ id, lot, raw, zest }) => ({ id, lotId: lot, rawG: raw, zestG: zest }));
export const herbForm = z.object({
  id: actId,
  name: word('the herb', 40),
  grams: massG({ what: 'the herb', min: 1, max: 50_000 }),
});

/** One lot into packs. */
export const packForm = z
  .object({ ...on, ...perPack })
  .transform(({ code, ...f }) => ({ ...f, name: null, parts: [{ code, parts: 1 }] }));

export const BLEND_LISTS = ['codes', 'parts'];
const texts = z.array(z.string().max(120)).max(100).default([]);
const part = number({ what: 'a part', min: 0, max: 100_000 });

/** Several lots by weight, named; what was left blank does not go in. */
export const blendForm = z
  .object({ id: actId, name: word('the name on the label', 60), ...perPack, codes: texts, parts: texts })
  .transform(({ codes, parts, ...f }, ctx) => ({
    ...f,
    parts: codes.flatMap((code, i) => {
      const text = (parts[i] ?? '').trim();
      if (text === '') return [];
      const read = part.safeParse(text);
      if (read.success) return [{ code, parts: read.data }];
      ctx.addIssue({ code: 'custom', message: `${code}: ${read.error.issues[0]?.message ?? 'not a number'}` });
      return [];
    }),
  }));
