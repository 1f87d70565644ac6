import { render, screen, waitFor } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { AppRouterContext } from 'next/dist/shared/lib/app-router-context.shared-runtime';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { AreaField, ChoiceField, SelectField, TextField, TickField } from '../../../components/ui/fields';
import { PostForm } from '../../../components/ui/post-form';

const refresh = vi.fn();
const router = {
  refresh,
  push: vi.fn(),
  replace: vi.fn(),
  back: vi.fn(),
  forward: vi.fn(),
  prefetch: vi.fn(),
};

const sent: unknown[] = [];
let answers: Response[] = [];

beforeEach(() => {
  document.title = 'Join – Read the Wall';
  vi.stubGlobal('fetch', async (address: string, init: RequestInit) => {
    sent.push([address, JSON.parse(String(init.body))]);
    const answer = answers.shift();
    if (!answer) throw new TypeError('Failed to fetch');
    return answer;
  });
});
afterEach(() => {
  sent.length = 0;
  answers = [];
  refresh.mockClear();
  vi.unstubAllGlobals();
});

function open() {
  render(
    <AppRouterContext value={router as never}>
      <PostForm action="/api/x" then="reload" send="Send" done="It is kept." also={{ group: 'g' }}>
        <TextField name="name" label="Name" help="As on the roster." />
        <AreaField name="note" label="Note" value="hello" />
        <SelectField
          name="part"
          label="Part"
          choices={[
            { value: 'co', label: 'Co' },
            { value: 'lead', label: 'Lead' },
          ]}
          value="lead"
        />
        <ChoiceField
          name="topics"
          label="Topics"
          several
          choices={[
            { value: 'ties', label: 'Ties' },
            { value: 'joints', label: 'Joints' },
          ]}
        />
        <TickField name="sure" label="Sure" />
      </PostForm>
    </AppRouterContext>,
  );
  return userEvent.setup();
}

describe('a form', () => {
  test('sends its fields as JSON: texts, lists, yes or no, and what goes along', async () => {
    const user = open();
    answers = [Response.json({ ok: true })];
    await user.type(screen.getByRole('textbox', { name: 'Name' }), 'Joan');
    await user.click(screen.getByRole('checkbox', { name: 'Joints' }));
    await user.click(screen.getByRole('button', { name: 'Send' }));
    await waitFor(() => expect(screen.getByRole('status')).toHaveTextContent('It is kept.'));
    expect(sent).toEqual([
      ['/api/x', { name: 'Joan', note: 'hello', part: 'lead', topics: ['joints'], sure: false, group: 'g' }],
    ]);
    expect(refresh).toHaveBeenCalledTimes(1);
    expect(screen.getByRole('textbox', { name: 'Name' })).toHaveValue('');
  });

  test('says what is wrong, where, and in the title; keeps what was typed; forgets it when all is well', async () => {
    const user = open();
    answers = [
      Response.json({ problem: 'x', fields: { name: 'Type a shorter name.' } }, { status: 422 }),
      Response.json({ ok: true }),
    ];
    const name = screen.getByRole('textbox', { name: 'Name' });
    await user.type(name, 'Joan');
    await user.click(screen.getByRole('button', { name: 'Send' }));
    const alert = await screen.findByRole('alert');
    expect(alert).toHaveTextContent('There is a problem');
    // The focus and the title follow the text.
    await waitFor(() => expect(alert).toHaveFocus());
    await waitFor(() => expect(document.title).toBe('Error: Join – Read the Wall'));
    expect(name).toHaveValue('Joan');
    expect(name).toBeInvalid();
    expect(name).toHaveAccessibleDescription(/^As on the roster\. Error: ?Type a shorter name\.$/);
    await user.click(screen.getByRole('link', { name: 'Type a shorter name.' }));
    expect(name).toHaveFocus();

    await user.click(screen.getByRole('button', { name: 'Send' }));
    await waitFor(() => expect(screen.queryByRole('alert')).toBe(null));
    await waitFor(() => expect(document.title).toBe('Join – Read the Wall'));
  });

  test('without a network says so, and keeps what was typed', async () => {
    const user = open();
    await user.type(screen.getByRole('textbox', { name: 'Name' }), 'Joan');
    await user.click(screen.getByRole('button', { name: 'Send' }));
    expect(await screen.findByRole('alert')).toHaveTextContent('The site could not be reached.');
    expect(screen.getByRole('textbox', { name: 'Name' })).toHaveValue('Joan');
  });

  test('an answer that is no JSON is a problem on our side', async () => {
    const user = open();
    answers = [new Response('<html>', { status: 502 })];
    await user.click(screen.getByRole('button', { name: 'Send' }));
    expect(await screen.findByRole('alert')).toHaveTextContent('Something went wrong on our side.');
  });

  test('a second press while it is sent sends nothing more', async () => {
    const user = open();
    let finish: (answer: Response) => void = () => undefined;
    vi.stubGlobal('fetch', (address: string) => {
      sent.push(address);
      return new Promise<Response>((resolve) => {
        finish = resolve;
      });
    });
    const button = screen.getByRole('button', { name: 'Send' });
    await user.click(button);
    await user.click(button);
    expect(sent).toEqual(['/api/x']);
    finish(Response.json({ ok: true }));
    await waitFor(() => expect(screen.getByRole('status')).toHaveTextContent('It is kept.'));
  });
});
