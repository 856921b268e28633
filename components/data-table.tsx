import type { ReactNode } from 'react';
import { classNames } from './class-names.ts';
import styles from './data-table.module.css';

export type Column = { key: string; label: string; numeric?: boolean };
export type TableRow = { id: string; cells: Readonly<Record<string, ReactNode>> };
export type DataTableProps = {
  caption: ReactNode;
  /** Heard but not seen, where a heading above says the same. */
  hideCaption?: boolean;
  /** The first column names the row. */
  columns: readonly Column[];
  rows: readonly TableRow[];
  /** Said in place of an empty table. */
  none?: string;
};

/**
 * A captioned table, figures aligned right. On the phone each row of a table of more than two columns becomes a small block with
 * its column names beside the figures; an empty cell is left out there.
 */
export function DataTable({ caption, hideCaption = false, columns, rows, none = 'Nothing yet.' }: DataTableProps) {
  if (rows.length === 0) return <p className="quiet">{none}</p>;
  const [first, ...others] = columns;
  return (
    <div className={styles.room}>
      <table className={classNames(styles.table, columns.length > 2 && styles.stacks)}>
        <caption className={hideCaption ? 'heard' : undefined}>{caption}</caption>
        <thead>
          <tr>
            {columns.map((c) => (
              <th key={c.key} scope="col" className={c.numeric ? styles.numeric : undefined}>
                {c.label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.id}>
              {first ? (
                <th scope="row" className={classNames(first.numeric && styles.numeric)}>
                  {row.cells[first.key]}
                </th>
              ) : null}
              {others.map((c) => (
                <td key={c.key} data-label={c.label} className={c.numeric ? styles.numeric : undefined}>
                  {row.cells[c.key]}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
