import { PostForm } from '../ui/post-form';

export function SignOut() {
  return <PostForm action="/api/people/sign-out" then="/" send="Sign out" plain />;
}
