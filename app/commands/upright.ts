import type { Picture } from '../../lib/photo/picture';

/** The tag by which a camera says how it was held (Exif, as TIFF 6.0 numbers it). */
const ORIENTATION = 0x0112;
const EXIF = Buffer.from('Exif\0\0', 'latin1');

/** How the camera was held: 1 upright, 3 on its head, 6 and 8 on its sides; 1 where the file does not say. */
export function orientationOf(bytes: Buffer): number {
  let at = 2;
  while (at + 4 <= bytes.length && bytes[at] === 0xff) {
    const length = bytes.readUInt16BE(at + 2);
    if (bytes[at + 1] === 0xe1 && bytes.subarray(at + 4, at + 4 + EXIF.length).equals(EXIF))
      return inExif(bytes.subarray(at + 4 + EXIF.length, at + 2 + length));
    if (bytes[at + 1] === 0xda || length < 2) return 1;
    at += 2 + length;
  }
  return 1;
}

function inExif(tiff: Buffer): number {
  if (tiff.length < 8) return 1;
  const isLittle = tiff.toString('latin1', 0, 2) === 'II';
  const short = (at: number) => (isLittle ? tiff.readUInt16LE(at) : tiff.readUInt16BE(at));
  const list = isLittle ? tiff.readUInt32LE(4) : tiff.readUInt32BE(4);
  if (list + 2 > tiff.length) return 1;
  const count = short(list);
  for (let index = 0; index < count; index++) {
    const entry = list + 2 + 12 * index;
    if (entry + 12 > tiff.length) return 1;
    if (short(entry) === ORIENTATION) return short(entry + 8);
  }
  return 1;
}

/** The picture as a viewer shows it. Mirrored pictures, which no camera makes, stay as they are. */
export function upright(picture: Picture, orientation: number): Picture {
  const { width, height, data } = picture;
  if (orientation !== 3 && orientation !== 6 && orientation !== 8) return picture;
  const isOnSide = orientation !== 3;
  const [across, down] = isOnSide ? [height, width] : [width, height];
  const from = new Uint32Array(data.buffer, data.byteOffset, width * height);
  const to = new Uint32Array(width * height);
  for (let y = 0; y < down; y++) {
    for (let x = 0; x < across; x++) {
      const [u, v] =
        orientation === 3
          ? [width - 1 - x, height - 1 - y]
          : orientation === 6
            ? [y, height - 1 - x]
            : [width - 1 - y, x];
      to[y * across + x] = from[v * width + u] ?? 0;
    }
  }
  return { width: across, height: down, data: new Uint8Array(to.buffer) };
}
