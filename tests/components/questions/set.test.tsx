import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import { QuestionSet } from '../../../components/questions/question-set';
import { QuestionSheet } from '../../../components/questions/question-sheet';
import type { Question } from '../../../lib/questions/question';

const ASKED = { topic: 'ties', rules: 'canada', source: 'A made-up source' } as const;
const NUMBER: Question = {
  ...ASKED,
  family: 'n',
  kind: 'number',
  prompt: 'How long?',
  unit: 'mm',
  answer: 127,
  tolerance: 1,
  mistakes: [{ value: 137, why: 'You forgot the last joint.' }],
  explanation: 'It is 127 mm.',
};
const OPTIONS = ['Red', 'Blue', 'Green'].map((text, index) => ({
  id: 'abc'.charAt(index),
  text,
  why: `${text} is explained.`,
}));
const CHOOSE: Question = {
  ...ASKED,
  family: 'c',
  kind: 'choose',
  prompt: 'Which?',
  options: OPTIONS,
  answer: 'b',
  explanation: 'Blue it is.',
};
const PICK: Question = {
  ...ASKED,
  family: 'p',
  kind: 'pick',
  prompt: 'Which ones?',
  options: OPTIONS,
  answer: ['a', 'c'],
  explanation: 'Red and green.',
};
const ORDER: Question = {
  ...ASKED,
  family: 'o',
  kind: 'order',
  prompt: 'In which order?',
  options: OPTIONS,
  answer: ['b', 'a', 'c'],
  explanation: 'Blue first.',
};

const show = (...questions: readonly Question[]) => {
  const inches = questions.map((question) =>
    question.kind === 'number'
      ? { ...question, unit: 'in' as const, answer: 5, tolerance: 0.03, prompt: 'How long, in inches?' }
      : question,
  );
  render(<QuestionSet questions={{ mm: questions, inches }} usual="mm" again="/again" />);
  return userEvent.setup();
};
const press = (name: string) => screen.getByRole('button', { name });

afterEach(() => localStorage.clear());

describe('a number', () => {
  test('is typed and told right, with its explanation and source', async () => {
    const user = show(NUMBER);
    await user.type(screen.getByRole('textbox', { name: 'How long?' }), '127.5{Enter}');
    expect(screen.getByRole('status')).toHaveTextContent('Right');
    expect(screen.getByRole('status')).toHaveTextContent('Source: A made-up source');
    expect(press('See how it went')).toHaveFocus();
  });

  test.each([
    ['137', 'You forgot the last joint.'],
    ['5', 'That is the right length in inches.'],
    ['99', 'Right answer: 127 mm'],
  ])('%s is told wrong from the mistake', async (typed, told) => {
    const user = show(NUMBER);
    await user.type(screen.getByRole('textbox'), `${typed}{Enter}`);
    expect(screen.getByRole('status')).toHaveTextContent('Not right');
    expect(screen.getByRole('status')).toHaveTextContent(told);
  });

  test('that is none is asked for again', async () => {
    const user = show(NUMBER);
    await user.type(screen.getByRole('textbox'), 'about so{Enter}');
    expect(screen.getByRole('alert')).toHaveTextContent('Type a number');
    expect(screen.getByRole('textbox')).toHaveAttribute('aria-invalid', 'true');
  });

  test('is asked in inches, and fractions are read', async () => {
    const user = show(NUMBER);
    await user.click(screen.getByRole('radio', { name: 'inches' }));
    await user.type(screen.getByRole('textbox', { name: 'How long, in inches?' }), '4 16/16{Enter}');
    expect(screen.getByRole('status')).toHaveTextContent(/^✓ Right/);
  });
});

test('one of several is chosen by the keyboard', async () => {
  const user = show(CHOOSE);
  const group = screen.getByRole('group', { name: 'Which?' });
  await user.click(press('Check'));
  expect(screen.getByRole('alert')).toHaveTextContent('Choose one of the answers.');
  within(group).getByRole('radio', { name: 'Red' }).focus();
  await user.keyboard(' {Enter}');
  expect(screen.getByRole('status')).toHaveTextContent('Not right');
  expect(screen.getByRole('status')).toHaveTextContent('Right answer: Blue');
  expect(screen.getByRole('status')).toHaveTextContent('Red is explained.');
  expect(within(group).getByRole('radio', { name: 'Blue' })).toBeDisabled();
});

test('all that apply are ticked, and what is left out is told', async () => {
  const user = show(PICK);
  await user.click(screen.getByRole('checkbox', { name: 'Red' }));
  await user.click(screen.getByRole('checkbox', { name: 'Blue' }));
  await user.click(press('Check'));
  expect(screen.getByRole('status')).toHaveTextContent('You picked what does not apply. “Blue”');
  expect(screen.getByRole('status')).toHaveTextContent('You left out what applies. “Green”');
});

test('steps are moved by buttons, which keep the focus and say where the step is', async () => {
  const user = show(ORDER);
  await user.click(press('Move up: Blue'));
  expect(screen.getAllByRole('listitem').map((item) => item.textContent?.replace(/[↑↓]/g, ''))).toEqual([
    'Blue',
    'Red',
    'Green',
  ]);
  expect(screen.getByText('Blue: now step 1 of 3')).toBeInTheDocument();
  expect(press('Move up: Blue')).toHaveFocus();
  expect(press('Move up: Blue')).toHaveAttribute('aria-disabled', 'true');
  await user.keyboard('{Enter}');
  expect(screen.getAllByRole('listitem')[0]).toHaveTextContent('Blue');
  await user.click(press('Check'));
  expect(screen.getByRole('status')).toHaveTextContent(/^✓ Right/);
});

test('a set leads on with the keyboard at the next question, and ends with what to look at again', async () => {
  const user = show(CHOOSE, NUMBER);
  expect(screen.getByRole('heading', { name: 'Question 1 of 2' })).not.toHaveFocus();
  await user.click(screen.getByRole('radio', { name: 'Blue' }));
  await user.click(press('Check'));
  await user.click(press('Next question'));
  expect(screen.getByRole('heading', { name: 'Question 2 of 2' })).toHaveFocus();
  await user.type(screen.getByRole('textbox'), '1{Enter}');
  await user.click(press('See how it went'));
  expect(screen.getByRole('heading', { name: '1 of 2 right' })).toBeInTheDocument();
  expect(screen.getByRole('listitem')).toHaveTextContent('How long?');
  expect(screen.getByRole('link', { name: 'Other numbers' })).toHaveAttribute('href', '/again');
});

test('on paper it says how to answer each kind, and the answers come last', () => {
  render(<QuestionSheet questions={[PICK, ORDER, CHOOSE]} />);
  expect(screen.getByText('Which ones? Tick all that apply.')).toBeInTheDocument();
  expect(screen.getByText('In which order? Number them: 1 comes first.')).toBeInTheDocument();
  expect(screen.getByText('Which?')).toBeInTheDocument();
  const headings = screen.getAllByRole('heading').map(({ textContent }) => textContent);
  expect(headings).toEqual(['Answers']);
});
