/** Due moments as a teacher types them, and as they are said back: always with the zone. */
import { UsageError } from '../errors.js';
import { fromInstant, isInstant } from '../quiz/instant.js';
import { cleanText } from '../text/sanitize.js';

/** A date and a time without a zone: that of the computer it is typed on. */
const LOCAL = /^(\d{4})-(\d{2})-(\d{2})[ T](\d{2}):(\d{2})$/;

const two = (number: number): string => String(number).padStart(2, '0');

/** "+01:00": how far the clock on the wall is ahead of UTC. */
function offsetOf(date: Date): string {
  const ahead = -date.getTimezoneOffset();
  const size = Math.abs(ahead);
  return `${ahead < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}

const wallClock = (date: Date): string =>
  `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())} ${two(date.getHours())}:${two(date.getMinutes())}`;

const zone = (): string => Intl.DateTimeFormat().resolvedOptions().timeZone;

/**
 * Reads a due moment: "2026-12-01 18:00" in the zone of this computer, or ISO 8601 with a zone of its own.
 * @returns ISO 8601 with a zone
 * @throws UsageError when it is no such moment
 */
export function readDue(text: string): string {
  const given = text.trim();
  if (isInstant(given)) return given;
  const parts = LOCAL.exec(given);
  const wanted = given.replace('T', ' ');
  if (parts === null || !isInstant(`${wanted.replace(' ', 'T')}Z`))
    throw new UsageError(
      `--due must be a date and time like "2026-12-01 18:00", or with its zone like 2026-12-01T18:00:00Z, not "${cleanText(given, 40)}"`,
    );
  const [year, month, day, hour, minute] = parts.slice(1).map(Number) as [
    number,
    number,
    number,
    number,
    number,
  ];
  const date = new Date(year, month - 1, day, hour, minute);
  // In spring an hour is left out, and the clock would show another time.
  if (wallClock(date) !== wanted)
    throw new UsageError(
      `--due: there is no ${wanted} in ${zone()}, where the clocks are put forward then; take another time`,
    );
  return `${wanted.replace(' ', 'T')}:00${offsetOf(date)}`;
}

/** "2026-12-01 18:00, Europe/Vienna (UTC+01:00)": a moment on the clock of this computer. */
export function dueWords(instant: string): string {
  const date = new Date(fromInstant(instant));
  const here = zone();
  return `${wallClock(date)}, ${here === 'UTC' ? here : `${here} (UTC${offsetOf(date)})`}`;
}
