import { randomInt } from 'node:crypto';
import type { Metadata } from 'next';
import { redirect } from 'next/navigation';
import { Caution } from '../../components/forms/caution';
import { CodeBox } from '../../components/forms/code-box';
import { WallForm, type WallFormField } from '../../components/forms/wall-form';
import { BriefError, DIFFICULTIES, MAX_SEED, parseBrief } from '../../lib/generate/brief';
import { TOPIC_TITLES, TOPICS } from '../../lib/generate/topics';
import { codeOf, parseCode } from '../../lib/generate/wall-code';
import { LIMIT_CAUTIONS } from '../../lib/inspect/make-safe';
import { RULE_SETS } from '../../lib/limits/limit';
import { ruleSetTitle } from '../../lib/limits/limits';
import { WALL_KINDS } from '../../lib/wall/model';
import { codeProblem, fieldProblems } from './brief-problems';
import { DIFFICULTY_WORDS, KIND_TITLES } from './brief-words';
import styles from './walls.module.css';

export const metadata: Metadata = {
  title: 'Walls',
  description:
    'Lay a wall to practise on: choose a topic, a kind of wall, how hard it is, and the rules to judge it by.',
};

const FIELDS: readonly WallFormField[] = [
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
    label: 'Judged by',
    choices: RULE_SETS.map((value) => ({ value, label: ruleSetTitle(value) })),
  },
];

const USUAL = { topic: 'joints', kind: 'plain-panel', difficulty: '1', rules: 'canada', seed: '' };

type Asked = Readonly<Record<string, string | readonly string[] | undefined>>;

export default async function WallsPage({ searchParams }: { readonly searchParams: Promise<Asked> }) {
  const asked = await searchParams;
  const code = textOf(asked.code);
  const typed = { ...USUAL, ...typedIn(asked) };
  const codeIsWrong = code === undefined ? null : openCode(code);
  const briefIsWrong = Object.keys(USUAL).some((field) => asked[field] !== undefined) ? layBrief(typed) : [];
  return (
    <div className={styles.page}>
      <h1>Lay a wall</h1>
      <p>
        Each wall is new. It may have faults, and it may be sound. You look, you measure, you mark what is out
        of its limits. Its code opens the same wall again, for anyone.
      </p>
      <div className={styles.ways}>
        <section aria-labelledby="new-wall">
          <h2 id="new-wall">A new wall</h2>
          <WallForm fields={FIELDS} typed={typed} problems={briefIsWrong} mostSeed={MAX_SEED} />
        </section>
        <section aria-labelledby="known-wall">
          <h2 id="known-wall">A wall you have the code of</h2>
          <CodeBox {...(code === undefined ? {} : { typed: code })} problem={codeIsWrong} />
        </section>
      </div>
      <Caution lines={LIMIT_CAUTIONS} />
    </div>
  );
}

/** Leads on to the wall of a code, or gives what is wrong with it. */
function openCode(code: string): string {
  if (code.trim() === '') return 'The box is empty. Type the ten letters and digits of a code.';
  return leadOn(() => codeOf(parseCode(code)), codeProblem);
}

/** Leads on to the wall of a brief, or gives every field that is wrong. Without a wall number one is drawn here, in the request. */
function layBrief(typed: Readonly<Record<keyof typeof USUAL, string>>) {
  const seed = typed.seed.trim() === '' ? randomInt(MAX_SEED + 1) : typed.seed.trim();
  const problems = fieldProblems({ ...typed, seed }, FIELDS);
  return problems.length > 0
    ? problems
    : leadOn(
        () => codeOf(parseBrief({ ...typed, seed })),
        () => [],
      );
}

function leadOn<T>(code: () => string, problem: (error: BriefError) => T): T {
  let found: string;
  try {
    found = code();
  } catch (error) {
    if (!(error instanceof BriefError)) throw error;
    return problem(error);
  }
  redirect(`/walls/${found}`);
}

function typedIn(asked: Asked): Partial<typeof USUAL> {
  const given = Object.keys(USUAL).flatMap((field) => {
    const text = textOf(asked[field]);
    return text === undefined ? [] : [[field, text]];
  });
  return Object.fromEntries(given);
}

function textOf(value: string | readonly string[] | undefined): string | undefined {
  return typeof value === 'string' ? value : value?.[0];
}
