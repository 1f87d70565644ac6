import { fireEvent, render, screen } from '@testing-library/react';
import { useState } from 'react';
import { expect, test } from 'vitest';
import { MeasureField } from '../../../components/household/measure-field';
import type { Answer } from '../../../lib/household/question';
import type { LengthSystem } from '../../../lib/units';

const QUESTION = { id: 'bearing', ask: 'How far?', how: 'With a tape.', most: 2000, measured: 'Steel' };

function Asked({ system, isAlarm = false }: { readonly system: LengthSystem; readonly isAlarm?: boolean }) {
  const [answer, setAnswer] = useState<Answer | undefined>(undefined);
  return (
    <>
      <MeasureField question={QUESTION} {...{ answer, system, isAlarm }} onAnswer={setAnswer} />
      <output>{answer === undefined ? 'nothing' : String(answer)}</output>
    </>
  );
}

const box = () => screen.getByRole('textbox');
const type = (text: string) => fireEvent.change(box(), { target: { value: text } });
const taken = () => screen.getByRole('status').textContent;

test.each<[LengthSystem, string, string]>([
  ['mm', '60', '60'],
  ['mm', '6,5', '6.5'],
  ['inches', '2 1/2', '63.5'],
  ['inches', '½', '12.7'],
])('in %s "%s" is taken as %s mm', (system, typed, mm) => {
  render(<Asked system={system} />);
  type(typed);
  expect(taken()).toBe(mm);
});

test.each(['abc', '-3', '2001'])('"%s" is no answer, and the reader is told', (typed) => {
  render(<Asked system="mm" />);
  type('50');
  type(typed);
  expect(taken()).toBe('nothing');
  expect(box()).toHaveAttribute('aria-invalid', 'true');
  expect(screen.getByText(/Type a length up to 2 m/)).toBeVisible();
});

test('that it cannot be seen takes the place of a length, and a length takes its place', () => {
  render(<Asked system="mm" />);
  type('50');
  fireEvent.click(screen.getByRole('radio', { name: 'I can’t see that' }));
  expect(taken()).toBe('cannot see');
  expect(box()).toHaveValue('');
  type('40');
  expect(taken()).toBe('40');
  expect(screen.getByRole('radio', { name: 'I can’t see that' })).not.toBeChecked();
});

test('nothing is measured on a wall that could fall', () => {
  render(<Asked system="mm" isAlarm />);
  expect(box()).toBeDisabled();
  expect(screen.getByText(/Do not go near to measure/)).toBeVisible();
});
