/** Hand-drawn pictures of words that no generated wall shows: 600 by 300, y down, as on paper. Not to scale. */

export const SHEET = { width: 600, height: 300 };

const BRICKS = ['#a4503a', '#9a4733', '#ae5a41', '#934031', '#a34d3d', '#b66547'] as const;
export const MORTAR = '#d9d2c4';
export const WOOD = '#c79f6a';
export const CONCRETE = '#bdb9b0';
export const STEEL = '#59646b';
export const CHALK = '#2a5c8f';
const INK = '#22272b';

export function box(x: number, y: number, width: number, height: number, fill: string, rest = ''): string {
  return `<rect x="${x}" y="${y}" width="${width}" height="${height}" fill="${fill}" ${rest}/>`;
}

/** One unit; `place` picks its shade, so that neighbours differ. */
export function unit(x: number, y: number, width: number, height: number, place = 0): string {
  return box(x, y, width, height, BRICKS[place % BRICKS.length] ?? BRICKS[0], 'rx="2"');
}

export function path(d: string, pen: string, width = 3, rest = 'fill="none"'): string {
  return `<path d="${d}" stroke="${pen}" stroke-width="${width}" stroke-linecap="round" stroke-linejoin="round" ${rest}/>`;
}

export function filled(d: string, fill: string): string {
  return `<path d="${d}" fill="${fill}"/>`;
}

/** What the picture is about: outlined in chalk blue. */
export function ringed(x: number, y: number, width: number, height: number): string {
  return box(x, y, width, height, 'none', `stroke="${CHALK}" stroke-width="4" rx="6"`);
}

/** A word beside the thing, with a line that ends on it. */
export function label(words: string, x: number, y: number, to: readonly [number, number]): string {
  const end = x < to[0] ? x + words.length * 9.5 + 6 : x - 6;
  return [
    path(`M${end} ${y - 6} L${to[0]} ${to[1]}`, CHALK, 2),
    `<circle cx="${to[0]}" cy="${to[1]}" r="4" fill="${CHALK}"/>`,
    `<text x="${x}" y="${y}" fill="${INK}" font-family="system-ui, sans-serif" font-size="18" font-weight="600">${words}</text>`,
  ].join('');
}

const LENGTH = 86;
const HEIGHT = 34;
const JOINT = 8;

/** Where unit `place` of `course` (0 at the bottom) of the small wall stands on the sheet. */
export function placeInWall(course: number, place: number) {
  const shift = course % 2 === 0 ? 0 : -(LENGTH + JOINT) / 2;
  return {
    x: 20 + shift + place * (LENGTH + JOINT),
    y: 250 - course * (HEIGHT + JOINT),
    width: LENGTH,
    height: HEIGHT,
  };
}

/** Courses in running bond, cut off at both sides of the sheet. */
export function smallWall(courses = 5): string {
  const units = Array.from({ length: courses }, (_, course) =>
    Array.from({ length: 8 }, (_, place) => {
      const at = placeInWall(course, place - 1);
      return unit(at.x, at.y, at.width, at.height, course * 5 + place * 3);
    }).join(''),
  ).join('');
  const top = 250 - (courses - 1) * (HEIGHT + JOINT) - JOINT;
  return box(0, top, SHEET.width, 300 - top, MORTAR) + units + box(0, 292, SHEET.width, 8, '#8d7a63');
}

/** A column of units seen cut through, from `bottom` upward. */
export function column(x: number, bottom: number, courses: number, width = 56): string {
  return Array.from({ length: courses }, (_, course) => {
    const y = bottom - (course + 1) * HEIGHT - course * JOINT;
    const bed = course === 0 ? '' : box(x + 2, y + HEIGHT, width - 4, JOINT, MORTAR);
    return bed + unit(x, y, width, HEIGHT, course * 2) + hatch(x, y, width, HEIGHT);
  }).join('');
}

/** The slanting lines of a thing cut through. */
function hatch(x: number, y: number, width: number, height: number): string {
  const lines: string[] = [];
  for (let at = 8; at < width; at += 14) {
    lines.push(`M${x + at} ${y + height - 3} L${Math.min(x + at + 12, x + width - 2)} ${y + 3}`);
  }
  return path(lines.join(' '), '#6f2e20', 1.5);
}

export function sheet(title: string, drawn: readonly string[]): string {
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 600 300" width="600" height="300" role="img" aria-label="${title}">` +
    `${box(0, 0, 600, 300, '#f4f0e8')}${drawn.join('')}</svg>`
  );
}
