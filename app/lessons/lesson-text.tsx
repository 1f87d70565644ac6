import { getMDXComponent } from 'mdx-bundler/client';
import type { ReactNode } from 'react';
import { DrawingSlot } from '../../components/lesson/drawing-slot';
import { LessonCaution, SourceLink, TermLink } from '../../components/lesson/lesson-words';
import { LimitAnswer } from '../../components/lesson/limit-answer';
import { PractiseLink } from '../../components/lesson/practise-link';
import { QuestionsSlot } from '../../components/lesson/questions-slot';
import { DRAWINGS } from '../../components/trade/drawings';
import { CATALOGUE } from '../../lib/inspect/catalogue';
import { CHECKS } from '../../lib/inspect/finding';
import { SOURCES } from '../../lib/limits/bibliography';
import { WALL_KINDS } from '../../lib/wall/model';
import { Pair, Wall } from './lesson-figures';

/** What a lesson may name; check-lesson.ts knows the same names and what each takes. */
const COMPONENTS = {
  Wall,
  Pair,
  Limit: LimitAnswer,
  Term: TermLink,
  Caution: LessonCaution,
  Source: ({ id }: { readonly id: string }) => (
    <SourceLink id={id} title={SOURCES.find(({ key }) => key === id)?.title ?? id} />
  ),
  /** Name of a fault as the practice page has it. */
  Fault: ({ id }: { readonly id: string }) => {
    const check = CHECKS.find((each) => each === id);
    return <strong>{check === undefined ? id : CATALOGUE[check].name}</strong>;
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
