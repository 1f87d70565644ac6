'use client';

import { useEffect, useId, useRef, useState } from 'react';
import type { NumberQuestion, Option, OrderQuestion, Question } from '../../lib/questions/question';
import { SmallDrawing } from './question-drawing';
import styles from './questions.module.css';

/** A number with its unit behind it. */
export function NumberField(props: {
  readonly question: NumberQuestion;
  readonly text: string;
  readonly problem: string | null;
  readonly locked: boolean;
  readonly onType: (text: string) => void;
}) {
  const { question, text, problem, locked, onType } = props;
  const id = useId();
  return (
    <div>
      <label htmlFor={id} className={styles.prompt}>
        {question.prompt}
      </label>
      <div className={`bar ${styles.entry}`}>
        <input
          id={id}
          value={text}
          // Some phones' keys for decimals have no space and no slash: 2 3/4 could not be typed.
          inputMode={question.unit === 'in' ? 'text' : 'decimal'}
          autoComplete="off"
          readOnly={locked}
          aria-describedby={problem === null ? `${id}-unit` : `${id}-unit ${id}-problem`}
          aria-invalid={problem !== null}
          onChange={(event) => onType(event.target.value)}
        />
        <span id={`${id}-unit`}>{unitWords(question)}</span>
      </div>
      {problem !== null && (
        <p id={`${id}-problem`} className="problem" role="alert">
          {problem}
        </p>
      )}
    </div>
  );
}

function unitWords({ unit }: NumberQuestion): string {
  if (unit === 'in') return 'in (2.75 or 2 3/4)';
  return unit === 'times' ? '' : unit;
}

/** One of several by radio buttons, or all that apply by boxes to tick. */
export function ChoiceField(props: {
  readonly question: Exclude<Question, NumberQuestion | OrderQuestion>;
  readonly chosen: readonly string[];
  readonly locked: boolean;
  readonly onChoose: (chosen: readonly string[]) => void;
}) {
  const { question, chosen, locked, onChoose } = props;
  const name = useId();
  const several = question.kind === 'pick';
  const toggle = (id: string) => {
    if (!several) return onChoose([id]);
    onChoose(chosen.includes(id) ? chosen.filter((each) => each !== id) : [...chosen, id]);
  };
  return (
    <fieldset className="stack tight" disabled={locked}>
      <legend className={styles.prompt}>
        {question.prompt} {several && <span className={styles.hint}>Pick all that apply.</span>}
      </legend>
      {question.options.map(({ id, text, drawing }) => (
        <label key={id} className={`bar ${styles.choice}`}>
          <input
            type={several ? 'checkbox' : 'radio'}
            name={name}
            checked={chosen.includes(id)}
            onChange={() => toggle(id)}
          />
          {drawing !== undefined && <SmallDrawing drawing={drawing} />}
          <span>{text}</span>
        </label>
      ))}
    </fieldset>
  );
}

/** Steps that are moved up and down by buttons. Nothing has to be dragged. */
export function OrderField(props: {
  readonly question: OrderQuestion;
  readonly order: readonly string[];
  readonly locked: boolean;
  readonly onMove: (order: readonly string[]) => void;
}) {
  const { question, order, locked, onMove } = props;
  const [moved, setMoved] = useState('');
  const held = useRef<HTMLButtonElement | null>(null);
  // The browser may drop the focus of a row that it moves: the same button keeps it, for the next press.
  // biome-ignore lint/correctness/useExhaustiveDependencies: only when the order has changed
  useEffect(() => held.current?.focus(), [order]);
  const steps = order.flatMap((step) => question.options.find((option) => option.id === step) ?? []);
  const move = (option: Option, place: number, by: -1 | 1, button: HTMLButtonElement) => {
    const other = order[place + by];
    if (other === undefined) return;
    held.current = button;
    const next = [...order];
    next[place] = other;
    next[place + by] = option.id;
    setMoved(`${option.text}: now step ${place + by + 1} of ${order.length}`);
    onMove(next);
  };
  return (
    <fieldset className="stack tight">
      <legend className={styles.prompt}>{question.prompt}</legend>
      <ol className={`stack tight ${styles.steps}`}>
        {steps.map((option, place) => (
          <li key={option.id}>
            <div className={styles.step}>
              <span>{option.text}</span>
              {!locked && (
                <span className={styles.moves}>
                  <button
                    type="button"
                    aria-label={`Move up: ${option.text}`}
                    aria-disabled={place === 0}
                    onClick={(event) => move(option, place, -1, event.currentTarget)}
                  >
                    ↑
                  </button>
                  <button
                    type="button"
                    aria-label={`Move down: ${option.text}`}
                    aria-disabled={place === steps.length - 1}
                    onClick={(event) => move(option, place, 1, event.currentTarget)}
                  >
                    ↓
                  </button>
                </span>
              )}
            </div>
          </li>
        ))}
      </ol>
      <p className="visually-hidden" aria-live="polite">
        {moved}
      </p>
    </fieldset>
  );
}
