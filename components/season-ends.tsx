import type { PlainDate } from '#lib/units/plain-date.ts';
import { fruitColour } from './fruit-colour.ts';
import { QuantileDots } from './quantile-dots.tsx';
import styles from './season-ends.module.css';

export type SeasonEndsProps = {
  ends: readonly { id: string; sentence: string; foodId: string; days: readonly (PlainDate | null)[]; to: PlainDate }[];
  from: PlainDate;
};

/** When exactly the lines that run out oftenest are gone: twenty seasons as twenty dots. */
export function SeasonEnds({ ends, from }: SeasonEndsProps) {
  if (ends.length === 0) return null;
  return (
    <div className={styles.ends}>
      {ends.map((e) => (
        <QuantileDots
          key={e.id}
          sentence={e.sentence}
          days={e.days}
          from={from}
          to={e.to}
          colour={fruitColour(e.foodId)}
        />
      ))}
    </div>
  );
}
