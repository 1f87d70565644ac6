import type { FaceMarkChoice } from '../../../components/drills/build/face-marks-choice';
import { FACE_MARKS } from '../../inspect/face-marks';
import { formatBound } from '../../limits/format-bound';
import { namedLimitOf, ruleSetTitle } from '../../limits/limits';
import type { LengthSystem } from '../../units';
import { CONDITIONS } from '../../wall/model';

/** The marks there are, the gravest last. Only chips have a published figure. */
export function faceMarkChoices(system: LengthSystem): readonly FaceMarkChoice[] {
  return (['looks only', 'a symptom', 'could be loose, so have it looked at'] as const).flatMap((tells) =>
    CONDITIONS.flatMap((condition) => {
      if (condition === 'sound' || FACE_MARKS[condition].tells !== tells) return [];
      const figure = condition === 'chip' ? chipFigure(system) : null;
      return [{ condition, ...FACE_MARKS[condition], figure }];
    }),
  );
}

/** "Chips and marks on a facing brick, across: at most 15 mm. United Kingdom …, 9.1.2. Looks." */
function chipFigure(system: LengthSystem): string | null {
  const limit = namedLimitOf('united-kingdom', 'chip-size');
  if (limit === undefined) return null;
  const { quantity, edition, clause, kind, rules } = limit;
  return `${quantity}: ${formatBound(limit, system).join(' ')}. ${ruleSetTitle(rules)} · ${edition}, ${clause} · ${kind}. The chips drawn here are smaller.`;
}
