/** Scales of the small drawn charts: a span of figures onto 0 to 100, round ticks, and paths in that square. */
export type Span = { readonly from: number; readonly to: number };
export type Point = { readonly x: number; readonly y: number };

/** Position on the span as a percentage, not cut off at the ends. */
export const percentOf = (span: Span, value: number): number =>
  span.to === span.from ? 0 : ((value - span.from) / (span.to - span.from)) * 100;

/** Round figures (1, 2 or 5 times a power of ten) inside the span, about `most` of them at the most. */
export function roundTicks({ from, to }: Span, most = 5): number[] {
  if (!(to > from)) return [from];
  const rough = (to - from) / most;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = ([1, 2, 5, 10].find((m) => m * power >= rough) ?? 10) * power;
  const ticks: number[] = [];
  for (let n = Math.ceil(from / step - 1e-9); n * step <= to + step * 1e-9; n++)
    ticks.push(Number((n * step).toPrecision(12)));
  return ticks;
}

const two = (n: number) => n.toFixed(2);

/** Path through points in a square of 100 by 100 with the origin at the bottom left. */
export const linePath = (points: readonly Point[], x: Span, y: Span): string =>
  points.map((p, i) => `${i ? 'L' : 'M'}${two(percentOf(x, p.x))} ${two(100 - percentOf(y, p.y))}`).join('');

/** Closed path of the area between a lower and an upper line. */
export const bandPath = (band: readonly { x: number; low: number; high: number }[], x: Span, y: Span): string => {
  const up = band.map((b) => ({ x: b.x, y: b.high }));
  const down = band.map((b) => ({ x: b.x, y: b.low })).reverse();
  return `${linePath([...up, ...down], x, y)}Z`;
};
