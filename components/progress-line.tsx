import styles from './progress-line.module.css';

export type ProgressLineProps = {
  label: string;
  /** 0 to 1; beyond 1 it is drawn full and said in words. */
  share: number;
  /** "148 of 214 lids". */
  text: string;
  /** A fruit's colour, where it is a fruit's line. */
  colour?: string;
};

/** How much of something is used, done or left: the words carry it, the bar shows it. */
export function ProgressLine({ label, share, text, colour }: ProgressLineProps) {
  const width = Math.round(Math.min(1, Math.max(0, share)) * 100);
  return (
    <div className={styles.line}>
      <span>{label}</span>
      <b>{text}</b>
      <span className={styles.bar} data-over={share > 1 || undefined} aria-hidden="true">
        <i className="keeps-colour" style={{ width: `${width}%`, ...(colour ? { background: colour } : {}) }} />
      </span>
    </div>
  );
}
