import { getMDXComponent } from 'mdx-bundler/client';
import type { ReactNode } from 'react';
import { DrawingSlot } from '../../components/lesson/drawing-slot';
import { LessonCaution, SourceLink, TermLink } from '../../components/lesson/lesson-words';
import { LimitAnswer } from '../../components/lesson/limit-answer';
import { PractiseLink } from '../../components/lesson/practise-link';
import { QuestionsSlot } from '../../components/lesson/questions-slot';
import { RulesChoice } from '../../components/lesson/rules-choice';
import { DRAWINGS } from '../../components/trade/drawings';
import { CATALOGUE } from '../../lib/inspect/catalogue';
import { CHECKS } from '../../lib/inspect/finding';
import { SOURCES } from '../../lib/limits/bibliography';
import { RULE_SETS } from '../../lib/limits/limit';
import { ruleSetTitle } from '../../lib/limits/limits';
import { WALL_KINDS } from '../../lib/wall/model';
import type { STEPS } from './check-lesson';
import { Pair, Wall } from './lesson-figures';
import styles from './lessons.module.css';

const RULE_TITLES = RULE_SETS.map((id) => [id, ruleSetTitle(id)] as const);
const OF_LIMITS: (typeof STEPS)[number] = 'What is required';
/** The wall to look at and the ones to read stay open on a phone. */
const OPEN: readonly string[] = ['Look first', 'Your turn'] satisfies readonly (typeof STEPS)[number][];

/** Where a step is found on its page. */
export function stepAnchor(title: string): string {
  return title.toLowerCase().replaceAll(' ', '-');
}

/** One step, folded on a phone unless it is one to do; where there is room the style sheet shows them all. */
function Step({ title, children }: { readonly title: string; readonly children?: ReactNode }) {
  return (
    <details className={styles.step} open={OPEN.includes(title)}>
      <summary>
        <h2 id={stepAnchor(title)}>{title}</h2>
      </summary>
      {/* The reader chooses whose limits to see right where the limits begin. */}
      {title === OF_LIMITS && <RulesChoice titles={RULE_TITLES} />}
      {children}
    </details>
  );
}

/** What a lesson may name; check-lesson.ts knows the same names and what each takes. */
const COMPONENTS = {
  Step,
  Wall,
  Pair,
  Limit: LimitAnswer,
  Term: TermLink,
  Caution: LessonCaution,
  Source: ({ id }: { readonly id: string }) => (
    <SourceLink id={id} title={SOURCES.find(({ key }) => key === id)?.title ?? id} />
  ),
  /** Name of a fault as the practice page has it, which links to this place. */
  Fault: ({ id }: { readonly id: string }) => {
    const check = CHECKS.find((each) => each === id);
    return <strong id={`fault-${id}`}>{check === undefined ? id : CATALOGUE[check].name}</strong>;
  },
  Drawing: ({ name }: { readonly name: string }) => {
    const drawing = DRAWINGS.find((each) => each.name === name);
    return drawing === undefined ? null : (
      <DrawingSlot name={drawing.name} title={drawing.title} summary={drawing.summary} />
    );
  },
  Questions: QuestionsSlot,
  Practise: (props: { readonly topic: string; readonly kind?: string; readonly children: ReactNode }) => (
    <p>
      <PractiseLink
        topic={props.topic}
        kind={WALL_KINDS.find((kind) => kind === props.kind) ?? 'plain-panel'}
      >
        {props.children}
      </PractiseLink>
    </p>
  ),
};

/** Shows a compiled lesson. Runs on the server only: in the browser it would load a second React. */
export function LessonText({ code }: { readonly code: string }) {
  const Text = getMDXComponent(code);
  return <Text components={COMPONENTS} />;
}
