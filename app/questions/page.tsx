import type { Metadata } from 'next';
import { QuestionsLink } from '../../components/questions/questions-link';
import { QUESTION_TOPIC_TITLES, QUESTION_TOPICS } from '../../lib/questions/topics';

export const metadata: Metadata = {
  title: 'Questions',
  description: 'Short questions on masonry with numbers that change and answers that are worked out.',
};

export default function QuestionsPage() {
  return (
    <div className="column">
      <h1>Questions</h1>
      <p>Six short questions on one topic. The numbers change each time. Every answer is explained.</p>
      <ul>
        {QUESTION_TOPICS.map((topic) => (
          <li key={topic}>
            <QuestionsLink topic={topic}>{QUESTION_TOPIC_TITLES[topic]}</QuestionsLink>
          </li>
        ))}
      </ul>
    </div>
  );
}
