import { hasFields } from '../../lib/json/read-json';

/** The dark squares of a QR code as one path, one unit a square, and how many squares it is wide. */
export interface QrPath {
  readonly size: number;
  readonly path: string;
}

export function isQrPath(value: unknown): value is QrPath {
  return hasFields(value, { size: 'number', path: 'string' });
}

/** Always dark on white: phones read it badly the other way round. The white frame belongs to the code. */
export function QrCode({ qr, label }: { readonly qr: QrPath; readonly label: string }) {
  return (
    <svg
      role="img"
      aria-label={label}
      viewBox={`0 0 ${qr.size} ${qr.size}`}
      width="200"
      height="200"
      shapeRendering="crispEdges"
    >
      <rect width={qr.size} height={qr.size} fill="#fff" />
      <path d={qr.path} fill="#000" />
    </svg>
  );
}
