import { describe, expect, it } from 'vitest';
import { readColour } from '../../src/colour/reading.js';
import { greyOfValue, toScreen } from '../../src/colour/screen.js';
import { checkDrill } from '../../src/drills/check.js';
import type { Drill } from '../../src/drills/kinds/index.js';
import { sheetHtml } from '../../src/drills/sheet/index.js';
import { escapeHtml } from '../../src/text/html.js';
import { SHIPPED_DRILLS } from '../exercises.js';
import { asked, kindOf, STUDIO, said } from '../studio.js';
import { roof } from './sample.js';

const sheetOf = (drills: readonly Drill[]): string =>
  sheetHtml(
    STUDIO,
    drills,
    drills.map((drill) => checkDrill(STUDIO, drill)),
  );

/** One drill of every kind that is shipped. */
const KINDS = [...new Map(SHIPPED_DRILLS.map((drill) => [drill.kind, drill])).values()];
const page = sheetOf(KINDS);

describe('the contact sheet', () => {
  it('is one page of its own: no scripts, nothing from elsewhere, links only within it', () => {
    expect(page).toMatch(/^<!doctype html>\n<html lang="en">/);
    expect(page).not.toMatch(/<(script|link|img|iframe|object|embed|base|form)\b/i);
    expect(page).not.toMatch(/\b(src|srcset|action)\s*=\s*["']|href="[^#]/i);
    expect(page).not.toMatch(/url\(|@import|https?:/i);
    expect(page).toContain("default-src 'none'; style-src 'unsafe-inline'");
    const ids = [...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [, to] of page.matchAll(/href="#([^"]+)"/g)) expect(ids).toContain(to);
  });

  it.each(KINDS.map((drill) => [drill.kind, drill] as const))(
    'shows of %s the words, the goal, the given colours and all that is said of the best answer',
    (_kind, drill) => {
      const kind = kindOf(drill);
      const explanation = said(kind.grade(drill, kind.best(drill)));
      const { id, title, scene, ask, family, hint = '' } = drill;
      const texts = [id, title, scene, ask, `family ${family}`, hint, ...asked(kind, drill), ...explanation];
      for (const text of texts) expect(page).toContain(escapeHtml(text));
      for (const { reflectance } of kind.given(drill)) {
        const { xyz, value } = readColour(reflectance);
        expect(page).toContain(
          `background-color:${toScreen(xyz).hex}"></span><span class="swatch" style="background-color:${greyOfValue(value)}`,
        );
      }
    },
  );

  it('shows every answer of a mixture with mark, figures and words, and names faults', () => {
    const drill = roof({ goal: { aim: 'rich', value: [9, 10] }, picture: 'harbour-roofs' });
    const check = checkDrill(STUDIO, drill);
    const sheet = sheetHtml(STUDIO, [drill], [check]);
    expect(sheet.match(/<div class="answer /g)).toHaveLength(1 + check.look.traps.length);
    expect(
      sheet.match(/<p class="figures">step \d+\.\d, chroma \d+, (hue \d+°|no hue), [a-z]/g),
    ).toHaveLength(1 + check.look.traps.length);
    expect(sheet).toContain('picture harbour-roofs');
    for (const fault of check.faults) expect(sheet).toContain(escapeHtml(fault));
    expect(sheet).toContain('href="#roof"');
  });

  it('lets no text of a drill become markup', () => {
    const nasty = '</style><script>alert(1)</script>" onmouseover="x';
    const sheet = sheetOf([roof({ title: nasty, scene: nasty, ask: nasty, hint: nasty })]);
    expect(sheet).not.toContain('<script');
    for (const tag of sheet.match(/<[a-z][^>]*>/gi) ?? []) expect(tag).not.toMatch(/alert|onmouseover/);
  });
});
