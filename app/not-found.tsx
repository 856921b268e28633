import { AnswerHeading } from '#components/answer-heading.tsx';

export default function NotFound() {
  return (
    <main style={{ padding: '2rem 1.25rem', maxWidth: '60rem', margin: '0 auto' }}>
      <AnswerHeading
        answer="There is no such page, jar or batch here"
        sub="The code may be mistyped, or belong to another place."
      />
      <p>
        <a href="/trace">Look a code up</a> or <a href="/">go back to today</a>.
      </p>
    </main>
  );
}
