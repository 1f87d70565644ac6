import type { Plan } from '../../../lib/generate/plan';
import type { Wall } from '../../../lib/wall/model';

/** What one sees of a wall, or is told of it, without holding anything against a limit. */
export function traitsOf(wall: Wall, { lookAlikes, mirrored }: Plan): Readonly<Record<string, string>> {
  const backs = wall.units.flatMap(({ back }) => (back ? [back.length] : []));
  return {
    masonry: wall.masonry,
    finish: wall.finish,
    family: wall.family.name,
    bond: wall.bond,
    quoins: String(wall.units.some(({ kind }) => kind === 'quoin')),
    soldiers: String(wall.units.some(({ kind }) => kind === 'soldier')),
    profile: wall.panels.map(({ profile }) => profile).join(),
    storeys: String(wall.storeysAbove),
    mirrored: String(mirrored),
    'mortar tone': String(wall.tone.mortar),
    'colour lot': String(wall.tone.lot),
    'look-alikes': String(lookAlikes.length),
    batches: String(wall.batches.length),
    'a hot batch': String(wall.batches.some(({ air }) => air >= 25)),
    'strap thickness': String(wall.ties[0]?.thickness ?? 0),
    'heads listed': String(wall.heads.filter(({ filled }) => filled > 0).length > 3),
    'two ledges': String(wall.supports.filter(({ kind }) => kind === 'ledge').length > wall.panels.length),
    'pats on a back': String(
      backs.length > 0 && backs.reduce((sum, each) => sum + each, 0) / backs.length > 1.6,
    ),
    courses: String(wall.panels[0]?.courses),
  };
}
