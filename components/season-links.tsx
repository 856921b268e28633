import { ButtonRow } from './button-row.tsx';
import { LinkButton } from './link-button.tsx';

const PAGES = [
  { href: '/season/lists', label: 'What to make and open' },
  { href: '/season/orders', label: 'What to order' },
  { href: '/season/shelf', label: 'The shelves ahead' },
  { href: '/season/what-if', label: 'What if' },
  { href: '/season/flow', label: 'The year’s fruit' },
  { href: '/season/weather', label: 'Weather' },
  { href: '/season/checks', label: 'How good were we' },
] as const;

/** The season's other pages, from its first. */
export function SeasonLinks() {
  return (
    <nav aria-label="More of the season" className="no-print">
      <ButtonRow>
        {PAGES.map((p) => (
          <LinkButton key={p.href} href={p.href} kind="quiet">
            {p.label}
          </LinkButton>
        ))}
      </ButtonRow>
    </nav>
  );
}
