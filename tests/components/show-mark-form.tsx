import { render } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { MarkForm } from '../../components/practice/mark-form';
import type { NotedReading } from '../../components/practice/notebook';
import type { Mark } from '../../components/practice/practice-state';
import type { LengthSystem } from '../../lib/units';
import { FAULTS, findByName, UNIT } from './practice-samples';

/** The form on a unit; `attach` hands it a reading as the notebook does. */
export function showForm(
  onMark: (mark: Mark) => string | null,
  before?: Mark,
  { system = 'mm', notebook = [] }: { system?: LengthSystem; notebook?: readonly NotedReading[] } = {},
) {
  const shared = { picked: UNIT, faults: FAULTS, find: findByName, rules: 'Canada', system, notebook };
  const view = render(<MarkForm {...shared} attached={null} before={before} onMark={onMark} />);
  const attach = (reading: NotedReading) =>
    view.rerender(<MarkForm {...shared} attached={{ reading }} before={before} onMark={onMark} />);
  return Object.assign(userEvent.setup(), { attach });
}
