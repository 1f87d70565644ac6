import { SelectField } from '../../../../components/ui/fields';
import { PostForm } from '../../../../components/ui/post-form';
import type { GroupRow } from '../../../../lib/store/groups/groups';
import type { WorkRow } from '../../../../lib/store/set-work';
import { DueField } from '../../../set-work/times-fields';

/** A draft like this work, for this group or another one. */
export function CopyWork({ work, groups }: { readonly work: WorkRow; readonly groups: readonly GroupRow[] }) {
  return (
    <details className="disclosure">
      <summary>Copy this work</summary>
      <PostForm
        action="/api/work/copy"
        then="stay"
        send="Make a copy"
        name="Copy"
        also={{ work: work.id }}
        plain
      >
        <SelectField
          name="into"
          label="Into which group"
          help="The copy is a draft with new walls and no dates."
          value={work.groupId}
          choices={groups
            .filter(({ closedAt }) => closedAt === null)
            .map(({ id, name }) => ({ value: id, label: name }))}
        />
      </PostForm>
    </details>
  );
}

/** What can be done with a work next: publish or delete a draft, close it, move its date, open it again. */
export function WorkSteps({ work: { id, state, dueAt } }: { readonly work: WorkRow }) {
  if (state === 'draft') {
    return (
      <>
        <PostForm
          action="/api/work/set"
          send="Publish to the group"
          also={{ work: id }}
          done="It is published."
        />
        <PostForm
          action="/api/work/delete-draft"
          then="stay"
          send="Delete this draft"
          also={{ work: id }}
          plain
        />
      </>
    );
  }
  if (state === 'closed') {
    return (
      <PostForm
        action="/api/work/set"
        send="Open it again"
        also={{ work: id }}
        done="It is open again."
        plain
      />
    );
  }
  return (
    <>
      <PostForm
        action="/api/work/close"
        send="Close it: nobody can start any more"
        also={{ work: id }}
        done="It is closed."
        plain
      />
      <details className="disclosure">
        <summary>Move the due date</summary>
        <PostForm
          action="/api/work/due"
          send="Move it"
          name="Due date"
          also={{ work: id }}
          done="It is moved. Work that was late stays flagged."
          plain
        >
          <DueField dueAt={dueAt} />
        </PostForm>
      </details>
    </>
  );
}
