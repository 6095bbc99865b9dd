import type { ReactNode } from 'react';
import { Link, useLocation } from 'wouter';

const rooms = [
  { href: '/', name: 'Bench' },
  { href: '/shelf', name: 'Shelf' },
  { href: '/reckoner', name: 'Reckoner' },
  { href: '/settings', name: 'Settings' },
] as const;

const isIn = (location: string, href: string): boolean =>
  href === '/' ? location === '/' || location.startsWith('/jobs') : location.startsWith(href);

/** What stands round every room: the way to the others. */
export function Frame({ children }: { readonly children: ReactNode }) {
  const [location] = useLocation();
  return (
    <>
      <a className="skip" href="#room">
        Skip to the room
      </a>
      <header className="top">
        <p className="mark">Fettle</p>
        <nav aria-label="Rooms">
          <ul>
            {rooms.map(({ href, name }) => (
              <li key={href}>
                <Link href={href} aria-current={isIn(location, href) ? 'page' : undefined}>
                  {name}
                </Link>
              </li>
            ))}
          </ul>
        </nav>
      </header>
      <div id="room" tabIndex={-1}>
        {children}
      </div>
    </>
  );
}
