import type { Metadata } from 'next';
import Link from 'next/link';
import { TextField } from '../../../../../components/ui/fields';
import { PostForm } from '../../../../../components/ui/post-form';
import { instructorsOf } from '../../../../../lib/store/staff';
import { requirePage } from '../../../../access/require-page';

export const metadata: Metadata = { title: 'Instructors of this group' };

interface Props {
  readonly params: Promise<{ readonly group: string }>;
}

export default async function GroupInstructorsPage({ params }: Props) {
  const {
    params: { group = '' },
    store,
  } = await requirePage('/desk/groups/[group]/instructors', params);
  const instructors = await instructorsOf(store.db, group);
  return (
    <div className="column">
      <p>
        <Link href={`/desk/groups/${group}`}>Back to the group</Link>
      </p>
      <h1>Instructors of this group</h1>
      <ul>
        {instructors.map(({ userId, name, email, part }) => (
          <li key={userId}>
            {name}, {email}: {part === 'lead' ? 'leads the group' : 'co-instructor'}
            {part === 'co' && (
              <PostForm
                action="/api/people/co-instructor"
                send="Take away"
                name={`Take ${name} away from this group`}
                also={{ group, email, part: 'none' }}
                plain
              />
            )}
          </li>
        ))}
      </ul>
      <h2>Add a co-instructor</h2>
      <p>
        A co-instructor sets work, sees the mark book and resets PINs. Only a lead adds or takes away
        co-instructors. The person needs an account here first.
      </p>
      <PostForm
        action="/api/people/co-instructor"
        send="Add"
        name="Add a co-instructor"
        done="Added."
        also={{ group, part: 'co' }}
      >
        <TextField name="email" label="Their e-mail" kind="email" />
      </PostForm>
    </div>
  );
}
