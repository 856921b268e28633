import Link from 'next/link';
import { counted } from '#lib/units/format.ts';
import { JarShape } from './jar-shape.tsx';
import { placeLabels } from './shelf-labels.ts';
import { type ShelfJars, type ShelfLayout, type ShelfSize, shelfLayout } from './shelf-layout.ts';
import styles from './shelf-picture.module.css';

export type Shelf = ShelfSize & { readonly address: string; readonly jars: readonly ShelfJars[] };
export type ShelfPictureProps = {
  shelves: readonly Shelf[];
  /** Shelves beside each other on the desk: 1 for a close look, 2 to 4 for the whole store. */
  columns?: 1 | 2 | 3 | 4;
  /** What a dashed jar means, in a word: planned. */
  dashed?: string;
  /** Caption of the table in words. */
  caption?: string;
};

const BOARD = 12;
const NAME_SIZE = 18;
/** An empty shelf is drawn low: there is nothing to see on it. */
const EMPTY_MM = 60;

/**
 * The store drawn to scale from the jars that stand in it: solid glass is there, dashed is planned. The figure on a paper label
 * counts the jars one behind another at that place. Each line of the list beneath a shelf leads to its jars.
 */
export function ShelfPicture({
  shelves,
  columns = 1,
  caption = 'Jars by shelf',
  dashed = 'planned',
}: ShelfPictureProps) {
  const drawn = shelves.map((shelf) => ({ shelf, layout: shelfLayout(shelf, shelf.jars) }));
  return (
    <div className={styles.store}>
      <div className={styles.shelves} data-columns={columns}>
        {drawn.map(({ shelf, layout }) => (
          <figure key={shelf.address} className={styles.shelf}>
            <ShelfDrawing shelf={shelf} layout={layout} />
            <figcaption className={styles.caption}>
              <b>{shelf.address}</b>
              <span>{Math.round(layout.fullness * 100)} % full</span>
            </figcaption>
            <ShelfLines layout={layout} dashed={dashed} />
          </figure>
        ))}
      </div>
      <details className={styles.table}>
        <summary>The same as a table</summary>
        <ShelfTable caption={caption} shelves={shelves} dashed={dashed} />
      </details>
    </div>
  );
}

function ShelfDrawing({ shelf, layout }: { shelf: Shelf; layout: ShelfLayout }) {
  const floor = layout.groups.length > 0 ? shelf.clearMm : Math.min(EMPTY_MM, shelf.clearMm);
  const names = placeLabels(
    layout.groups.map((g) => ({ text: g.jars.label, from: g.x, width: g.widthMm })),
    NAME_SIZE,
    8,
  );
  return (
    <svg
      viewBox={`0 0 ${shelf.widthMm} ${floor + BOARD + NAME_SIZE * 1.5}`}
      className={`${styles.drawing} keeps-colour`}
      aria-hidden="true"
    >
      {layout.groups.map((g) => (
        <g key={`${g.jars.line}-${g.x}`}>
          {g.fronts.map((f) => (
            <JarShape
              key={`${f.x}-${f.bottom}`}
              x={f.x}
              y={floor - f.bottom - g.jars.jarKind.heightMm}
              width={g.jars.jarKind.pitchMm}
              height={g.jars.jarKind.heightMm}
              colour={g.jars.foodColour}
              planned={g.jars.planned ?? false}
              text={String(f.behind)}
            />
          ))}
        </g>
      ))}
      <rect x={0} y={floor} width={shelf.widthMm} height={BOARD} rx={2} fill="var(--wood)" />
      <rect x={0} y={floor + BOARD - 3} width={shelf.widthMm} height={3} fill="var(--wood-edge)" />
      <g className={styles.names}>
        {names.map((n) => (
          <text
            key={n.x}
            x={n.x + n.width / 2}
            y={floor + BOARD + NAME_SIZE * 1.1}
            textAnchor="middle"
            fontSize={NAME_SIZE}
          >
            {n.text}
          </text>
        ))}
      </g>
    </svg>
  );
}

/** The lines of a shelf in words, each leading to its jars; what does not fit stands on the floor beneath. */
function ShelfLines({ layout, dashed }: { layout: ShelfLayout; dashed: string }) {
  if (layout.groups.length === 0 && layout.left.length === 0) return <p className={styles.empty}>Empty.</p>;
  return (
    <ul className={styles.lines}>
      {layout.groups.map((g) => (
        <li key={`${g.jars.line}-${g.x}`}>
          <LineName jars={g.jars} count={g.placed} dashed={dashed} />
        </li>
      ))}
      {layout.left.map(({ jars, count }) => (
        <li key={`left-${jars.line}`} className={styles.left}>
          No room here: <LineName jars={jars} count={count} dashed={dashed} />
        </li>
      ))}
    </ul>
  );
}

function LineName({ jars, count, dashed }: { jars: ShelfJars; count: number; dashed: string }) {
  const words = (
    <>
      <i
        className={`${styles.chip} keeps-colour`}
        data-planned={jars.planned || undefined}
        style={
          jars.planned
            ? { borderColor: jars.foodColour }
            : { background: jars.foodColour, borderColor: jars.foodColour }
        }
      />
      <span>
        {jars.label} <b>{count}</b>
        {jars.planned ? ` ${dashed}` : ''}
      </span>
    </>
  );
  return jars.href ? (
    <Link href={jars.href} prefetch={false} className={styles.line}>
      {words}
    </Link>
  ) : (
    <span className={styles.line}>{words}</span>
  );
}

function ShelfTable({ caption, shelves, dashed }: { caption: string; shelves: readonly Shelf[]; dashed: string }) {
  return (
    <table>
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">Shelf</th>
          <th scope="col">Line</th>
          <th scope="col">Jars</th>
        </tr>
      </thead>
      <tbody>
        {shelves.flatMap((s) =>
          s.jars.map((j, i) => (
            <tr key={`${s.address}-${i}`}>
              <td>{s.address}</td>
              <td>
                {j.label}
                {j.planned ? ` (${dashed})` : ''}
              </td>
              <td>{counted(j.count, 'jar')}</td>
            </tr>
          )),
        )}
      </tbody>
    </table>
  );
}
