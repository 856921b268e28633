import '@fontsource-variable/bitter';
import '@fontsource-variable/source-sans-3';
import './globals.css';
import type { Metadata, Viewport } from 'next';
import type { ReactNode } from 'react';

export const metadata: Metadata = {
  title: { default: 'Stillroom', template: '%s · Stillroom' },
  description: 'From bucket to jar: what came in, what to make of it, and what is on the shelf.',
};
export const viewport: Viewport = { themeColor: '#eef3f2', width: 'device-width', initialScale: 1 };

export default function Layout({ children }: { children: ReactNode }) {
  return (
    <html lang="en">
      <body>{children}</body>
    </html>
  );
}
