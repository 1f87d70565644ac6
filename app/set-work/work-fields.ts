import * as z from 'zod';
import { MOST_ATTEMPTS, MOST_WALLS, RELEASES, type SetWorkSpec } from '../../lib/classes/set-work';
import { DIFFICULTIES } from '../../lib/generate/brief';
import { TOPICS } from '../../lib/generate/topics';
import { RULE_SETS } from '../../lib/limits/limit';
import { QUESTION_TOPICS } from '../../lib/questions/topics';
import type { WorkTimes } from '../../lib/store/set-work';
import { WALL_KINDS } from '../../lib/wall/model';
import { oneLine } from '../request/one-line';
import { parseFields, wrongField } from '../request/refusal';
import { isZone, timeOf } from './zone-time';

const LONGEST_TITLE = 80;
const MOST_MINUTES = 1440;
const MOST_OPENINGS = 200;
const MOST_GRACE_MINUTES = 10_080;

const choice = <T extends string>(from: readonly [T, ...T[]] | readonly T[], error: string) =>
  z.enum(from as [T, ...T[]], { error });
const someOf = <T extends string>(from: readonly T[], error: string) =>
  z.array(choice(from, error), { error }).min(1, error).max(from.length, error);
const isWhole = (text: string, least: number, most: number) =>
  /^\d{1,6}$/.test(text) && Number(text) >= least && Number(text) <= most;
const whole = (least: number, most: number, what: string) => {
  const error = `${what}: write a whole number from ${least} to ${most}.`;
  return z
    .string({ error })
    .trim()
    .refine((text) => isWhole(text, least, most), error)
    .transform(Number);
};
/** Empty: null. */
const wholeOrNone = (least: number, most: number, what: string) => {
  const error = `${what}: leave it empty, or write a whole number from ${least} to ${most}.`;
  return z
    .string({ error })
    .trim()
    .refine((text) => text === '' || isWhole(text, least, most), error)
    .transform((text) => (text === '' ? null : Number(text)));
};
const text = (most: number, error: string) =>
  z
    .string({ error })
    .transform(oneLine)
    .pipe(z.string().min(1, error).max(most, `${error} At most ${most} letters.`));

/** The zone of the browser in which a date was typed. */
export const zone = z.string().refine(isZone, 'This device does not say in which time zone it is.');

const fields = z.object({
  title: text(LONGEST_TITLE, 'Write a title, so that learners know which work it is.'),
  topics: someOf(TOPICS, 'Choose at least one topic.'),
  kinds: someOf(WALL_KINDS, 'Choose at least one kind of wall.'),
  walls: whole(1, MOST_WALLS, 'Number of walls'),
  difficulty: whole(1, DIFFICULTIES.length, 'How hard'),
  rules: choice(RULE_SETS, 'Choose one of the rule sets.'),
  same: choice(['same', 'each'], 'Choose the same walls for all, or a wall each.'),
  offline: choice(['site', 'device'], 'Choose how the walls come to the learners.'),
  openingsUp: wholeOrNone(0, MOST_OPENINGS, 'Units to lift'),
  minutes: wholeOrNone(1, MOST_MINUTES, 'Time limit'),
  lessons: z.array(z.string().regex(/^[a-z0-9-]{1,60}$/, 'There is no such lesson.')).max(40),
  questionTopics: z
    .array(choice(QUESTION_TOPICS, 'There is no such set of questions.'))
    .max(QUESTION_TOPICS.length),
  opensAt: z.string().trim(),
  dueAt: z.string().trim(),
  zone,
  grace: whole(0, MOST_GRACE_MINUTES, 'Grace'),
  attempts: whole(1, MOST_ATTEMPTS, 'Attempts'),
  release: choice(RELEASES, 'Choose when results are shown.'),
  pass: z.boolean(),
  passShare: z.string().trim(),
  passMethod: z.string().trim(),
  passPerson: z.string().trim(),
  passDate: z.string().trim(),
});

const passFields = z.object({
  passShare: whole(1, 100, 'Pass mark in percent'),
  passMethod: text(300, 'Write how the pass mark was found.'),
  passPerson: text(80, 'Write who set the pass mark.'),
  passDate: z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'Give the day on which the pass mark was set.'),
});

export interface WorkFields {
  readonly title: string;
  readonly spec: SetWorkSpec;
  readonly times: WorkTimes;
}

/** Reads the form in which set work is made. @throws Refusal naming each field that is wrong. */
export function parseWork(body: unknown): WorkFields {
  const read = parseFields(fields, body);
  const opensAt = timeIn('opensAt', read.opensAt, read.zone);
  const dueAt = timeIn('dueAt', read.dueAt, read.zone);
  if (opensAt !== null && dueAt !== null && dueAt <= opensAt) {
    throw wrongField('dueAt', 'It is due before it opens. Put one of the two right.');
  }
  if (read.release === 'when due' && dueAt === null) {
    throw wrongField('dueAt', 'Results are to show when it is due, so say when that is.');
  }
  const pass = read.pass ? parseFields(passFields, body) : null;
  return {
    title: read.title,
    spec: {
      topics: [...new Set(read.topics)],
      kinds: [...new Set(read.kinds)],
      walls: read.walls,
      difficulty: read.difficulty,
      rules: read.rules,
      sameForAll: read.same === 'same',
      offline: read.offline === 'device',
      openingsUp: read.openingsUp,
      minutes: read.minutes,
      lessons: [...new Set(read.lessons)],
      questionTopics: [...new Set(read.questionTopics)],
      attempts: read.attempts,
      passMark: pass && {
        share: pass.passShare / 100,
        method: pass.passMethod,
        person: pass.passPerson,
        date: pass.passDate,
      },
    },
    times: { opensAt, dueAt, graceMs: read.grace * 60_000, release: read.release },
  };
}

/** The time a clock of that zone read when it showed this; null for an empty reading. @throws Refusal at the field. */
export function timeIn(field: string, reading: string, inZone: string): number | null {
  if (reading === '') return null;
  const time = timeOf(reading, inZone);
  if (time === undefined)
    throw wrongField(field, 'This is not a day and a time. Choose both, or leave it empty.');
  return time;
}
