import { counted } from '#lib/units/format.ts';
import styles from './wall-sheet.module.css';

export type WallSheetProps = {
  view: {
    turning: readonly string[];
    tonight: readonly string[];
    due: readonly string[];
    left: readonly { line: string; count: number }[];
    total: number;
    eatFirst: readonly { line: string; jar: string; where: string }[];
  };
  when: string;
};

/** For the wall, on paper: 14 point and larger, black only, boxes to tick. */
export function WallSheet({ view, when }: WallSheetProps) {
  return (
    <>
      <h1>{when}</h1>
      <Boxes title="Turning this week" lines={view.turning} none="Nothing turns this week." />
      <Boxes title="Planned for today" lines={view.tonight} none="No batch is planned for today." />
      {view.due.length > 0 ? <Boxes title="Due" lines={view.due} none="" /> : null}
      <Boxes
        title="Eat first"
        lines={view.eatFirst.map((e) => `${e.line}, ${e.where}, lot ${e.jar}`)}
        none="Nothing is on a shelf."
      />
      <section>
        <h2>Left by line: {counted(view.total, 'jar or pack', 'jars and packs')}</h2>
        <ul className={styles.left}>
          {view.left.map((l) => (
            <li key={l.line}>
              <span>{l.line}</span> <b>{l.count}</b>
            </li>
          ))}
        </ul>
      </section>
    </>
  );
}

const Boxes = ({ title, lines, none }: { title: string; lines: readonly string[]; none: string }) => (
  <section>
    <h2>{title}</h2>
    {lines.length === 0 ? (
      <p>{none}</p>
    ) : (
      <ul className="boxes">
        {lines.map((l) => (
          <li key={l}>{l}</li>
        ))}
      </ul>
    )}
  </section>
);
