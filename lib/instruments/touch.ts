import { clearHeight, tellsDrainage, weepsOf } from '../wall/drainage';
import type { Batch } from '../wall/model';
import type { PanelSurvey, Survey } from '../wall/survey';
import { INSTRUMENT } from './instrument-list';
import { inWords, notNegative, type Place, type ReadingContext, readOff, shareOf } from './read-off';
import type { Reading } from './reading';
import { unitAt } from './unit-at';

const { resolution, error } = INSTRUMENT.probe;
/** The scale on a probe, for the depth of a raked joint and the height of a weep, mm. */
const SCALE = { resolution: 0.5, error: 1 } as const;

/** Of a head joint: the share of it that is full, tried over its height. Of every joint, and of the panel for all of them: how far the mortar lies back. */
export function readProbe({ part, panel, survey }: Place, context: ReadingContext): readonly Reading[] {
  const depth = { value: panel.panel.recess, unit: 'mm', ...SCALE } as const;
  const back = notNegative(readOff(context, 'Mortar lies back', depth));
  if (part.kind !== 'head') return [back];
  const filled = survey.wall.heads.find(({ joint }) => joint === part.id)?.filled ?? 100;
  const reading = readOff(context, 'Filled with mortar', { value: filled, unit: '%', resolution, error });
  // A joint cannot be fuller than full, nor emptier than empty.
  return [
    { ...reading, value: Math.min(100, Math.max(0, reading.value ?? 0)) },
    ...openHeights(part.id, panel, survey, context),
    back,
  ];
}

/** Of a weep: how much of its height a wire goes through. */
function openHeights(
  head: string,
  panel: PanelSurvey,
  survey: Survey,
  context: ReadingContext,
): readonly Reading[] {
  const { wall } = survey;
  if (!tellsDrainage(wall)) return [];
  return wall.flashings.flatMap((flashing) =>
    flashing.panel === panel.panel.id
      ? weepsOf(survey, panel, flashing)
          .filter(({ id }) => id === head)
          .map((weep) => {
            const open = { value: clearHeight(wall, flashing, weep), unit: 'mm', ...SCALE } as const;
            return notNegative(readOff(context, 'Open height', open));
          })
      : [],
  );
}

/** A back with this share of it bare in one patch sounds hollow (our proposal; the ear is no gauge). */
const HOLLOW_SHARE = 0.08;
/** One sound unit in so many sounds hollow all the same: a mat, a soft backing, an edge. */
const FALSE_ALARM = 0.04;

/** Taps a unit. The sound is a sign to look further, never a finding: some sound units ring hollow too. */
export function readTap({ part, panel }: Place, context: ReadingContext): readonly Reading[] {
  const placed = unitAt(part, panel);
  if (placed === null) return [];
  const { back } = placed;
  const bare = back !== null && back.largestBare > HOLLOW_SHARE * back.area;
  const alarm = back !== null && shareOf(`tap ${part.id}`, context.seed) < FALSE_ALARM;
  return [inWords(context, 'Sound', bare || alarm ? 'hollow: lift it and look' : 'solid')];
}

/** Parts of sand to one of cement and lime at which a nail tells a difference (our proposal: no limit, and no finding). */
const SOFT = 3.2;
const CRUMBLING = 4.2;

/** Drags a nail through the joint of a course, or of the courses of one mixing. */
export function readScratch({ part, survey }: Place, context: ReadingContext): readonly Reading[] {
  const batch = survey.wall.batches.find(({ id, fromCourse, toCourse }) =>
    part.kind === 'batch'
      ? id === part.id
      : fromCourse <= (part.course ?? 0) && (part.course ?? 0) <= toCourse,
  );
  return batch ? [inWords(context, 'Under a nail', wordsOf(batch))] : [];
}

function wordsOf({ sand, portland, lime }: Batch): string {
  const parts = sand / (portland + lime);
  if (parts <= SOFT) return 'hard: the nail only marks it';
  return parts <= CRUMBLING ? 'soft: grains of sand come off' : 'it crumbles: sand runs out';
}
