'use client';

import { useState } from 'react';
import type { WallToRead } from '../../../../lib/wall-page/wall-to-read';
import { WallRoom } from '../../../walls/[code]/wall-room';

/** A wall as its learner gets it: nothing is handed in from here. */
export function TryRoom(props: {
  readonly code: string;
  readonly laid: WallToRead;
  readonly label: string;
  readonly openingsUp: number | null;
}) {
  const { code, laid, label, openingsUp } = props;
  const [isDone, setDone] = useState(false);
  return (
    <>
      <p role="status">
        {isDone
          ? 'Here a learner goes back to the list of walls.'
          : 'You are trying it. Nothing is handed in.'}
      </p>
      <WallRoom
        laid={laid}
        label={label}
        setWork={{ keptAs: `tried ${code}`, openingsUp, onHandIn: () => setDone(true), rows: null }}
      />
    </>
  );
}
