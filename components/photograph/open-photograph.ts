import type { Picture } from '../../lib/photo/picture';

/** A photograph in memory: its pixels for the worker, a canvas for the loupe, an address for the page. Nothing of it is kept or sent. */
export interface Photograph {
  readonly picture: Picture;
  readonly canvas: HTMLCanvasElement;
  readonly url: string;
}

/** Some phones draw no larger canvas. */
const LONGEST = 4096;

/** Reads a picture upright and at most 4096 pixels long. Rejects where the browser cannot read it. */
export async function openPhotograph(file: Blob): Promise<Photograph> {
  const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
  const by = Math.min(1, LONGEST / Math.max(bitmap.width, bitmap.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(bitmap.width * by);
  canvas.height = Math.round(bitmap.height * by);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (context === null) throw new Error('no canvas');
  context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  const { width, height, data } = context.getImageData(0, 0, canvas.width, canvas.height);
  const shown = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', 0.9));
  if (shown === null) throw new Error('no picture');
  return { picture: { width, height, data }, canvas, url: URL.createObjectURL(shown) };
}
