import type { JarLabel } from '#lib/labels/jar-label.ts';
import { labelsOnSheet, type Sheet, spots } from '#lib/labels/sheets.ts';
import { LabelFace } from './label-face.tsx';
import styles from './label-sheet.module.css';

export type LabelSheetProps = {
  sheet: Sheet;
  label: JarLabel;
  /** One label for each jar, by its code. */
  jars: readonly string[];
  used: number;
  /** Address of a jar's own page. */
  addressOf: (jar: string) => string;
};

/** Sheets of labels at their true size; the browser's print is set to the same paper without a margin of its own. */
export function LabelSheet({ sheet, label, jars, used, addressOf }: LabelSheetProps) {
  const at = spots(sheet, jars.length, used);
  const pages = Math.ceil((jars.length + used) / labelsOnSheet(sheet));
  const { widthMm, heightMm } = sheet.paper;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a sheet wider than the screen is scrolled with the keyboard too
    <section className={styles.room} aria-label="Label sheet" tabIndex={0}>
      <style>{`@page { size: ${widthMm}mm ${heightMm}mm; margin: 0; }`}</style>
      {Array.from({ length: pages }, (_, page) => (
        <div key={page} className={styles.paper} style={{ width: `${widthMm}mm`, height: `${heightMm}mm` }}>
          {at.flatMap((spot, i) =>
            spot.page === page
              ? [
                  <div
                    key={jars[i]}
                    className={styles.label}
                    style={{
                      left: `${spot.xMm}mm`,
                      top: `${spot.yMm}mm`,
                      width: `${sheet.widthMm}mm`,
                      height: `${sheet.heightMm}mm`,
                    }}
                  >
                    <LabelFace label={label} jar={jars[i] as string} address={addressOf(jars[i] as string)} />
                  </div>,
                ]
              : [],
          )}
        </div>
      ))}
    </section>
  );
}
