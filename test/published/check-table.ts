/** Every published row computed, and one line per quantity for the README. */
import { COMPUTED } from './computed-rows.ts';
import { type CheckRow, SCIENCE_CHECKS } from './science-checks.ts';
import { KNOWN_MISSES, TOLERANCES } from './tolerances.ts';

export interface CheckResult {
  readonly row: CheckRow;
  readonly computed: number;
  /** Computed less published; 0 inside a published range. */
  readonly residue: number;
}

export interface QuantityLine {
  readonly quantity: string;
  readonly unit: string;
  readonly rows: number;
  readonly misses: number;
  readonly meanError: number;
  readonly worstError: number;
  readonly fitted: string | null;
  readonly memory: string | null;
}

export function residueOf(computed: number, expected: CheckRow['expected']): number {
  if (computed < expected.low) return computed - expected.low;
  return computed > expected.high ? computed - expected.high : 0;
}

/** Throws on a row of a quantity the program does not compute: nothing is skipped. */
export function checkResults(): CheckResult[] {
  return SCIENCE_CHECKS.rows.map((row) => {
    const compute = COMPUTED[row.quantity];
    if (!compute) throw new Error(`${row.id}: nothing computes "${row.quantity}"`);
    const computed = compute(row);
    return { row, computed, residue: residueOf(computed, row.expected) };
  });
}

export function quantityLines(results: readonly CheckResult[]): QuantityLine[] {
  const quantities = [...new Set(results.map((r) => r.row.quantity))];
  return quantities.map((quantity) => {
    const own = results.filter((r) => r.row.quantity === quantity);
    const errors = own.map((r) => Math.abs(r.residue));
    const fromMemory = own.filter((r) => r.row.status === 'memory').length;
    const inputs = TOLERANCES[quantity]?.memory ?? null;
    const memory = fromMemory > 0 ? `${fromMemory} of ${own.length} rows${inputs ? `; ${inputs}` : ''}` : inputs;
    return {
      quantity,
      unit: own[0]?.row.unit ?? '',
      rows: own.length,
      misses: own.filter((r) => KNOWN_MISSES[r.row.id]).length,
      meanError: errors.reduce((sum, e) => sum + e, 0) / errors.length,
      worstError: Math.max(...errors),
      fitted: TOLERANCES[quantity]?.fitted ?? null,
      memory,
    };
  });
}
