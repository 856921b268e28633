'use client';
import {
  Area,
  CartesianGrid,
  ComposedChart,
  Line,
  ReferenceLine,
  ResponsiveContainer,
  Tooltip,
  XAxis,
  YAxis,
} from 'recharts';
import { type PlainDate, shortDate } from '#lib/units/plain-date.ts';
import styles from './fan-chart.module.css';
import { type FanChartProps, type FanRow, fanRows, monthShort, monthTicks } from './fan-chart-data.ts';
import { roundTicks } from './plot-scale.ts';

const still = { isAnimationActive: false, dot: false, activeDot: false, legendType: 'none' } as const;

/** The drawn half of FanChart (its own file so that it can be fetched after the page). */
export function FanChartDrawing({ weeks, samples = [], capacity, unit, colour = '#5871b3' }: FanChartProps) {
  const top = Math.max(...weeks.map((w) => w.p90), ...samples.flat(), (capacity?.value ?? 0) * 1.06);
  return (
    <div className={styles.room}>
      <ResponsiveContainer width="100%" height="100%">
        <ComposedChart data={fanRows(weeks, samples)} margin={{ top: 8, right: 8, bottom: 0, left: 0 }}>
          <CartesianGrid horizontal={false} stroke="var(--hairline)" />
          <XAxis
            dataKey="week"
            ticks={monthTicks(weeks)}
            tickFormatter={monthShort}
            interval="preserveStart"
            tick={{ fill: 'var(--ink)', fontSize: 15 }}
            stroke="var(--edge)"
          />
          <YAxis
            domain={[0, Math.ceil(top)]}
            ticks={roundTicks({ from: 0, to: top }, 5)}
            width={44}
            tick={{ fill: 'var(--ink)', fontSize: 15 }}
            stroke="var(--edge)"
          />
          <Tooltip content={<FanTooltip unit={unit} />} isAnimationActive={false} />
          <Area {...still} dataKey="eight" fill={colour} fillOpacity={0.28} stroke="none" />
          <Area {...still} dataKey="five" fill={colour} fillOpacity={0.5} stroke="none" />
          {samples.map((_, i) => (
            <Line {...still} key={i} dataKey={`year${i}`} stroke="var(--ink)" strokeOpacity={0.5} strokeWidth={1} />
          ))}
          <Line {...still} dataKey="middle" stroke="var(--ink)" strokeWidth={2.25} />
          {capacity ? (
            <ReferenceLine
              y={capacity.value}
              stroke="var(--refuse)"
              strokeDasharray="7 5"
              strokeWidth={2}
              label={{
                value: capacity.label,
                position: 'insideBottomLeft',
                fill: 'var(--refuse-ink)',
                fontSize: 15,
                fontWeight: 600,
              }}
            />
          ) : null}
        </ComposedChart>
      </ResponsiveContainer>
    </div>
  );
}

type TooltipProps = {
  active?: boolean;
  label?: string | number;
  payload?: readonly { payload?: FanRow }[];
  unit: string;
};

function FanTooltip({ active, label, payload, unit }: TooltipProps) {
  const row = payload?.[0]?.payload;
  if (!active || !row) return null;
  return (
    <div className={styles.tooltip}>
      <b>Week of {shortDate(String(label) as PlainDate).slice(4)}</b>
      <span>
        half above, half below: {Math.round(row.middle)} {unit}
      </span>
      <span>
        5 seasons in 10: {Math.round(row.five[0])} to {Math.round(row.five[1])}
      </span>
      <span>
        8 seasons in 10: {Math.round(row.eight[0])} to {Math.round(row.eight[1])}
      </span>
    </div>
  );
}
