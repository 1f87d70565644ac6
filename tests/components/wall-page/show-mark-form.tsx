import { render } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { MarkForm } from '../../../components/wall-page/marking/mark-form';
import type { HalfMark, Mark } from '../../../components/wall-page/work-state';
import type { Reading } from '../../../lib/instruments/reading';
import type { LengthSystem } from '../../../lib/units';
import { FAULTS, findByName, UNIT } from './samples';

/** The form on a unit; `attach` hands it a reading as the notebook does. */
export function showForm(
  onMark: (mark: Mark) => string | null,
  before?: Mark,
  {
    system = 'mm',
    notebook = [],
    kept = null,
    onFill = () => undefined,
  }: {
    system?: LengthSystem;
    notebook?: readonly Reading[];
    kept?: HalfMark | null;
    onFill?: (half: HalfMark) => void;
  } = {},
) {
  const shared = {
    picked: UNIT,
    faults: FAULTS,
    find: findByName,
    rules: 'Canada',
    ...{ system, notebook, kept, onFill },
  };
  const view = render(<MarkForm {...shared} attached={null} before={before} onMark={onMark} />);
  const attach = (reading: Reading) =>
    view.rerender(<MarkForm {...shared} attached={{ reading }} before={before} onMark={onMark} />);
  return Object.assign(userEvent.setup(), { attach });
}
