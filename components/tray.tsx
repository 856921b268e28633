import { type ReactNode, useId } from 'react';
import styles from './tray.module.css';

export type TrayProps = {
  title?: ReactNode;
  /** A link or button at the right of the title. */
  action?: ReactNode;
  /** 2 for a tray of the page (the default), 3 for a tray inside one. */
  level?: 2 | 3;
  /** Anchor for links to this tray. */
  id?: string;
  children: ReactNode;
};

/** White enamel tray with a blue rim: every group of related things sits in one. */
export function Tray({ title, action, level = 2, id, children }: TrayProps) {
  const headingId = useId();
  const Heading = level === 2 ? 'h2' : 'h3';
  return (
    <section className={styles.tray} id={id} aria-labelledby={title ? headingId : undefined}>
      {title || action ? (
        <div className={styles.head}>
          {title ? <Heading id={headingId}>{title}</Heading> : null}
          {action ? <div className={styles.action}>{action}</div> : null}
        </div>
      ) : null}
      {children}
    </section>
  );
}
