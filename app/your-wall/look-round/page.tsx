import type { Metadata } from 'next';
import { LookRound } from '../../../components/household/look-round';
import { STOPS } from '../../../lib/household/stops';
import { stopPictures } from '../../lessons/stop-pictures';

export const dynamic = 'error';

export const metadata: Metadata = {
  title: 'Look round your wall',
  description:
    'Walk round your own brick or stone wall step by step, and get a note: what you saw, how urgent it is and whom to ask.',
};

export default function LookRoundPage() {
  return (
    <div className="column">
      <h1>Look round your wall</h1>
      <LookRound pictures={stopPictures()} />
      <noscript>
        <p>This page needs script to write your note. These are the questions; write the answers down.</p>
        {STOPS.map(({ id, title, questions }) => (
          <section key={id}>
            <h2>{title}</h2>
            <ul>
              {questions.map(({ ask }) => (
                <li key={ask}>{ask}</li>
              ))}
            </ul>
          </section>
        ))}
      </noscript>
    </div>
  );
}
