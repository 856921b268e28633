/**
 * Jars from a weight of one density: whole jars, and the rest in a partial jar that goes to the fridge. Air and headspace
 * take 1 to 5 %, and printed yields scatter: the count carries a band of one jar in five.
 */

import type { JarSize } from '#lib/reference/jar-sizes.ts';
import { jarYield } from '#lib/science/jar-yield.ts';
import { type Figure, figure, input } from './figure.ts';

export interface JarKind {
  readonly size: JarSize;
  readonly fillMl: number;
  readonly madeForCanning: boolean;
}

export interface JarFill {
  readonly jars: Figure;
  readonly jarG: Figure;
  /** Grams left for a partial jar. */
  readonly partialG: Figure;
}

export function jarFill(finalG: Figure, brix: number, lossG: number, jar: JarKind): JarFill {
  const filled = jarYield({ panTargetG: finalG.value, brix, lossG, jars: [{ id: jar.size, fillMl: jar.fillMl }] });
  const jars = filled.counts[0]?.jars ?? 0;
  const oneJar = input('one jar', filled.jarG, 'g');
  return {
    jarG: figure({
      value: filled.jarG,
      unit: 'g',
      formula: 'volume times the density of syrup of this Brix at 20 °C; weigh one filled jar and use that',
      inputs: [input('volume', jar.fillMl, 'ml'), input('Brix', brix, '°Bx')],
    }),
    jars: figure({
      value: jars,
      unit: 'jars',
      band: { low: filled.low, high: filled.high },
      formula: 'what is in the pan less losses, over one jar; whole jars, one in five either way',
      inputs: [input('in the pan', finalG.value, 'g'), input('losses', lossG, 'g'), oneJar],
    }),
    partialG: figure({
      value: filled.leftoverG,
      unit: 'g',
      formula: 'what the whole jars leave; it goes to the fridge, not the shelf',
      inputs: [input('whole jars', jars), oneJar],
    }),
  };
}
