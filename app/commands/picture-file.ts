import { readFileSync, statSync } from 'node:fs';
import jpeg from 'jpeg-js';
import { PNG } from 'pngjs';
import { PhotoError } from '../../lib/photo/photo-error';
import type { Picture } from '../../lib/photo/picture';
import { orientationOf, upright } from './upright';

const MOST_BYTES = 100_000_000;
const MOST_MEGAPIXELS = 60;
const PNG_START = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
const JPEG_START = Buffer.from([0xff, 0xd8, 0xff]);
/** Where a PNG says its width and height. */
const PNG_SIZE = 16;

/** Reads a PNG or a JPEG, upright as a viewer shows it. Throws a PhotoError where the file is none, is broken or is too large. */
export function readPicture(file: string): Picture {
  const bytes = bytesOf(file);
  const isPng = bytes.subarray(0, PNG_START.length).equals(PNG_START);
  if (!isPng && !bytes.subarray(0, JPEG_START.length).equals(JPEG_START))
    throw new PhotoError(`the file "${file}" is neither a PNG nor a JPEG`);
  if (isPng && bytes.length >= PNG_SIZE + 8)
    refuseHuge(file, bytes.readUInt32BE(PNG_SIZE), bytes.readUInt32BE(PNG_SIZE + 4));
  try {
    if (isPng) return PNG.sync.read(bytes);
    const read = jpeg.decode(bytes, {
      useTArray: true,
      maxResolutionInMP: MOST_MEGAPIXELS,
      maxMemoryUsageInMB: 4096,
      tolerantDecoding: false,
    });
    return upright(read, orientationOf(bytes));
  } catch (error) {
    if (error instanceof Error && /maxResolutionInMP/.test(error.message)) refuseHuge(file, Infinity, 1);
    throw new PhotoError(`the file "${file}" is broken: it cannot be read as a ${isPng ? 'PNG' : 'JPEG'}`);
  }
}

function bytesOf(file: string): Buffer {
  try {
    if (statSync(file).size > MOST_BYTES) throw new PhotoError(`the file "${file}" is larger than 100 MB`);
    return readFileSync(file);
  } catch (error) {
    if (error instanceof PhotoError) throw error;
    throw new PhotoError(`the file "${file}" cannot be read`);
  }
}

function refuseHuge(file: string, width: number, height: number): void {
  if (width * height > MOST_MEGAPIXELS * 1e6)
    throw new PhotoError(`the file "${file}" has more than ${MOST_MEGAPIXELS} million pixels`);
}
