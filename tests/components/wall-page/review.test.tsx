import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import type { ComponentProps } from 'react';
import { expect, test } from 'vitest';
import { Review } from '../../../components/wall-page/review';

const MARK = {
  mark: { part: 'A3.2', fault: 'twisted-unit', sure: 2 } as const,
  faultName: 'Twisted unit',
  partName: 'Unit 2',
  details: '9.5 mm · good practice',
};

function show(given: Partial<ComponentProps<typeof Review>>): string[] {
  const heard: string[] = [];
  render(
    <Review
      marks={[]}
      saysSound={false}
      looks={[{ family: 'Ties', question: 'Are they close enough?', view: 'before-cover' }]}
      cautions={['A caution.']}
      onChange={(index) => heard.push(`change ${index}`)}
      onRemove={(index) => heard.push(`remove ${index}`)}
      onLook={(view) => heard.push(`look ${view}`)}
      onBack={() => heard.push('back')}
      onSaySound={() => heard.push('sound')}
      onHandIn={() => heard.push('hand in')}
      {...given}
    />,
  );
  return heard;
}

test('marks are handed in from here, with a warning that it is for good', async () => {
  const heard = show({ marks: [MARK] });
  expect(screen.getByText('You have marked one place. Nothing is handed in yet.').tagName).toBe('P');
  expect(screen.getByText('After you hand in, you cannot change your marks.').tagName).toBe('P');
  expect(screen.getByText(/^The rule: .* the score stops at 50\.$/).tagName).toBe('P');
  await userEvent.click(screen.getByRole('button', { name: 'Hand in 1 mark' }));
  expect(heard).toEqual(['hand in']);
});

test('without a mark nothing can be handed in until the reader says that the wall is sound', async () => {
  const heard = show({});
  expect(screen.queryByRole('button', { name: /^Hand in/ })).toBeNull();
  await userEvent.click(screen.getByRole('button', { name: 'This wall is sound' }));
  expect(heard).toEqual(['sound']);
});

test('“sound” is handed in under its name', async () => {
  const heard = show({ saysSound: true });
  await userEvent.click(screen.getByRole('button', { name: 'Hand in: the wall is sound' }));
  expect(heard).toEqual(['hand in']);
});

test('each family of faults leads back to the view for it', async () => {
  const heard = show({ marks: [MARK] });
  await userEvent.click(screen.getByRole('button', { name: 'Look at ties again' }));
  await userEvent.click(screen.getByRole('button', { name: 'Back to the wall' }));
  expect(heard).toEqual(['look before-cover', 'back']);
});
