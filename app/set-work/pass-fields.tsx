import { Disclosure } from '../../components/ui/disclosure';
import { AreaField, TextField, TickField } from '../../components/ui/fields';
import type { PassMark } from '../../lib/classes/set-work';

/** A pass mark: off unless somebody can say how it was found. */
export function PassFields({ passMark }: { readonly passMark: PassMark | null }) {
  return (
    <Disclosure
      title="Pass mark"
      now={passMark ? `${Math.round(passMark.share * 100)} of 100` : 'none'}
      names={['pass', 'passShare', 'passMethod', 'passPerson', 'passDate']}
    >
      <p>
        Best left off. No number of ours is right for your trade: a pass mark is set by people who know the
        work, one fault after the other. Learners then see who set it, how and when, and that it is a practice
        result.
      </p>
      <TickField name="pass" label="Show whether a pass mark is reached" ticked={passMark !== null} />
      <TextField
        name="passShare"
        label="Pass mark, of 100"
        kind="number"
        value={passMark ? String(Math.round(passMark.share * 100)) : ''}
      />
      <AreaField
        name="passMethod"
        label="How it was found"
        help="For instance: four of us judged each fault family and took the mean."
        rows={3}
        value={passMark?.method ?? ''}
      />
      <TextField name="passPerson" label="Who set it" value={passMark?.person ?? ''} most={80} />
      <TextField
        name="passDate"
        label="On which day"
        help="Year, month, day: like 2026-11-25."
        value={passMark?.date ?? ''}
        most={10}
      />
    </Disclosure>
  );
}
