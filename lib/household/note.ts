import type { LimitKind, RuleSetId } from '../limits/limit';
import { ruleSetTitle } from '../limits/limits';
import type { LengthSystem } from '../units';
import { couldFall, DRAWERS, type Drawer, isMoreUrgent, STEPS_OF, type Steps } from './drawers';
import { boundWords, plainLength, withLengths } from './lengths';
import { heldTo, isBorrowed, lengthOf, stateOf } from './measures';
import { NOT_SEEN, type Row } from './row';
import { ROWS_ELSE } from './rows-else';
import { ROWS_FALLING } from './rows-falling';
import { type Answers, isMeasure, QUESTIONS, type QuestionId, questionOf, type StopId } from './stops';

/** The table of decisions. Of the rows about one question the first that holds counts. */
export const ROWS: readonly Row[] = [...ROWS_FALLING, ...ROWS_ELSE];

/** How a person came to look. */
export const WAYS = ['finished', 'wrong'] as const;
export type Way = (typeof WAYS)[number];

export interface Looked {
  readonly way: Way;
  readonly rules: RuleSetId;
  readonly answers: Answers;
}

/** A measured length beside its limit, in the reader's lengths. */
export interface Measured {
  readonly value: string;
  readonly limit: string;
  readonly kind: LimitKind;
  /** Book or note, and where in it. */
  readonly source: string;
  readonly sourceKey: string;
  /** What softens it: a figure of another place, or a thing taken for granted. */
  readonly softer: readonly string[];
}

export interface Finding {
  readonly about: QuestionId;
  readonly stop: StopId;
  readonly drawer: Drawer;
  readonly saw: string;
  readonly measured: Measured | null;
  readonly maybe: readonly string[];
  readonly ask: string;
}

export interface Note extends Steps {
  readonly findings: readonly Finding[];
  /** The most urgent drawer with something in it. */
  readonly top: Drawer | null;
  readonly headline: string;
  /** Questions about what could fall that nobody could answer. */
  readonly notSeen: readonly QuestionId[];
}

/** What the look round comes to. It says what was seen and what to do, never what the cause is. */
export function noteOf(looked: Looked, system: LengthSystem): Note {
  const findings = findingsOf(looked, system);
  const top = DRAWERS.find((drawer) => findings.some((finding) => finding.drawer === drawer)) ?? null;
  const notSeen = WEIGHTY.filter((id) => NOT_SEEN.includes(stateOf(id, looked.rules, looked.answers)));
  return {
    findings,
    top,
    notSeen,
    headline: headlineOf(top, notSeen.length),
    ...stepsOf(looked, findings, top),
  };
}

/** What could fall by these answers, for a warning on the spot. */
export function isAlarm(looked: Looked): boolean {
  return chosenRows(looked).some(({ drawer }) => drawer === 'go away now');
}

function findingsOf(looked: Looked, system: LengthSystem): readonly Finding[] {
  return chosenRows(looked)
    .map(({ about, drawer, saw, maybe, ask }) => ({
      about,
      drawer,
      saw,
      maybe,
      ask,
      stop: questionOf(about).stop,
      measured: measuredOf(about, looked, system),
    }))
    .sort((a, b) => DRAWERS.indexOf(a.drawer) - DRAWERS.indexOf(b.drawer));
}

function chosenRows(looked: Looked): readonly Pick<Finding, keyof Row & keyof Finding>[] {
  const chosen = new Map<QuestionId, Row>();
  for (const row of ROWS) if (!chosen.has(row.about) && holds(row, looked)) chosen.set(row.about, row);
  return [...chosen.values()].map((row) => ({ ...row, drawer: afterEvent(row, looked) }));
}

function holds({ when }: Row, { rules, answers }: Looked): boolean {
  return Object.entries(when).every(([id, states]) =>
    states.includes(stateOf(questionOf(id).id, rules, answers)),
  );
}

/** After a storm or a knock what an engineer should see is kept clear at once. A figure alone clears no yard. */
function afterEvent({ about, drawer }: Row, { answers }: Looked): Drawer {
  const raised = answers.event === 'yes' && drawer === 'an engineer this week' && !isMeasure(about);
  return raised ? 'go away now' : drawer;
}

function measuredOf(about: QuestionId, looked: Looked, system: LengthSystem): Measured | null {
  const id = about === 'crack' ? 'crack-width' : about;
  const value = lengthOf(looked.answers[id]);
  const held = isMeasure(id) ? heldTo(id, looked.rules, looked.answers) : undefined;
  if (value === undefined || held === undefined) return null;
  const { limit, bound, end, given } = held;
  return {
    value: `${withLengths(questionOf(id).measured ?? '', system)}: ${plainLength(value, system)}`,
    limit: boundWords(end, bound, system),
    kind: limit.kind,
    source: `${limit.edition}, ${limit.clause}`,
    sourceKey: limit.source,
    softer: [
      ...(isBorrowed(held) ? [borrowedWords(looked.rules)] : []),
      ...(given === undefined ? [] : [given]),
    ],
  };
}

function borrowedWords(rules: RuleSetId): string {
  const whose = rules === 'good-practice' ? '' : `${ruleSetTitle(rules)} gives no figure for this. `;
  return `${whose}This one is borrowed from elsewhere, to compare. For this figure alone nobody has to leave.`;
}

const HEADLINES: Readonly<Record<Drawer, string>> = {
  'go away now': 'Go away from the wall now',
  'an engineer this week': 'Have a licensed engineer look this week',
  'ask the mason': 'Ask the mason about what you saw',
  harmless: 'What you saw is harmless as a rule',
};

function headlineOf(top: Drawer | null, notSeen: number): string {
  if (top !== null && top !== 'harmless') return HEADLINES[top];
  if (notSeen > 0) return 'You have not seen enough to tell';
  return top === null ? 'You saw nothing that worries us from the ground' : HEADLINES[top];
}

/** Said under every note. */
export const LIMIT_OF_LOOKING =
  'This is a first look, not an inspection. A wall can look perfect and still lack its ties, its support or the mortar behind its face. Nobody can see those from outside. Ask for proof.';

const SOMETHING_WRONG = 'You feel that something is wrong. Show it to a mason or an engineer all the same.';
const NOTHING_ELSE = 'Show the rest of this list to a mason after the engineer has been there.';

/** With something that could fall nothing is put off, and nothing smaller stands beside it. */
function stepsOf({ way }: Looked, findings: readonly Finding[], top: Drawer | null): Steps {
  if (top !== null && couldFall(top)) {
    const { now, soon } = STEPS_OF[top];
    const hasSmaller = findings.some(({ drawer }) => isMoreUrgent('an engineer this week', drawer));
    return { now, soon: hasSmaller ? [...soon, NOTHING_ELSE] : soon, later: [] };
  }
  const drawers = DRAWERS.filter((drawer) => findings.some((each) => each.drawer === drawer));
  return {
    now: [],
    soon: [
      ...(way === 'wrong' ? [SOMETHING_WRONG] : []),
      ...drawers.flatMap((drawer) => STEPS_OF[drawer].soon),
    ],
    later: drawers.flatMap((drawer) => STEPS_OF[drawer].later),
  };
}

/** Questions whose answer can lead to the first two drawers. Nothing measured: not everybody has a tape. */
const WEIGHTY: readonly QuestionId[] = QUESTIONS.map(({ id }) => id).filter(
  (id) => !isMeasure(id) && ROWS_FALLING.some(({ about }) => about === id),
);
