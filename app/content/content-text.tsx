import { getMDXComponent } from 'mdx-bundler/client';
import type { ReactNode } from 'react';

/** What a text may name. Server components: the text never reaches the browser as code. */
const COMPONENTS = { Caution };

/** Shows compiled content. Runs on the server only: in the browser it would load a second React. */
export function ContentText({ code }: { readonly code: string }) {
  const Text = getMDXComponent(code);
  return <Text components={COMPONENTS} />;
}

function Caution({ children }: { readonly children: ReactNode }) {
  return (
    <div className="caution" role="note">
      <p className="caution-word">
        <span aria-hidden="true">⚠ </span>Danger
      </p>
      {children}
    </div>
  );
}
