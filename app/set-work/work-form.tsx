import { Disclosure } from '../../components/ui/disclosure';
import { AreaField, ChoiceField, SelectField, TextField, TickField } from '../../components/ui/fields';
import { PostForm } from '../../components/ui/post-form';
import {
  MOST_ATTEMPTS,
  MOST_WALLS,
  type PassMark,
  type Release,
  type SetWorkSpec,
} from '../../lib/classes/set-work';
import { DIFFICULTIES } from '../../lib/generate/brief';
import { TOPIC_TITLES, TOPICS } from '../../lib/generate/topics';
import { RULE_SETS } from '../../lib/limits/limit';
import { ruleSetTitle } from '../../lib/limits/limits';
import { QUESTION_TOPIC_TITLES, QUESTION_TOPICS } from '../../lib/questions/topics';
import { WALL_KINDS } from '../../lib/wall/model';
import { DIFFICULTY_WORDS, KIND_TITLES } from '../../lib/wall-page/brief-words';
import { RELEASE_WORDS } from './release-words';
import { TimesFields } from './times-fields';

/** What the form begins with. */
export interface WorkStart {
  readonly title: string;
  readonly spec: SetWorkSpec;
  readonly release: Release;
  readonly opensAt: number | null;
  readonly dueAt: number | null;
  /** Days from now until it is due, where no date is known yet. */
  readonly days: number | null;
  readonly graceMinutes: number;
}

/** Makes or changes a draft. What matters stands open; the rest has good defaults and is folded. */
export function WorkForm(props: {
  readonly action: string;
  readonly send: string;
  readonly also: Readonly<Record<string, string>>;
  readonly start: WorkStart;
  readonly lessons: readonly { readonly slug: string; readonly title: string }[];
}) {
  const { action, send, also, start, lessons } = props;
  const { spec } = start;
  return (
    <PostForm action={action} send={send} also={also} name="Set work">
      <TextField name="title" label="Title" value={start.title} most={80} />
      <TextField
        name="walls"
        label={`How many walls (1 to ${MOST_WALLS})`}
        kind="number"
        value={String(spec.walls)}
      />
      <ChoiceField
        name="same"
        label="Who gets which walls"
        chosen={[spec.sameForAll ? 'same' : 'each']}
        choices={[
          { value: 'same', label: 'The same walls for all: to talk about together' },
          { value: 'each', label: 'Walls of their own for each learner' },
        ]}
      />
      <ChoiceField
        name="offline"
        label="How the walls come to learners"
        chosen={[spec.offline ? 'device' : 'site']}
        choices={[
          {
            value: 'site',
            label:
              'For a test: the site draws each look and answers each instrument. It needs a network, and each use is recorded',
          },
          {
            value: 'device',
            label:
              'For practice: may be done offline. The whole wall is on the device, and somebody who can read the page’s code can find the faults in it',
          },
        ]}
      />
      <TimesFields opensAt={start.opensAt} dueAt={start.dueAt} days={start.days} />
      <Disclosure
        title="What the walls are about"
        now={aboutWords(spec)}
        names={['topics', 'kinds', 'difficulty', 'rules']}
      >
        <ChoiceField
          name="topics"
          label="Topics"
          several
          chosen={spec.topics}
          choices={TOPICS.map((value) => ({ value, label: TOPIC_TITLES[value] }))}
        />
        <ChoiceField
          name="kinds"
          label="Kinds of wall"
          several
          chosen={spec.kinds}
          choices={WALL_KINDS.map((value) => ({ value, label: KIND_TITLES[value] }))}
        />
        <SelectField
          name="difficulty"
          label="How hard"
          value={String(spec.difficulty)}
          choices={DIFFICULTIES.map((value) => ({
            value: String(value),
            label: `${value} · ${DIFFICULTY_WORDS[value]}`,
          }))}
        />
        <SelectField
          name="rules"
          label="Checked against"
          value={spec.rules}
          choices={RULE_SETS.map((value) => ({ value, label: ruleSetTitle(value) }))}
        />
      </Disclosure>
      <Disclosure
        title="Time and tries"
        now={timeWords(spec)}
        names={['grace', 'attempts', 'minutes', 'openingsUp']}
      >
        <TextField
          name="grace"
          label="Grace in minutes"
          help="Work handed in this much later still counts as on time."
          kind="number"
          value={String(start.graceMinutes)}
        />
        <TextField
          name="attempts"
          label={`Attempts (1 to ${MOST_ATTEMPTS})`}
          kind="number"
          value={String(spec.attempts)}
        />
        <TextField
          name="minutes"
          label="Time limit in minutes (optional)"
          help="Best left empty: seeing well takes some people longer. A learner’s own time factor, set on the roster, counts."
          kind="number"
          value={spec.minutes === null ? '' : String(spec.minutes)}
        />
        <TextField
          name="openingsUp"
          label="Units a learner may lift off each wall (optional)"
          help="Empty: as many as the wall itself allows."
          kind="number"
          value={spec.openingsUp === null ? '' : String(spec.openingsUp)}
        />
      </Disclosure>
      <Disclosure title="When results show" now={RELEASE_WORDS[start.release]} names={['release']}>
        <ChoiceField
          name="release"
          label="Results and key"
          chosen={[start.release]}
          choices={(Object.keys(RELEASE_WORDS) as Release[]).map((value) => ({
            value,
            label: RELEASE_WORDS[value],
          }))}
        />
      </Disclosure>
      <Disclosure title="To go with it" now={withWords(spec)} names={['lessons', 'questionTopics']}>
        <ChoiceField
          name="lessons"
          label="Lessons to read first"
          several
          chosen={spec.lessons}
          choices={lessons.map(({ slug, title }) => ({ value: slug, label: title }))}
        />
        <ChoiceField
          name="questionTopics"
          label="Question sets"
          several
          chosen={spec.questionTopics}
          choices={QUESTION_TOPICS.map((value) => ({ value, label: QUESTION_TOPIC_TITLES[value] }))}
        />
      </Disclosure>
      <PassFields passMark={spec.passMark} />
    </PostForm>
  );
}

function aboutWords({ topics, difficulty }: SetWorkSpec): string {
  return `${topics.map((topic) => TOPIC_TITLES[topic]).join(', ')} · ${DIFFICULTY_WORDS[difficulty]?.toLowerCase()}`;
}

function timeWords({ attempts, minutes }: SetWorkSpec): string {
  const tries = attempts === 1 ? '1 attempt' : `${attempts} attempts`;
  return `${tries} · ${minutes === null ? 'no time limit' : `${minutes} minutes`}`;
}

function withWords({ lessons, questionTopics }: SetWorkSpec): string {
  const counts = [
    lessons.length > 0 ? `${lessons.length} ${lessons.length === 1 ? 'lesson' : 'lessons'}` : '',
    questionTopics.length > 0
      ? `${questionTopics.length} question ${questionTopics.length === 1 ? 'set' : 'sets'}`
      : '',
  ].filter((each) => each !== '');
  return counts.length === 0 ? 'nothing' : counts.join(' and ');
}

/** A pass mark: off unless somebody can say how it was found. */
function PassFields({ passMark }: { readonly passMark: PassMark | null }) {
  return (
    <Disclosure
      title="Pass mark"
      now={passMark ? `${Math.round(passMark.share * 100)} of 100` : 'none'}
      names={['pass', 'passShare', 'passMethod', 'passPerson', 'passDate']}
    >
      <p>
        Best left off. No number of ours is right for your trade: a pass mark is set by people who know the
        work, one fault after the other. Learners then see who set it, how and when, and that it is a practice
        result.
      </p>
      <TickField name="pass" label="Show whether a pass mark is reached" ticked={passMark !== null} />
      <TextField
        name="passShare"
        label="Pass mark, of 100"
        kind="number"
        value={passMark ? String(Math.round(passMark.share * 100)) : ''}
      />
      <AreaField
        name="passMethod"
        label="How it was found"
        help="For instance: four of us judged each fault family and took the mean."
        rows={3}
        value={passMark?.method ?? ''}
      />
      <TextField name="passPerson" label="Who set it" value={passMark?.person ?? ''} most={80} />
      <TextField
        name="passDate"
        label="On which day"
        help="Year, month, day: like 2026-11-25."
        value={passMark?.date ?? ''}
        most={10}
      />
    </Disclosure>
  );
}
