import { BookError } from '../../../lib/store/book/book-changes';
import { Refusal } from '../../request/refusal';

/** What the store will not change is a refusal in its words. */
export async function refusingBookErrors<T>(change: Promise<T>): Promise<T> {
  try {
    return await change;
  } catch (error) {
    if (error instanceof BookError) throw new Refusal(409, error.message);
    throw error;
  }
}
