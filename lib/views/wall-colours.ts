import { lighter, mix, RED_BRICK } from '../drawing/colours';
import type { FillColours } from '../drawing/shared-fills';
import type { Wall } from '../wall/model';

/** What one firing brings out of the kiln: eight shades, the commonest first, a flashed dark and a light one last. */
const LOTS: readonly (readonly string[])[] = [
  RED_BRICK,
  ['#8e5c44', '#80503c', '#986650', '#724738', '#885842', '#a3724f', '#633d33', '#935f4a'],
  ['#c29a6e', '#b88e62', '#cca779', '#ae8459', '#be9469', '#d1b083', '#a37b53', '#c49f76'],
  ['#7d4a43', '#703f3b', '#895549', '#643937', '#784743', '#945f50', '#583333', '#80504a'],
];

/** Squared stone: a grey limestone and a warm sandstone, each from light to dark beds. */
const STONES: readonly (readonly string[])[] = [
  ['#b3a27f', '#a6946f', '#c2b291', '#94846a', '#aa9c86', '#cdbd99', '#857a68', '#b9a88a'],
  ['#a6a398', '#98968d', '#b5b2a5', '#8b8a85', '#a19b90', '#c0bbab', '#7d7e7c', '#aea795'],
];

/** Which stone goes with each lot of brick, and how much paler it was cut: warm beside red, grey beside brown, buff and dark brick. */
const BESIDE_LOTS: readonly (readonly [stone: number, paler: number])[] = [
  [0, 0.38],
  [1, 0.4],
  [1, 0.22],
  [1, 0.5],
];

/** Mortar far from the units' colour: lime-pale, or dark on buff units. */
const FAR = ['#d9d2c4', '#d6cfc1', '#8d8880', '#cfc8bb'];
/** How far the mortar goes towards the units' colour, by tone 0 to 3. */
const TOWARDS = [0, 0.34, 0.6, 0.8];

/** What the shared fills of a drawing of this wall are made of. */
export function wallColours(wall: Wall): FillColours {
  return { units: unitColours(wall), quoins: quoinColours(wall), mortar: mortarColour(wall) };
}

export function unitColours(wall: Wall): readonly string[] {
  if (wall.finish === 'squared stone') return stonesOf(wall.tone.lot % 2);
  return LOTS[wall.tone.lot] ?? (LOTS[0] as readonly string[]);
}

/** The stone of the quoins: paler than the squared stone of its wall; beside brick the stone that it stands out from. */
export function quoinColours({ finish, tone }: Wall): readonly string[] {
  if (finish === 'squared stone') return stonesOf(tone.lot % 2).map((colour) => lighter(colour, 0.4));
  const [stone, paler] = BESIDE_LOTS[tone.lot] ?? [0, 0];
  return stonesOf(stone).map((colour) => mix(colour, '#f2ead8', paler));
}

function stonesOf(index: number): readonly string[] {
  return STONES[index] ?? (STONES[0] as readonly string[]);
}

function mortarColour(wall: Wall): string {
  const units = unitColours(wall);
  const middle = mix(units[0] ?? '#a4503a', units[3] ?? '#934031', 0.5);
  return mix(FAR[wall.tone.lot] ?? '#d9d2c4', mix(middle, '#cdbfae', 0.16), TOWARDS[wall.tone.mortar] ?? 0);
}
