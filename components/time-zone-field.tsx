'use client';
import { useEffect, useState } from 'react';

/** The browser's own time zone, sent along unseen; UTC where the browser does not say. */
export function TimeZoneField() {
  const [zone, setZone] = useState('UTC');
  useEffect(() => setZone(Intl.DateTimeFormat().resolvedOptions().timeZone || 'UTC'), []);
  return <input type="hidden" name="timeZone" value={zone} />;
}
