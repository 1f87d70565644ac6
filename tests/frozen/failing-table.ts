import { createHash } from 'node:crypto';
import { layByCode } from '../../lib/engines/engines';
import { allowedBy, causesOf } from '../../lib/failing/causes/causes';
import { marginsOf } from '../../lib/failing/margins/margins';
import { turnsOf } from '../../lib/failing/margins/next';
import { SEASONS } from '../../lib/failing/state/model';
import { parseBrief } from '../../lib/generate/brief';
import { acted, lackingFor } from '../../lib/mechanisms/act';
import { MECHANISMS } from '../../lib/mechanisms/mechanisms';
import { WALL_KINDS } from '../../lib/wall/model';
import { surveyOf } from '../../lib/wall/survey';

export const TABLE = 'tests/frozen/failing.txt';

/** One line for each mechanism on each kind of wall that it fits: what it makes of it, the causes allowed, who comes next, hashed but for the causes. */
export function failingTable(): readonly string[] {
  return MECHANISMS.flatMap((mechanism, index) =>
    WALL_KINDS.flatMap((kind) =>
      (['ties', 'back-mortar'] as const).flatMap((topic) => {
        const brief = parseBrief({ topic, kind, difficulty: 3, rules: 'canada', seed: 7 + index });
        const survey = surveyOf(layByCode(brief).wall);
        if (lackingFor(mechanism, survey) !== null) return [];
        const years = mechanism.showsAfter + 3 * index;
        const season = SEASONS[index % SEASONS.length] ?? 'summer';
        const failing = acted(survey, mechanism, years, season, brief.seed);
        const { state } = failing;
        const text = JSON.stringify([
          {
            ...state,
            moves: [...state.moves],
            splits: [...state.splits],
            supports: [...state.supports],
            missing: [...state.missing],
          },
          turnsOf(failing, marginsOf(failing)),
        ]);
        const hash = createHash('sha256').update(text).digest('hex').slice(0, 16);
        return [
          `${mechanism.name} ${kind} ${topic} ${years} ${season} ${hash} ${allowedBy(causesOf(failing)).join('+')}`,
        ];
      }),
    ),
  );
}
