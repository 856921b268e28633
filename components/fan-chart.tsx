'use client';
import dynamic from 'next/dynamic';
import { shortDate } from '#lib/units/plain-date.ts';
import { DataTable } from './data-table.tsx';
import styles from './fan-chart.module.css';
import type { FanChartProps } from './fan-chart-data.ts';

/** The drawing library comes after the page: the sentence and the table are there without it. */
const FanChartDrawing = dynamic(() => import('./fan-chart-drawing.tsx').then((m) => m.FanChartDrawing), {
  ssr: false,
  loading: () => <div className={styles.room} />,
});

/** Week by week: half of the years lie in the dark band, eight in ten in the light one, a few possible years as thin lines. */
export function FanChart(props: FanChartProps) {
  const { title, sentence, unit, weeks, capacity, samples } = props;
  return (
    <figure className={styles.fan}>
      <figcaption>
        <b>{title}.</b> {sentence}
        <span className={styles.key}>
          Dark: 5 seasons in 10. Light: 8 seasons in 10. Line: half above, half below.
          {samples?.length ? ` Thin lines: ${samples.length} possible years.` : ''}
        </span>
      </figcaption>
      <FanChartDrawing {...props} />
      <details className={styles.table}>
        <summary>The same as a table</summary>
        <DataTable
          caption={`${title}, ${unit} by week${capacity ? `; ${capacity.label}` : ''}`}
          columns={[
            { key: 'week', label: 'Week of' },
            { key: 'middle', label: 'Half above, half below', numeric: true },
            { key: 'five', label: '5 seasons in 10', numeric: true },
            { key: 'eight', label: '8 seasons in 10', numeric: true },
          ]}
          rows={weeks.map((w) => ({
            id: w.week,
            cells: {
              week: `${shortDate(w.week).slice(4)} ${w.week.slice(0, 4)}`,
              middle: Math.round(w.p50),
              five: `${Math.round(w.p25)} to ${Math.round(w.p75)}`,
              eight: `${Math.round(w.p10)} to ${Math.round(w.p90)}`,
            },
          }))}
        />
      </details>
    </figure>
  );
}
