import type { ReactNode } from 'react';
import { classNames } from './class-names.ts';
import styles from './tray-table.module.css';

export type TrayTableProps = {
  /** `wide-left` is 7 to 5, `equal` two halves, `three` thirds, `one` a single column. All fold to one on the phone. */
  columns?: 'wide-left' | 'equal' | 'three' | 'one';
  children: ReactNode;
};

/** The table the trays stand on: lays them side by side where there is room. */
export function TrayTable({ columns = 'wide-left', children }: TrayTableProps) {
  return <div className={classNames(styles.table, styles[columns])}>{children}</div>;
}
