import type { Paint } from './shape';

/** `share` of the way from one colour to another, both '#rrggbb'. */
export function mix(from: string, to: string, share: number): string {
  const part = (index: number) => {
    const a = Number.parseInt(from.slice(1 + 2 * index, 3 + 2 * index), 16);
    const b = Number.parseInt(to.slice(1 + 2 * index, 3 + 2 * index), 16);
    return Math.round(a + (b - a) * share)
      .toString(16)
      .padStart(2, '0');
  };
  return `#${part(0)}${part(1)}${part(2)}`;
}

export function lighter(colour: string, share: number): string {
  return mix(colour, '#fff3e0', share);
}

export function darker(colour: string, share: number): string {
  return mix(colour, '#1c100c', share);
}

/** Colours of the page by day, for a drawing that stands alone. On the site the page's own tokens are used. */
export const BY_DAY: Readonly<Record<string, string>> = {
  '--paper': '#f4f0e8',
  '--raised': '#fbf9f4',
  '--ink': '#22272b',
  '--slate': '#59646b',
  '--line': '#cfc7b8',
  '--chalk': '#2a5c8f',
  '--moss': '#4f6b3a',
  '--ochre': '#b57a12',
  '--clay': '#a4432a',
  '--sky': '#dfe6e8',
  '--air': '#eef1ee',
};

export const STEEL: Paint = '#6d7880';
export const CONCRETE: Paint = '#bdb9b0';
export const WOOD: Paint = '#c79f6a';
export const EARTH: Paint = '#8d7a63';
export const SLOT: Paint = '#1d1715';

/** Eight shades of one firing of red brick, the commonest first, a flashed dark and a light one last. */
export const RED_BRICK = [
  '#a4503a',
  '#9a4733',
  '#ae5a41',
  '#934031',
  '#a34d3d',
  '#b66547',
  '#81392f',
  '#ab573f',
] as const;
/** Mortar beside it, where no wall says how dark. */
export const MORTAR: Paint = '#d3ccbd';
