import type { Metadata } from 'next';
import Link from 'next/link';
import { MeasurePhotograph } from '../../../components/photograph/measure-photograph';
import { Caution } from '../../../components/ui/caution';
import { NEVER_SHOWN } from '../../../lib/photo/words';

export const dynamic = 'error';

export const metadata: Metadata = {
  title: 'Measure a wall from a photograph',
  description:
    'Joints, courses and laps of a brick or block wall, measured in your own photograph on your own device, each with how unsure it is.',
};

export default function PhotographPage() {
  return (
    <div className="column">
      <h1>Measure a wall from a photograph</h1>
      <h2>What one photograph can never show</h2>
      <ul>
        {NEVER_SHOWN.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p>
        For those, <Link href="/your-wall/look-round">look round the wall</Link> and{' '}
        <Link href="/your-wall/papers">ask for proof</Link>.
      </p>
      <h2>A good photograph</h2>
      <ul>
        <li>
          Stand on firm ground, square on to the wall. Do not climb, and stay away from a wall that could
          fall.
        </li>
        <li>
          Measure a rectangle on the face first, along and up, and mark its corners. Chalk or tape will do.
          Make it at least eight courses high.
        </li>
        <li>Fill the picture with it, but keep it in the middle. Do not use the wide lens or zoom.</li>
        <li>Go near enough: a photograph 4000 pixels wide should not show much more than three metres.</li>
        <li>Take it in shade or on a dull day. Sun from above makes joints look thicker.</li>
      </ul>
      <MeasurePhotograph />
      <noscript>
        <p>Measuring needs script, which is off in this browser.</p>
      </noscript>
      <Caution
        toSafety
        lines={[
          'This measures what can be seen. It is no inspection, and it does not judge your wall.',
          'Your local code and a licensed engineer come first.',
        ]}
      />
    </div>
  );
}
