import { encode } from 'uqr';

export type QrCodeProps = { text: string; sizeMm: number };

/** Quiet zone of four modules, as ISO/IEC 18004 asks. */
const QUIET = 4;

/** A QR code as one black path, so that a printer keeps its edges. Error correction M. */
export function QrCode({ text, sizeMm }: QrCodeProps) {
  const { data, size } = encode(text, { ecc: 'M', border: QUIET });
  const path = data.flatMap((row, y) => row.flatMap((on, x) => (on ? [`M${x} ${y}h1v1h-1z`] : []))).join('');
  return (
    <svg
      viewBox={`0 0 ${size} ${size}`}
      width={`${sizeMm}mm`}
      height={`${sizeMm}mm`}
      shapeRendering="crispEdges"
      role="img"
      aria-label={`QR code: ${text}`}
      className="keeps-colour"
    >
      <rect width={size} height={size} fill="#fff" />
      <path d={path} fill="#000" />
    </svg>
  );
}
