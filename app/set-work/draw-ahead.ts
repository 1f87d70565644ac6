import { setImmediate } from 'node:timers/promises';
import type { GivenWall } from '../../lib/store/attempts';
import type { Store } from '../../lib/store/database';
import { keepForm, keptForm, learnersWithoutForm } from '../../lib/store/drawn-forms';
import { type WorkRow, workOf } from '../../lib/store/set-work';
import { sentWall } from '../server/site-walls';
import { briefOfPlace, givenWalls } from './lay-forms';

/**
 * Draws the first form of everybody on the roster, wall by wall, so that other requests are answered in between. Whoever begins
 * before theirs is drawn, or joins later, has it drawn then: the secret gives the same walls.
 */
export async function drawAhead(store: Store, work: string): Promise<void> {
  const row = await workOf(store, work);
  if (row.state !== 'set') return;
  for (const learner of await learnersWithoutForm(store, row)) {
    const known = row.spec.sameForAll ? await keptForm(store, row, learner) : null;
    const form = known ?? (await formWallByWall(row, learner));
    await keepForm(store, work, learner, form);
    // The one that all of them open first, and at once. It is kept as it is sent.
    if (form[0]) sentWall(form[0].code, row.spec.offline);
  }
}

async function formWallByWall(work: WorkRow, learner: string): Promise<readonly GivenWall[]> {
  const walls: GivenWall[] = [];
  for (let place = 1; place <= work.spec.walls; place++) {
    const brief = briefOfPlace(work, learner, place);
    if (brief) walls.push(...givenWalls([brief]).map((wall) => ({ ...wall, place })));
    await setImmediate();
  }
  return walls;
}
