'use client';

import { useState } from 'react';
import { PostForm } from '../../../../../components/ui/post-form';

/** Makes the secret address of the group's due dates, and shows it the one time it can be seen. */
export function CalendarLink({ group }: { readonly group: string }) {
  const [link, setLink] = useState<string>();
  return (
    <section aria-labelledby="calendar">
      <h3 id="calendar">Due dates in a calendar</h3>
      <p>
        Put this address into a calendar program and it follows the due dates. Whoever has the address can
        read them; no learner is named. A new address ends the old one.
      </p>
      <PostForm
        action="/api/book/calendar-link"
        also={{ group }}
        send="Make a calendar address"
        done="The address is below. You see it only now."
        plain
        name="Calendar address"
        onAnswer={(answer) => setLink(new URL(String(answer.link), window.location.href).href)}
      />
      {link && (
        <p>
          <strong>{link}</strong>
        </p>
      )}
    </section>
  );
}
