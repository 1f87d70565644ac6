import { PostForm } from './post-form';

/** Ends whatever other sign-ins there are, by the handler for whoever is signed in. */
export function SignOutElsewhere({ action }: { readonly action: string }) {
  const words = 'Sign out everywhere but here';
  return <PostForm action={action} send={words} name={words} plain />;
}
