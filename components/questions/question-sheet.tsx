import type { Question } from '../../lib/questions/question';
import { SmallDrawing } from './question-drawing';
import styles from './questions.module.css';
import { rightWords } from './right-words';

const HINTS: Readonly<Partial<Record<Question['kind'], string>>> = {
  pick: 'Tick all that apply.',
  order: 'Number them: 1 comes first.',
};

/** All the questions on paper, answers at the end. For print, and where scripts are off. */
export function QuestionSheet({ questions }: { readonly questions: readonly Question[] }) {
  return (
    <div className={styles.sheet}>
      <ol>
        {questions.map((question) => (
          <li key={question.family}>
            <p>
              {question.prompt} {HINTS[question.kind]}
            </p>
            {question.kind === 'number' ? (
              <p>____________ {question.unit === 'times' ? '' : question.unit}</p>
            ) : (
              <ul>
                {question.options.map(({ id, text, drawing }) => (
                  <li key={id}>
                    <span aria-hidden="true">{question.kind === 'order' ? '____ ' : '☐ '}</span>
                    {drawing !== undefined && <SmallDrawing drawing={drawing} />}
                    {text}
                  </li>
                ))}
              </ul>
            )}
          </li>
        ))}
      </ol>
      <h2 className={styles.answers}>Answers</h2>
      <ol>
        {questions.map((question) => (
          <li key={question.family}>
            <strong>{rightWords(question)}</strong>. {question.explanation} Source: {question.source}
          </li>
        ))}
      </ol>
    </div>
  );
}
