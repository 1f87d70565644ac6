import { type Failure, failOver } from '../kills/fail-over';

/** tests/commands/bench.mjs builds the site first. */
export const needsBuild = true;

const HAND_INS = 400;
const ROUND: readonly Failure[] = [
  'a site is killed',
  'connections drop',
  'the standby is away',
  'a site is killed',
  'the database dies',
];

/** Four hundred hand-ins to three processes of the site, while those, their connections and two databases go. */
export async function run(): Promise<void> {
  const begun = Date.now();
  const failures = [...ROUND, ...ROUND.slice(0, -1), 'the database falls silent' as const];
  const { acknowledged, acknowledgedByOne, askedBack, lost, halfWritten, trailIsWhole } = await failOver(
    HAND_INS,
    failures,
  );
  const held =
    acknowledged === HAND_INS && acknowledgedByOne + lost.length + halfWritten.length === 0 && trailIsWhole;
  console.log(
    `${failures.length} failures in ${Math.round((Date.now() - begun) / 1000)} s: ${acknowledged} of ${HAND_INS} hand-ins acknowledged, ${askedBack} times 503, ` +
      `${acknowledgedByOne} by one database alone, ${lost.length} lost, ${halfWritten.length} half written, ` +
      `trail ${trailIsWhole ? 'whole' : 'BROKEN'}: ${held ? 'held' : 'NOT HELD'}`,
  );
}
