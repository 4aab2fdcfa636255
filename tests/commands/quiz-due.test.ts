/** Due moments in the zone of the teacher's computer; offsets and switches of summer time from the IANA time zone database. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { dueWords, readDue } from '../../src/commands/quiz-due.js';
import { isInstant } from '../../src/quiz/instant.js';

const before = process.env['TZ'];
const inZone = (zone: string): void => {
  process.env['TZ'] = zone;
};

describe('a due moment', () => {
  beforeEach(() => inZone('Europe/Vienna'));
  afterEach(() => {
    if (before === undefined) delete process.env['TZ'];
    else process.env['TZ'] = before;
  });

  it('is read in the zone of the computer, winter and summer, and said back with it', () => {
    expect(readDue('2026-12-01 18:00')).toBe('2026-12-01T18:00:00+01:00');
    expect(readDue(' 2026-07-01T08:05 ')).toBe('2026-07-01T08:05:00+02:00');
    expect(dueWords('2026-12-01T18:00:00+01:00')).toBe('2026-12-01 18:00, Europe/Vienna (UTC+01:00)');
    expect(dueWords('2026-12-01T18:00:00Z')).toBe('2026-12-01 19:00, Europe/Vienna (UTC+01:00)');
    inZone('America/St_Johns');
    expect(readDue('2026-12-01 18:00')).toBe('2026-12-01T18:00:00-03:30');
    expect(dueWords('2026-12-01T18:00:00Z')).toBe('2026-12-01 14:30, America/St_Johns (UTC-03:30)');
  });

  it('keeps a zone of its own', () => {
    expect(readDue('2026-12-01T18:00:00Z')).toBe('2026-12-01T18:00:00Z');
    expect(readDue('2026-12-01T18:00+09:00')).toBe('2026-12-01T18:00+09:00');
  });

  it('is refused where it does not exist: a day, an hour, the hour that summer time leaves out', () => {
    for (const wrong of [
      '2026-02-29 12:00',
      '2026-12-01 25:00',
      '2026-12-01',
      'tomorrow',
      '',
      '2026-13-01 12:00',
    ])
      expect(() => readDue(wrong), wrong).toThrow(/--due must be a date and time like "2026-12-01 18:00"/);
    // Central European Summer Time began on 29 March 2026 at 02:00.
    expect(() => readDue('2026-03-29 02:30')).toThrow(/there is no 2026-03-29 02:30 in Europe\/Vienna/);
    // The hour that comes twice is taken the first time.
    expect(readDue('2026-10-25 02:30')).toBe('2026-10-25T02:30:00+02:00');
  });

  it('is always a moment that a handout takes', () => {
    for (const zone of ['UTC', 'Asia/Kathmandu', 'Pacific/Kiritimati', 'America/New_York']) {
      inZone(zone);
      expect(isInstant(readDue('2026-12-01 18:00'))).toBe(true);
      expect(dueWords(readDue('2026-12-01 18:00'))).toMatch(/^2026-12-01 18:00, /);
    }
  });
});
