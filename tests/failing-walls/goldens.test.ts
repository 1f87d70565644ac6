import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { Drawing } from '../../lib/drawing/shape';
import { svgFile } from '../../lib/drawing/svg-file';
import { layByCode } from '../../lib/engines/engines';
import { parseBrief } from '../../lib/generate/brief';
import { acted, lackingFor } from '../../lib/mechanisms/act';
import type { Mechanism } from '../../lib/mechanisms/mechanism';
import { MECHANISMS } from '../../lib/mechanisms/mechanisms';
import { failingShapes } from '../../lib/views/failing/failing-view';
import { movedWall } from '../../lib/views/failing/moved-wall';
import { faceOf } from '../../lib/views/unit-outline';
import { wallColours } from '../../lib/views/wall-colours';
import { WALL_KINDS } from '../../lib/wall/model';
import { surveyOf } from '../../lib/wall/survey';

const FOLDER = 'tests/failing-walls';

/** To accept a changed drawing, name its mechanism, and look at it before and after: GOLDEN=frost npx vitest run tests/failing-walls */
const ACCEPTED = process.env.GOLDEN?.split(',') ?? [];

/** Its main wall in outline, with all that has become of it: the front view without what a sound wall has too. */
function drawn(mechanism: Mechanism): string {
  const fitting = WALL_KINDS.flatMap((kind) =>
    (['ties', 'back-mortar'] as const).map((topic) =>
      surveyOf(layByCode(parseBrief({ topic, kind, difficulty: 2, rules: 'canada', seed: 3 })).wall),
    ),
  ).find((survey) => lackingFor(mechanism, survey) === null);
  if (fitting === undefined) throw new RangeError(`no wall of seed 3 for ${mechanism.name}`);
  const failing = acted(fitting, mechanism, mechanism.showsAfter + 20, 'winter', 3);
  const wall = movedWall(failing);
  // Expansion cracks the short return; everything else works on the longest panel.
  const byLength = [...wall.panels].sort((a, b) => b.length - a.length);
  const shown = mechanism.name === 'clay-expansion' ? byLength[1] : byLength[0];
  if (shown === undefined) throw new RangeError(`${mechanism.name}: no panel to show`);
  const rings = wall.units.filter((unit) => unit.panel === shown.id).map(faceOf);
  const top = Math.max(...rings.flat().map(([, y]) => y));
  const drawing: Drawing = {
    box: { x: -60, y: -60, width: shown.length + 120, height: top + 120 },
    shapes: [{ kind: 'area', rings, fill: '#c08a72' }, ...failingShapes(failing, shown.id)],
    labels: [],
    frames: [],
    spots: [],
  };
  return svgFile(drawing, wallColours(wall), 1200);
}

test.each(MECHANISMS.map((mechanism) => [mechanism.name, mechanism] as const))('%s', (name, mechanism) => {
  const file = join(FOLDER, `${name}.svg`);
  const now = drawn(mechanism);
  if (ACCEPTED.includes(name)) writeFileSync(file, now);
  const kept = readFileSync(file, 'utf8').split('\n');
  const lines = now.split('\n');
  const apart = lines.findIndex((line, index) => line !== kept[index]);
  expect([apart, lines[apart], lines.length]).toEqual([-1, undefined, kept.length]);
});

test('every drawing in the folder is that of a mechanism', () => {
  const kept = readdirSync(FOLDER).filter((name) => name.endsWith('.svg'));
  expect(kept.sort()).toEqual(MECHANISMS.map(({ name }) => `${name}.svg`).sort());
});
