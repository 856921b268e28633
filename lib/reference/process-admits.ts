/**
 * Whether a process row was tested with a fruit. Name matching only: an admitted fruit still answers to its low-acid rule,
 * the never-shelf list and its acid class, which are stricter.
 */
import { fruitOf } from './fruits.ts';
import type { ProcessRow } from './process-times.ts';

export type Admission = { ok: true } | { ok: false; reason: string };

/** RangeError for an unknown fruit id. */
export function processAdmits(row: ProcessRow, fruitId: string): Admission {
  const { name } = fruitOf(fruitId);
  if (row.notFor?.includes(fruitId)) return { ok: false, reason: `${name} is excluded from this process by name` };
  if (row.fruitIds && !row.fruitIds.includes(fruitId)) {
    return { ok: false, reason: `this process was not tested with ${name}` };
  }
  return { ok: true };
}
