/**
 * Jars seen in kitchens, metric ones too, with measured outside sizes: 14 rows from two unofficial lists that disagree by up
 * to 8 mm, and from memory. Starting values for the grower's own jar kinds; a jar that is not a home-canning jar
 * (`jar-sizes`) has no process time. Height on a shelf needs 5 mm more; stack two high at most, never on ring bands.
 */
import type { Cited } from './source.ts';

export interface CatalogueJar extends Cited {
  readonly id: string;
  readonly name: string;
  readonly brimMl: number;
  readonly fillMl: number;
  readonly diameterMm: number;
  readonly heightMm: number;
  /** Lid diameter or closure. */
  readonly lid: string;
}

// biome-ignore format: one printed row to a line
export const JAR_CATALOGUE = [
  { id: 'quarter-pint', name: 'quarter-pint 4 oz', brimMl: 130, fillMl: 118, diameterMm: 71, heightMm: 57, lid: 'regular 70', source: 'JAR2', status: 'secondary', note: 'second list: 2.8 x 2.2 in' },
  { id: 'half-pint', name: 'half-pint 8 oz', brimMl: 260, fillMl: 237, diameterMm: 71, heightMm: 97, lid: 'regular 70', source: 'JAR1', status: 'secondary', note: 'first list 2.75 x 3.75 in, second list 2.8 x 3.9 in' },
  { id: 'twelve-ounce', name: '12 oz', brimMl: 390, fillMl: 355, diameterMm: 70, heightMm: 130, lid: 'regular 70', source: 'JAR1', status: 'secondary', note: 'first list 2.75 x 5 in' },
  { id: 'pint', name: 'pint regular', brimMl: 520, fillMl: 473, diameterMm: 81, heightMm: 130, lid: 'regular 70', source: 'JAR1', status: 'secondary', note: 'first list 3.2 x 5.2 in; other lists 3.0-3.25 x 5.0' },
  { id: 'pint-and-a-half', name: 'pint and a half', brimMl: 770, fillMl: 710, diameterMm: 83, heightMm: 170, lid: 'wide 86', source: 'MEMORY', status: 'memory', note: 'first list 3 x 6.6 in; sureness: medium' },
  { id: 'quart', name: 'quart', brimMl: 1010, fillMl: 946, diameterMm: 97, heightMm: 175, lid: 'regular 70', source: 'MEMORY', status: 'memory', note: 'first list gives 3.5 x 6.9 in; 3.75-3.9 in more usual; sureness: fairly sure' },
  { id: 'half-gallon', name: 'half gallon', brimMl: 2000, fillMl: 1893, diameterMm: 118, heightMm: 239, lid: 'wide 86', source: 'JAR1', status: 'secondary', note: 'first list 4.5 x 9.4 in' },
  { id: 'metric-230', name: '230 ml straight jam', brimMl: 230, fillMl: 212, diameterMm: 70, heightMm: 95, lid: '66', source: 'MEMORY', status: 'memory', note: 'UK list: diameter 66 (lid); sureness: low' },
  { id: 'metric-250', name: '250 ml metric', brimMl: 265, fillMl: 250, diameterMm: 74, heightMm: 95, lid: '66', source: 'MEMORY', status: 'memory', note: 'sureness: low' },
  { id: 'metric-370', name: '370-380 ml round (1 lb jam)', brimMl: 380, fillMl: 370, diameterMm: 77, heightMm: 122, lid: '63', source: 'MEMORY', status: 'memory', note: 'sureness: medium' },
  { id: 'metric-440', name: '440 ml straight', brimMl: 445, fillMl: 430, diameterMm: 85, heightMm: 105, lid: '82', source: 'MEMORY', status: 'memory', note: 'UK list: diameter 82 (lid); sureness: low' },
  { id: 'bail-500', name: '500 ml bail jar', brimMl: 520, fillMl: 500, diameterMm: 95, heightMm: 130, lid: 'clip', source: 'MEMORY', status: 'memory', note: 'sureness: low' },
  { id: 'twist-720', name: '720 ml twist', brimMl: 740, fillMl: 720, diameterMm: 90, heightMm: 150, lid: '82', source: 'MEMORY', status: 'memory', note: 'sureness: low' },
  { id: 'bail-1000', name: '1000 ml bail jar', brimMl: 1030, fillMl: 1000, diameterMm: 105, heightMm: 175, lid: 'clip', source: 'MEMORY', status: 'memory', note: 'sureness: low' },
] as const satisfies readonly CatalogueJar[];
