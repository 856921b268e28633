import { bothTemperatures, kilograms, poundsText } from '#lib/units/format.ts';
import type { Celsius } from '#lib/units/quantity.ts';
import styles from './both-units.module.css';

export type BothUnitsProps = {
  /** Mass in grams. */
  grams: number;
  /** The household's own unit comes first and large. */
  first?: 'kg' | 'lb';
  size?: 'normal' | 'large';
};

/** A mass in kilograms and pounds together, so that the eye catches a scale left in the other unit. */
export function BothUnits({ grams, first = 'kg', size = 'normal' }: BothUnitsProps) {
  const texts = first === 'kg' ? [kilograms(grams), poundsText(grams)] : [poundsText(grams), kilograms(grams)];
  return (
    <span className={size === 'large' ? styles.large : styles.normal}>
      <b className={styles.first}>{texts[0]}</b> <span className={styles.second}>{texts[1]}</span>
    </span>
  );
}

/** A temperature in both scales: "103.0 °C · 217.5 °F". */
export const BothTemperatures = ({ celsius }: { celsius: Celsius }) => (
  <span className={styles.normal}>{bothTemperatures(celsius)}</span>
);
