import type { JarLabel } from '#lib/labels/jar-label.ts';
import styles from './label-face.module.css';
import { QrCode } from './qr-code.tsx';

export type LabelFaceProps = { label: JarLabel; jar: string; address: string };

/** What stands on one label. Black on white, 10 point and larger; the allergens bold. */
export function LabelFace({ label: l, jar, address }: LabelFaceProps) {
  const lot = (
    <p>
      Lot <b>{jar}</b>
    </p>
  );
  if (l.purpose === 'home')
    return (
      <div className={styles.face} data-label={jar}>
        <div className={styles.beside}>
          <p className={styles.name}>{l.name}</p>
          <QrCode text={address} sizeMm={18} />
        </div>
        {lot}
        <p>
          {l.madeOn}
          {l.processed ? `. Processed: ${l.processed}` : ''}
        </p>
        {l.contains ? <p className={styles.contains}>Contains: {l.contains}</p> : null}
      </div>
    );
  return (
    <div className={styles.face} data-label={jar}>
      <div className={styles.beside}>
        <div>
          <p className={styles.name}>{l.name}</p>
          {l.net ? <p>Net weight {l.net}</p> : null}
          {lot}
          <p>Made {l.madeOn}</p>
          {l.bestBefore ? <p>Best before {l.bestBefore}</p> : null}
        </div>
        <QrCode text={address} sizeMm={22} />
      </div>
      {l.ingredients ? <p>Ingredients: {l.ingredients}.</p> : null}
      {l.contains ? <p className={styles.contains}>Contains: {l.contains}</p> : null}
      <p>{l.keep}</p>
      {l.maker.length > 0 ? <p>{l.maker.join('. ')}</p> : null}
      {l.homeKitchen ? <p className={styles.home}>{l.homeKitchen}</p> : null}
    </div>
  );
}
