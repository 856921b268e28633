/**
 * Syrup for so many jars: cups of water and sugar of a printed load over its jars. Pints by the load of 9, quarts by the load
 * of 7; other sizes have no printed amount and get none. Sugar 200 g and water 236.6 g a cup.
 */
import type { JarSize } from '#lib/reference/jar-sizes.ts';
import { SYRUPS, type SyrupRow } from '#lib/reference/syrups.ts';
import { ML_PER_US_CUP } from '#lib/units/convert.ts';
import { type Figure, figure, input } from './figure.ts';

export interface MeasuredSyrup {
  readonly name: string;
  readonly grams: Figure;
}

const SUGAR_G_PER_CUP = 200;

export function syrupFor(id: SyrupRow['id'] | null, size: JarSize, jars: number): MeasuredSyrup[] {
  const row: SyrupRow | undefined = SYRUPS.find((s) => s.id === id);
  if (!row || (size !== 'pint' && size !== 'quart') || jars <= 0) return [];
  const load = size === 'pint' ? { ...row.for9Pints, jars: 9 } : { ...row.for7Quarts, jars: 7 };
  const line = (name: string, cups: number, gPerCup: number): MeasuredSyrup => ({
    name,
    grams: figure({
      value: Math.ceil((cups * gPerCup * jars) / load.jars / 10) * 10,
      unit: 'g',
      formula: `printed for a load of ${load.jars}, for ${jars} jars, up to 10 g; sugar here is for taste and may be left out`,
      inputs: [input('cups a load', cups), input('a cup', gPerCup, 'g')],
      source: row.source,
      status: row.status,
    }),
  });
  return [
    line('water for syrup', load.waterCups, ML_PER_US_CUP),
    line('sugar for syrup', load.sugarCups, SUGAR_G_PER_CUP),
  ];
}
