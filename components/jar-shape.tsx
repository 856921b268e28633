export type JarShapeProps = {
  x: number;
  /** Top of the lid. */
  y: number;
  width: number;
  height: number;
  colour: string;
  planned?: boolean;
  /** On the paper label: how many stand at this place, one behind another. */
  text?: string;
};

/** One jar in its own outline: rounded glass, lid, paper label. Units are those of the picture around it. */
export function JarShape({ x, y, width, height, colour, planned = false, text }: JarShapeProps) {
  const lid = Math.min(14, height * 0.13);
  const inset = width * 0.04;
  const left = x + inset;
  const glass = width - 2 * inset;
  const radius = glass * 0.12;
  const body = { x: left, y: y + lid, width: glass, height: height - lid, rx: radius };
  const cap = { x: left + glass * 0.07, y, width: glass * 0.86, height: lid, rx: 2.5 };
  if (planned) {
    const dash = { fill: '#fff', stroke: colour, strokeWidth: 2.4, strokeDasharray: '7 5' };
    return (
      <g>
        <rect {...body} {...dash} />
        <rect {...cap} {...dash} />
      </g>
    );
  }
  const label = {
    x: left + glass * 0.12,
    y: y + lid + (height - lid) * 0.34,
    width: glass * 0.76,
    height: (height - lid) * 0.42,
  };
  return (
    <g>
      <rect {...body} fill={colour} />
      <rect
        x={left + glass * 0.06}
        y={y + lid + radius}
        width={glass * 0.055}
        height={Math.max(0, height - lid - 2.4 * radius)}
        rx={2}
        fill="#fff"
        fillOpacity={0.3}
      />
      <rect {...cap} fill="#cfc6b6" stroke="#9a8c75" strokeWidth={0.8} />
      <rect {...label} rx={2} fill="#fdfaf2" />
      {text ? (
        <text
          x={label.x + label.width / 2}
          y={label.y + label.height / 2}
          dominantBaseline="central"
          textAnchor="middle"
          fontSize={Math.min(24, label.height * 0.72)}
          fontFamily="var(--heading)"
          fontWeight={640}
          fill="#16244a"
        >
          {text}
        </text>
      ) : null}
    </g>
  );
}
