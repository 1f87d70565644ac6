import { isWeep } from '../wall/drainage';
import type { Unit } from '../wall/model';
import { headId, type PartId, unitOf } from '../wall/part-id';
import type { Part } from '../wall/parts';
import type { Placed, Survey } from '../wall/survey';
import type { SurveyedWall } from '../wall/surveyed';
import { CATALOGUE } from './catalogue';
import { isCloser } from './checks/bond/sliver-piece';
import type { CheckId, Finding } from './finding';
import type { LookAlikeId } from './look-alikes';

/** Above this air temperature a ticket looks late before it is, °C. */
const HOT = 25;
/** A ledge this far back looks like too much, mm. */
const NOTICEABLE_OVERHANG = 10;
/** A first bed this thick looks too thick, mm: half as much again as a common one. */
const NOTICEABLE_BED = 15;

/** What look-alikes are taken for; what lies on a face is most of all taken for a unit that stands out. */
const TAKEN_FOR: readonly CheckId[] = [
  'stale-mortar',
  'overhang-too-far',
  'weak-angle',
  'raked-thin-veneer',
  'open-head',
  'sliver-piece',
  'thick-joint',
  'proud-unit',
];

/** Which acceptable thing at a part looks like the fault named there, if any; read from the wall alone. */
export function lookAlikeAt(survey: Survey, part: Part, fault: CheckId): LookAlikeId | null {
  const { wall } = survey;
  const panel = survey.panels.find((each) => each.panel.id === part.panel);
  const own = unitOf(part.id);
  const placed = own === null ? undefined : panel?.placed.find(({ unit }) => unit.id === own);
  if (fault === 'stale-mortar') {
    return wall.batches.some(({ id, air }) => id === part.id && air >= HOT) ? 'hot-day-mortar' : null;
  }
  if (fault === 'overhang-too-far') {
    const support = wall.supports.find(({ id }) => id === part.id) ?? placed?.support;
    return support && -support.front > NOTICEABLE_OVERHANG ? 'overhang-within-a-third' : null;
  }
  if (fault === 'no-lintel' || fault === 'weak-angle') {
    const overOpening =
      part.kind === 'opening' || part.kind === 'support' || placed?.support?.kind === 'lintel';
    return overOpening && panel?.supports.some(({ kind }) => kind === 'lintel') ? 'hidden-angle' : null;
  }
  if (fault === 'raked-thin-veneer') return panel?.panel.profile === 'raked' ? 'raked-on-thick-veneer' : null;
  if (placed === undefined || panel === undefined) return null;
  if (fault === 'open-head') return nearWeep(survey, placed) ? 'weep-openings' : null;
  if (fault === 'sliver-piece')
    return placed.unit.kind !== 'stretcher' && isCloser(placed, panel) ? 'closers-at-reveal' : null;
  if (fault === 'thick-joint')
    return placed.unit.course === 1 && part.kind !== 'head' ? 'thick-first-bed' : onFace(placed.unit);
  return unitLookAlike(survey, placed.unit);
}

function isAtFault(findings: readonly Finding[], fault: CheckId, part: Part): boolean {
  const { ofPanel } = CATALOGUE[fault];
  return findings.some(({ check, parts, region }) =>
    ofPanel
      ? (check === fault || ofPanel.includes(check)) && region.panel === part.panel
      : check === fault && parts.includes(part.id),
  );
}

/** Every kind of look-alike on a wall, once each, where it is met first away from the fault itself, and what it may be taken for. */
export function lookAlikesOn(
  surveyed: SurveyedWall,
  findings: readonly Finding[],
): readonly { readonly lookAlike: LookAlikeId; readonly part: PartId; readonly fault: CheckId }[] {
  const found = new Map<LookAlikeId, { readonly part: PartId; readonly fault: CheckId }>();
  for (const fault of TAKEN_FOR) {
    for (const part of surveyed.parts.values()) {
      const lookAlike = lookAlikeAt(surveyed, part, fault);
      if (lookAlike === null || found.has(lookAlike) || isAtFault(findings, fault, part)) continue;
      // Every wall has a first bed: only a thick one looks wrong.
      if (lookAlike === 'thick-first-bed' && (part.kind !== 'bed' || part.height < NOTICEABLE_BED)) continue;
      found.set(lookAlike, { part: part.id, fault });
    }
  }
  return [...found].map(([lookAlike, where]) => ({ lookAlike, ...where }));
}

function nearWeep(survey: Survey, placed: Placed): boolean {
  const open = new Set(survey.wall.heads.map(({ joint }) => joint));
  const heads = [placed.left, placed].flatMap((left) =>
    left?.right ? [{ left, right: left.right, id: headId(left.unit.id, left.right.unit.position) }] : [],
  );
  return heads.some(({ left, right, id }) => open.has(id) && isWeep(survey, left, right));
}

function unitLookAlike({ wall }: Survey, unit: Unit): LookAlikeId | null {
  if (wall.projections.some(({ units }) => units.includes(unit.id))) return 'projecting-pattern';
  if (unit.condition === 'hairline') return 'hairline-cracks';
  if (unit.condition === 'bloom') return 'efflorescence';
  const lies = onFace(unit);
  if (lies !== null) return lies;
  if (unit.texture === 'rock-face') return 'textured-units';
  return unit.texture === 'rough' ? 'handmade-size-range' : null;
}

/** What lies on a face or is off it, and makes the joint beside it look wider than it is. */
function onFace({ condition }: Unit): LookAlikeId | null {
  if (condition === 'chip') return 'chipped-corners';
  return condition === 'smear' ? 'mortar-smears' : null;
}
