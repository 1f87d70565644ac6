import { render, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { AppRouterContext } from 'next/dist/shared/lib/app-router-context.shared-runtime';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { RosterForm } from '../../../components/desk/roster-form';

const router = { refresh: vi.fn() };
/** Answers wait for it. */
let gate = Promise.resolve();
let sent: { readonly dry: boolean; readonly text: string }[] = [];

beforeEach(() => {
  vi.stubGlobal('fetch', async (_: string, init: RequestInit) => {
    const body = JSON.parse(String(init.body)) as { dry: boolean; text: string };
    sent.push(body);
    await gate;
    const rows = body.text.split('\n').map((name, index) => ({ line: index + 1, name, timeFactor: 100 }));
    return Response.json(body.dry ? { ok: true, rows, problems: [] } : { ok: true, added: rows.length });
  });
});
afterEach(() => {
  sent = [];
  gate = Promise.resolve();
  vi.unstubAllGlobals();
});

function open() {
  render(
    <AppRouterContext value={router as never}>
      <RosterForm group="g" />
    </AppRouterContext>,
  );
}

test('a file fills the box, and the same file can be chosen again once it is put right', async () => {
  open();
  const choose = screen.getByLabelText<HTMLInputElement>(/from a file/);
  await userEvent.upload(choose, new File(['Ada\nBo'], 'roster.csv', { type: 'text/csv' }));
  await waitFor(() => expect(screen.getByLabelText('Names, one on each line')).toHaveValue('Ada\nBo'));
  // A browser tells of a file only when it is another than the one the field holds.
  expect(choose.files).toHaveLength(0);
});

test('names are added once, however often the button is tapped', async () => {
  open();
  await userEvent.type(screen.getByLabelText('Names, one on each line'), 'Ada');
  await userEvent.click(screen.getByRole('button', { name: 'Check the names' }));
  const button = await screen.findByRole('button', { name: 'Add 1 learner' });
  let answer: () => void = () => undefined;
  gate = new Promise<void>((resolve) => {
    answer = resolve;
  });
  await userEvent.dblClick(button);
  answer();
  await screen.findByText('1 learner is added.');
  expect(sent.map(({ dry }) => dry)).toEqual([true, false]);
});
