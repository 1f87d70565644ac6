import { randomInt } from 'node:crypto';
import type { FieldProblem, WallFormField } from '../../components/forms/wall-form';
import { type Brief, DIFFICULTIES, MAX_SEED, parseBrief } from '../../lib/generate/brief';
import { TOPIC_TITLES, TOPICS } from '../../lib/generate/topics';
import { RULE_SETS } from '../../lib/limits/limit';
import { ruleSetTitle } from '../../lib/limits/limits';
import { WALL_KINDS } from '../../lib/wall/model';
import { DIFFICULTY_WORDS, KIND_TITLES } from '../../lib/wall-page/brief-words';
import { fieldProblems } from './brief-problems';

export const BRIEF_FIELDS: readonly WallFormField[] = [
  { name: 'topic', label: 'Topic', choices: TOPICS.map((value) => ({ value, label: TOPIC_TITLES[value] })) },
  {
    name: 'kind',
    label: 'Kind of wall',
    choices: WALL_KINDS.map((value) => ({ value, label: KIND_TITLES[value] })),
  },
  {
    name: 'difficulty',
    label: 'How hard',
    choices: DIFFICULTIES.map((value) => ({
      value: String(value),
      label: `${value} · ${DIFFICULTY_WORDS[value]}`,
    })),
  },
  {
    name: 'rules',
    label: 'Checked against',
    choices: RULE_SETS.map((value) => ({ value, label: ruleSetTitle(value) })),
  },
];

const USUAL = { topic: 'joints', kind: 'plain-panel', difficulty: '1', rules: 'canada', seed: '' };

/** What an address asks for after its question mark. */
export type Asked = Readonly<Record<string, string | readonly string[] | undefined>>;

export interface AskedBrief {
  /** What stands in the form: as typed, else the usual. */
  readonly typed: Readonly<Record<keyof typeof USUAL, string>>;
  readonly problems: readonly FieldProblem[];
  /** Null when nothing was asked, or something in it is wrong. */
  readonly brief: Brief | null;
}

/** Reads a form for a wall out of an address. Without a wall number one is drawn here, in the request. */
export function askedBrief(asked: Asked): AskedBrief {
  const typed = { ...USUAL, ...typedIn(asked) };
  if (!Object.keys(USUAL).some((field) => asked[field] !== undefined)) {
    return { typed, problems: [], brief: null };
  }
  const seed = typed.seed.trim() === '' ? randomInt(MAX_SEED + 1) : typed.seed.trim();
  const problems = fieldProblems({ ...typed, seed }, BRIEF_FIELDS);
  return { typed, problems, brief: problems.length > 0 ? null : parseBrief({ ...typed, seed }) };
}

function typedIn(asked: Asked): Partial<typeof USUAL> {
  const given = Object.keys(USUAL).flatMap((field) => {
    const text = textOf(asked[field]);
    return text === undefined ? [] : [[field, text]];
  });
  return Object.fromEntries(given);
}

export function textOf(value: string | readonly string[] | undefined): string | undefined {
  return typeof value === 'string' ? value : value?.[0];
}
