import type { Limit } from '../limit';
import { atLeast, atMost, exactly, PRESENT, under } from '../rows';
import { NBC } from './nbc';

const FLASHING = 'Flashing, thickness of';

/** Water and weather: shown on the limits page, asked for by no check yet. */
export const CANADA_WATER: readonly Limit[] = [
  ...under(
    { ...NBC, topic: 'water', clause: '9.20.6.4.(2)' },
    atLeast('air-space', 'Clear air space behind veneer on a wood frame', 25),
  ),
  ...under(
    { ...NBC, topic: 'water', clause: '9.20.13.8.(1)' },
    atMost('weep-spacing', 'Weep holes, spacing along the wall', 800, 'mm', {
      note: 'At the foot of the air space and over lintels that are flashed.',
    }),
  ),
  ...under(
    { ...NBC, topic: 'water', clause: '9.20.13.6' },
    atLeast('flashing-past-face', 'Flashing under weep holes, past the face of what is below', 5),
    atLeast('flashing-upstand', 'Flashing under weep holes, up the framed wall', 150, 'mm', {
      note: 'Behind the sheathing membrane.',
    }),
  ),
  ...under(
    { ...NBC, topic: 'water', clause: '9.20.13.5' },
    atLeast('flashing-into-wythe', 'Flashing under weep holes, into a masonry backing', 25),
  ),
  ...under(
    { ...NBC, topic: 'water', clause: '9.20.13.7' },
    exactly('flashing-joints', 'Joints of flashing, watertight', PRESENT, 'there or not'),
  ),
  ...under(
    { ...NBC, topic: 'water', clause: '9.20.13.3' },
    atMost(
      'head-without-flashing',
      'Opening without head flashing: from frame to eave, over the width of the eave overhang',
      0.25,
      'times',
    ),
  ),
  ...under(
    { ...NBC, topic: 'water', clause: '9.20.13.12' },
    atLeast('sill-drip', 'Sill without flashing: drip, from the face of the wall', 25),
  ),
  ...under(
    { ...NBC, topic: 'water', clause: '9.20.13.10' },
    exactly('cavity-clear', 'Cavity clear of mortar that would bridge it', PRESENT, 'there or not'),
  ),
  ...under(
    { ...NBC, topic: 'water', clause: 'Table 9.20.13.1' },
    atLeast('flashing-steel', `${FLASHING} galvanized steel`, 0.33),
    atLeast('flashing-copper', `${FLASHING} copper`, 0.46),
    atLeast('flashing-zinc', `${FLASHING} zinc`, 0.46),
    atLeast('flashing-lead', `${FLASHING} lead sheet`, 1.73),
    atLeast('flashing-aluminium', `${FLASHING} aluminium, where it shows`, 0.48),
    atLeast('flashing-polyethylene', `${FLASHING} polyethylene, where it is covered`, 0.5),
    atLeast('flashing-laminated', `${FLASHING} aluminium or copper on felt, where it is covered`, 0.05),
  ),
  ...under(
    { ...NBC, topic: 'weather', clause: '9.20.14.1' },
    atLeast('laying-temperature', 'Mortar and masonry while it is laid, temperature', 5, '°C', {
      note: 'No frozen materials.',
    }),
    atLeast('kept-warm', 'Masonry kept at that temperature after laying', 48, 'hours'),
  ),
  ...under(
    { ...NBC, topic: 'weather', clause: '9.20.14.2' },
    exactly('top-covered', 'Waterproof cover on unfinished tops when work stops', PRESENT, 'there or not'),
  ),
];
