import { headers } from 'next/headers';

/** Address of this house as the browser reached it: what a printed code leads back to. */
export async function ownAddress(): Promise<string> {
  const asked = await headers();
  const host = asked.get('x-forwarded-host') ?? asked.get('host') ?? 'localhost';
  return `${asked.get('x-forwarded-proto') ?? 'http'}://${host}`;
}

/** A jar's own page. */
export const jarAddress = (house: string, jar: string): string => `${house}/jar/${jar}`;
