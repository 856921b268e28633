/** The lines as a Markdown table; the README carries the same text. */
import type { QuantityLine } from './check-table.ts';

const shown = (x: number): string => {
  if (x === 0) return '0';
  return x < 1e-4 ? x.toExponential(0) : Number(x.toPrecision(2)).toString();
};

const HEAD = ['Quantity', 'Rows', 'Mean error', 'Worst error', 'Unit', 'Known misses', 'Fitted?', 'From memory?'];

export function renderCheckTable(lines: readonly QuantityLine[]): string {
  const body = lines.map((line) => [
    line.quantity,
    String(line.rows),
    shown(line.meanError),
    shown(line.worstError),
    line.unit,
    line.misses === 0 ? '' : String(line.misses),
    line.fitted ?? 'no',
    line.memory ?? 'no',
  ]);
  return `${[HEAD, HEAD.map(() => '---'), ...body].map((cells) => `| ${cells.join(' | ')} |`).join('\n')}\n`;
}
