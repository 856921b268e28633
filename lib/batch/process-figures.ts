/** The row of the process table as figures that open: minutes, headspace in both units, and boiling the empty jars. */
import { MM_PER_INCH } from '#lib/units/convert.ts';
import { type Figure, figure, input } from './figure.ts';
import type { StorageClass } from './gate.ts';

export interface ProcessFigures {
  readonly minutes: Figure;
  readonly headspaceIn: Figure;
  readonly headspaceMm: Figure;
  /** Minutes to boil the empty jars; null when they need only be clean and hot. */
  readonly steriliseMin: Figure | null;
}

/** Null where the gate gives no row. */
export function processFigures({ process }: StorageClass): ProcessFigures | null {
  if (!process) return null;
  const { source, status } = process.row;
  const inputs = [
    input('product', process.row.product),
    input('jar', process.row.jar),
    input('altitude', process.bandLabel),
  ];
  const read = (value: number, unit: string, formula: string): Figure =>
    figure({ value, unit, formula, inputs, source, status });
  return {
    minutes: read(process.minutes, 'min', 'row of the process table as printed, from a full boil'),
    headspaceIn: read(process.headspaceIn, 'in', 'row of the process table'),
    headspaceMm: read(process.headspaceIn * MM_PER_INCH, 'mm', 'row of the process table, an inch is 25.4 mm'),
    steriliseMin: process.sterileJars
      ? figure({
          value: process.steriliseMinutes,
          unit: 'min',
          formula: 'under 10 minutes of processing the empty jars are boiled first',
          inputs,
          source: 'MSU_STERIL',
          status: 'verified',
        })
      : null,
  };
}
