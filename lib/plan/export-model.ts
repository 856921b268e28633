/** The programme as text in CPLEX LP format, which other solvers (glpsol --lp, cbc) read: for an outside second opinion. */
import type { Row, SparseModel } from './sparse-model.ts';

/** Every column and row keeps its trade name as far as the format allows; a number makes names unique. */
export function exportModel(model: SparseModel): string {
  const columns = uniqueNames(model.columns.map((c) => c.name));
  const rows = uniqueNames(model.rows.map((r) => r.name));
  const objective = model.columns.flatMap((c, j) => (c.cost === 0 ? [] : [term(c.cost, columns[j] as string)]));
  const bounds = model.columns.flatMap((c, j) => {
    const name = columns[j] as string;
    if (c.lower === 0 && c.upper === Infinity) return [];
    return [c.upper === Infinity ? ` ${name} >= ${c.lower}` : ` ${c.lower} <= ${name} <= ${c.upper}`];
  });
  const whole = model.columns.flatMap((c, j) => (c.whole ? [` ${columns[j]}`] : []));
  return [
    'Maximize',
    ` worth: ${wrapped(objective.length ? objective : [`0 ${columns[0]}`])}`,
    'Subject To',
    ...model.rows.flatMap((r, i) => rowText(r, rows[i] as string, columns)),
    'Bounds',
    ...bounds,
    ...(whole.length ? ['General', ...whole] : []),
    'End',
    '',
  ].join('\n');
}

const term = (factor: number, name: string): string => `${factor < 0 ? '-' : '+'} ${Math.abs(factor)} ${name}`;

/** Eight terms a line: some readers stop at long lines. */
function wrapped(terms: readonly string[]): string {
  const lines = Array.from({ length: Math.ceil(terms.length / 8) }, (_, i) => terms.slice(i * 8, i * 8 + 8).join(' '));
  return lines.join('\n  ');
}

function rowText(r: Row, name: string, columns: readonly string[]): string[] {
  const terms = r.columns.map((c, i) => term(r.factors[i] as number, columns[c] as string));
  const sum = wrapped(terms.length ? terms : [`0 ${columns[0]}`]);
  if (r.lower === r.upper) return [` ${name}: ${sum} = ${r.lower}`];
  return [
    ...(r.upper < Infinity ? [` ${name}: ${sum} <= ${r.upper}`] : []),
    ...(r.lower > -Infinity ? [` ${name}${r.upper < Infinity ? '_least' : ''}: ${sum} >= ${r.lower}`] : []),
  ];
}

function uniqueNames(names: readonly string[]): string[] {
  const seen = new Set<string>();
  return names.map((n, i) => {
    const plain = n
      .replace(/[^A-Za-z0-9]+/g, '_')
      .replace(/_$/, '')
      .slice(0, 200);
    const name = seen.has(plain) ? `${plain}_n${i}` : plain;
    seen.add(name);
    return name;
  });
}
