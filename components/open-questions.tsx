import { counted } from '#lib/units/format.ts';
import { LinkButton } from './link-button.tsx';

/** Says that something waits for an answer, and leads there; nothing when nothing does. */
export function OpenQuestions({ count }: { count: number }) {
  if (count === 0) return null;
  return (
    <p>
      <LinkButton href="/questions">{counted(count, 'question')} to answer</LinkButton>
    </p>
  );
}
