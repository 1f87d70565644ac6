import type { Corners } from './homography';
import type { Frame } from './lens';
import type { Spot } from './matrix';

type Ray = readonly [number, number, number];

interface Sides {
  /** Across and down the rectangle, as far as the corners alone tell. */
  readonly across: Ray;
  readonly down: Ray;
}

/**
 * Width over height of a rectangle seen in a picture whose focal length (px) is known
 * (Z. Zhang, L. He, Whiteboard scanning and image enhancement, 2007).
 */
export function aspectOf(frame: Frame, corners: Corners, focal: number): number {
  const { across, down } = sidesOf(frame, corners);
  return Math.sqrt(lengthSq(across, focal) / lengthSq(down, focal));
}

/** The focal length (px) that makes the four corners a rectangle; not a number where the picture is too square on to tell. */
export function focalOf(frame: Frame, corners: Corners): number {
  const { across, down } = sidesOf(frame, corners);
  return Math.sqrt(-(across[0] * down[0] + across[1] * down[1]) / (across[2] * down[2]));
}

function sidesOf({ width, height }: Frame, corners: Corners): Sides {
  const ray = ({ x, y }: Spot): Ray => [x - width / 2, y - height / 2, 1];
  const [topLeft, topRight] = [ray(corners[0]), ray(corners[1])];
  const [bottomRight, bottomLeft] = [ray(corners[2]), ray(corners[3])];
  const diagonal = cross(topLeft, bottomRight);
  const alongTop = dot(diagonal, bottomLeft) / dot(cross(topRight, bottomRight), bottomLeft);
  const alongLeft = dot(diagonal, topRight) / dot(cross(bottomLeft, bottomRight), topRight);
  return { across: between(topLeft, topRight, alongTop), down: between(topLeft, bottomLeft, alongLeft) };
}

function between(from: Ray, to: Ray, by: number): Ray {
  return [by * to[0] - from[0], by * to[1] - from[1], by * to[2] - from[2]];
}

function lengthSq([x, y, z]: Ray, focal: number): number {
  return (x * x + y * y) / (focal * focal) + z * z;
}

function cross([a, b, c]: Ray, [d, e, f]: Ray): Ray {
  return [b * f - c * e, c * d - a * f, a * e - b * d];
}

function dot([a, b, c]: Ray, [d, e, f]: Ray): number {
  return a * d + b * e + c * f;
}
