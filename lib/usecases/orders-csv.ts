/** The order as a file for a spreadsheet: comma separated, quotes doubled, lines ended as RFC 4180 has them. */
import type { OrderView } from './season-orders.ts';

const HEAD = ['what', 'order', 'unit', 'packs', 'pack', 'by', 'reckoned from', 'source'];

export function ordersCsv(view: OrderView): string {
  const rows = view.rows.map((r) => [
    r.what,
    String(r.amount),
    r.unit,
    String(r.packs),
    r.pack,
    r.by,
    r.why.formula,
    r.why.source,
  ]);
  return [HEAD, ...rows].map((row) => `${row.map(quoted).join(',')}\r\n`).join('');
}

/** A cell a spreadsheet would take for a formula is led by an apostrophe. */
function quoted(cell: string): string {
  const text = /^[=+\-@]/.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
