import { bothMasses } from '#lib/units/format.ts';

/** Both units of a weight; a weight below zero says so in place of a minus sign that is easily missed. */
export const kilogramsOrPounds = (grams: number): string =>
  grams < 0 ? `${bothMasses(-grams)} too little` : bothMasses(grams);
