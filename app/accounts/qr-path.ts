import { encode } from 'uqr';
import type { QrPath } from '../../components/desk/qr-code';

/** A text as a QR code that stays readable with a seventh of it dirty or torn; frame of four squares. */
export function qrPath(text: string): QrPath {
  const { data, size } = encode(text, { ecc: 'M', border: 4 });
  const path = data.flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1z`] : [])));
  return { size, path: path.join('') };
}
