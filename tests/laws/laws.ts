import type { CheckId, Finding } from '../../lib/inspect/finding';
import { inspect } from '../../lib/inspect/inspect';
import { isOnGrid } from '../../lib/units';
import { mirrored } from '../../lib/wall/mirror';
import type { Wall } from '../../lib/wall/model';
import { printWall } from '../../lib/wall/print';
import { parseWall } from '../../lib/wall/schema';
import { badWork } from './bonded';
import { doubtsOf } from './doubt';
import { guessShare, isHardToGuess } from './guess-share';
import { type LawWall, layLawWall } from './law-walls';

/** Faults that cut a unit shorter or longer: one beside a corner is no whole unit, and a sliver takes the lap from the courses over and under it. */
const CUTS_UNITS: readonly CheckId[] = ['sliver-piece', 'thick-joint', 'thin-joint'];

/** Every law that a wall breaks, each as one line that says which wall and how. Empty when all hold. */
export function brokenLaws(law: LawWall): readonly string[] {
  const where = `${law.fault ?? 'sound'} ${law.kind} ${law.masonry} ${law.rules} severity ${law.severity} seed ${law.seed}`;
  const broken: string[] = [];
  const say = (what: string) => broken.push(`${where}: ${what}`);
  const wall = layLawWall(law);
  const text = printWall(wall);

  if (JSON.stringify(wall) !== JSON.stringify(layLawWall(law))) say('laid twice, it is two walls');
  try {
    if (printWall(parseWall(JSON.parse(text))) !== text) say('printed and read, it is another wall');
  } catch (error) {
    say(`is refused: ${error instanceof Error ? error.message : error}`);
  }
  const off = wall.units.find(({ x, y, length, height, fall, twist, lean, set }) =>
    [x, y, length, height, fall, twist, lean, set].some((value) => !isOnGrid(value)),
  );
  if (off !== undefined) say(`${off.id} is off the grid`);

  const findings = inspect(wall, law.rules);
  const names = [...new Set(findings.map(({ check }) => check))].join(', ');
  if (names !== (law.fault ?? '')) say(`has ${names || 'no finding'} instead of ${law.fault ?? 'none'}`);
  const [doubt] = doubtsOf(wall, law.rules);
  if (doubt !== undefined)
    say(`${doubt.check} at ${doubt.at} is doubtful: ${doubt.measured} against ${doubt.bound}`);
  const faces = wall.panels.map((panel) => ({
    panel: panel.id,
    x: 0,
    y: 0,
    width: panel.length,
    height: panel.courses * wall.gauge,
  }));
  const share = guessShare(findings, faces);
  if (!isHardToGuess(share)) say(`a blind mark hits ${Math.round(share * 100)} % of the face`);
  if (law.fault === null || !CUTS_UNITS.includes(law.fault)) for (const each of badWork(wall)) say(each);
  const turned = mirrorBreak(wall, findings, law);
  if (turned !== null) say(turned);
  return broken;
}

/** The mirrored wall has the mirrored findings: the same checks and measures, boxes turned round. */
function mirrorBreak(wall: Wall, findings: readonly Finding[], law: LawWall): string | null {
  const image = mirrored(wall);
  if (JSON.stringify(mirrored(image)) !== JSON.stringify(wall)) return 'mirrored twice, it is another wall';
  const length = new Map<string, number>(wall.panels.map((panel) => [panel.id, panel.length]));
  const sign = ({ check, measured, region }: Finding, x: number) =>
    [check, region.panel, ...[measured, x, region.y, region.width].map(figure)].join(' ');
  const here = findings.map((each) =>
    sign(each, (length.get(each.region.panel) ?? 0) - each.region.x - each.region.width),
  );
  const there = inspect(image, law.rules).map((each) => sign(each, each.region.x));
  const missing = here.find((each) => !there.includes(each));
  if (here.length !== there.length || missing !== undefined) {
    return `mirrored, ${missing ?? 'a finding'} is not there but ${there.join(' | ')}`;
  }
  return null;
}

/** To a millionth; nothing less than nothing, and not less. */
function figure(value: number): string {
  return (Math.round(value * 1e6) / 1e6 + 0).toFixed(6);
}
